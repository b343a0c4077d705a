using Doughwright.App.Commands;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>An ingredient of the larder on a page: what it counts as, consists of, measures, and where that comes from.</summary>
internal static class LarderText
{
    public static string Holdings(OwnOfBook own, Voice voice)
    {
        var larder = Larder.Shipped;
        var page = new Page();
        page.Paragraph(Holding(larder, voice));
        page.Heading(voice.Words["larder-sources"]);
        var table = new Table(new(voice.Words["head.rows"], Align.Right), new(voice.Words["head.obtained"], Align.Left), new(voice.Words["head.source"], Align.Left));
        foreach (var (key, count) in larder.Ingredients.CountBy(row => (row.Evidence.Source, row.Evidence.Obtained)))
        {
            table.Add(voice.Text(count), LarderWords.Obtained(key.Obtained, voice), SourceNames.Of(key.Source, voice));
        }

        table.WriteTo(page);
        WriteOwn(page, own, voice);
        page.Heading(voice.Words["larder-find-one"]);
        return page.ToString();
    }

    private static void WriteOwn(Page page, OwnOfBook own, Voice voice)
    {
        if (own.Book is not { } book)
        {
            return;
        }

        page.Heading(voice.Say(own.All.Count == 0 ? "larder-yours-none" : "larder-yours", ("book", book)));
        foreach (var paper in own.All)
        {
            page.Paragraph(voice.Say("larder-yours-one", ("name", paper.Title), ("said", LarderWords.Briefly(paper, voice))), 2, 2);
        }
    }

    /// <summary>How much it holds, in a sentence.</summary>
    public static string Holding(Larder larder, Voice voice) => voice.Say(
        "larder-holds",
        ("figures", larder.Ingredients.Count(row => row.HasFigures)),
        ("names", larder.Ingredients.Count(row => !row.HasFigures)),
        ("measures", larder.Ingredients.Sum(row => larder.MeasuresOf(row).Count)));

    public static string Write(LarderAsked asked, Voice voice)
    {
        var page = new Page();
        if (asked.Hits.Count == 0)
        {
            page.Paragraph(voice.Say("larder-nothing", ("words", asked.Words)));
            WriteNotUnderstood(page, asked.Own, voice);
            return page.ToString();
        }

        // What a recipe would not understand is said first: the row below is then a likeness, not an answer.
        var isUnderstood = asked.Match.Ingredient is not null;
        if (!isUnderstood)
        {
            page.Paragraph(LarderWords.InARecipe(asked, voice));
            page.Gap();
        }

        var own = asked.Own.PaperOf(asked.Hits[0].Ingredient)?.Own;
        if (own is null)
        {
            WriteRow(page, asked.Larder, asked.Hits[0], voice);
        }
        else
        {
            WriteRow(page, own, voice);
        }

        page.Gap();
        if (asked.Own.PaperOf(asked.Match.Ingredient) is not null)
        {
            page.Paragraph(voice.Words["larder-own-in-a-text"]);
        }
        else if (isUnderstood)
        {
            page.Paragraph(LarderWords.InARecipe(asked, voice));
        }

        if (asked.Hits.Count > 1)
        {
            page.Paragraph(voice.Say("larder-near", ("names", asked.Hits.Skip(1).Select(hit => NameOf(hit, asked, voice)).ToArray())));
        }

        WriteNotUnderstood(page, asked.Own, voice);
        return page.ToString();
    }

    /// <summary>An own ingredient is never taken for a row of the larder, nor one for the other.</summary>
    private static string NameOf(LarderHit hit, LarderAsked asked, Voice voice) =>
        asked.Own.PaperOf(hit.Ingredient) is null ? hit.Ingredient.Name : voice.Say("larder-near-own", ("name", hit.Ingredient.Name));

    private static void WriteNotUnderstood(Page page, OwnOfBook own, Voice voice)
    {
        if (own.NotUnderstood is { Count: > 0 } papers)
        {
            page.Paragraph(voice.Say("larder-own-not-looked", ("names", papers.Select(paper => paper.Title).ToArray())));
        }
    }

    private static void WriteRow(Page page, OwnIngredient own, Voice voice)
    {
        page.Paragraph(LarderWords.Capital(own.Name));
        page.Paragraph(LarderWords.CountsAs(own, voice), 2);
        page.Paragraph(LarderWords.Holds(own.Ingredient, voice), 2);
        page.Paragraph(OwnFacts.From(own, voice), 2);
        foreach (var fact in OwnFacts.All(own, Larder.Shipped, voice))
        {
            page.Paragraph(fact, 2);
        }
    }

    private static void WriteRow(Page page, Larder larder, LarderHit hit, Voice voice)
    {
        var row = hit.Ingredient;
        page.Paragraph(LarderWords.Capital(row.Name));
        page.Paragraph(voice.Say("larder-role", ("role", voice.Member(row.Role))), 2);
        page.Paragraph(LarderWords.Holds(row, voice), 2);
        if (hit.Note.Length > 0)
        {
            page.Paragraph(voice.Say("larder-name-note", ("name", hit.Name), ("note", hit.Note)), 2);
        }

        page.Paragraph(LarderWords.Allergens(row, voice), 2);
        if (LarderWords.Left(larder.PreparationOf(row), voice) is { } left)
        {
            page.Paragraph(left, 2);
        }

        if (row.HasFigures)
        {
            page.Paragraph(LarderWords.Evidence(row.Evidence, voice), 2);
        }

        WriteMeasures(page, larder.MeasuresOf(row), voice);
    }

    private static void WriteMeasures(Page page, IReadOnlyList<Measure> measures, Voice voice)
    {
        if (measures.Count == 0)
        {
            return;
        }

        page.Gap();
        var table = new Table(new(voice.Words["head.measure"], Align.Left), new(voice.Words["head.weighs"], Align.Right), new(voice.Words["head.obtained"], Align.Left));
        foreach (var measure in measures)
        {
            table.Add(measure.Unit, Show.Mass(measure.Mass), LarderWords.Obtained(measure, voice));
        }

        table.WriteTo(page);
    }
}
