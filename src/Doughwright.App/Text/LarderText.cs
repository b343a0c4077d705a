using Doughwright.App.Commands;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>An ingredient of the larder on a page: what it counts as, consists of, measures, and where that comes from.</summary>
internal static class LarderText
{
    public static string Holdings(Larder larder, Voice voice)
    {
        var page = new Page();
        page.Paragraph(Holding(larder, voice));
        page.Heading(voice.Words["larder-sources"]);
        var table = new Table(new(voice.Words["head.rows"], Align.Right), new(voice.Words["head.obtained"], Align.Left), new(voice.Words["head.source"], Align.Left));
        foreach (var (key, count) in larder.Ingredients.CountBy(row => (row.Evidence.Source, row.Evidence.Obtained)))
        {
            table.Add(voice.Text(count), LarderWords.Obtained(key.Obtained, voice), SourceNames.Of(key.Source, voice));
        }

        table.WriteTo(page);
        page.Heading(voice.Words["larder-find-one"]);
        return page.ToString();
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
            return page.ToString();
        }

        // What a recipe would not understand is said first: the row below is then a likeness, not an answer.
        var isUnderstood = asked.Match.Ingredient is not null;
        if (!isUnderstood)
        {
            page.Paragraph(LarderWords.InARecipe(asked, voice));
            page.Gap();
        }

        WriteRow(page, asked.Larder, asked.Hits[0], voice);
        page.Gap();
        if (isUnderstood)
        {
            page.Paragraph(LarderWords.InARecipe(asked, voice));
        }

        if (asked.Hits.Count > 1)
        {
            page.Paragraph(voice.Say("larder-near", ("names", asked.Hits.Skip(1).Select(hit => hit.Ingredient.Name).ToArray())));
        }

        return page.ToString();
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
