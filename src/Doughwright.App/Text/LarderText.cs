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
        var measures = larder.Ingredients.Sum(row => larder.MeasuresOf(row).Count);
        page.Paragraph(voice.Say(
            "larder-holds",
            ("figures", larder.Ingredients.Count(row => row.HasFigures)),
            ("names", larder.Ingredients.Count(row => !row.HasFigures)),
            ("measures", measures)));
        page.Heading(voice.Words["larder-sources"]);
        var table = new Table(new(voice.Words["head.rows"], Align.Right), new(voice.Words["head.obtained"], Align.Left), new(voice.Words["head.source"], Align.Left));
        foreach (var (key, count) in larder.Ingredients.CountBy(row => (row.Evidence.Source, row.Evidence.Obtained)))
        {
            table.Add(voice.Text(count), Obtained(key.Obtained, voice), SourceNames.Of(key.Source, voice));
        }

        table.WriteTo(page);
        page.Heading(voice.Words["larder-find-one"]);
        return page.ToString();
    }

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
            page.Paragraph(InARecipe(asked, voice));
            page.Gap();
        }

        WriteRow(page, asked.Larder, asked.Hits[0], voice);
        page.Gap();
        if (isUnderstood)
        {
            page.Paragraph(InARecipe(asked, voice));
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
        page.Paragraph(Capital(row.Name));
        page.Paragraph(voice.Say("larder-role", ("role", voice.Member(row.Role))), 2);
        page.Paragraph(row.HasFigures ? voice.Say("larder-holds-per-100", ("parts", Parts(row.Composition, voice))) : voice.Words["larder-no-figures"], 2);
        if (hit.Note.Length > 0)
        {
            page.Paragraph(voice.Say("larder-name-note", ("name", hit.Name), ("note", hit.Note)), 2);
        }

        WriteAllergens(page, row, voice);
        WritePreparation(page, larder, row, voice);
        if (row.HasFigures)
        {
            page.Paragraph(Evidence(row.Evidence, voice), 2);
        }

        WriteMeasures(page, larder.MeasuresOf(row), voice);
    }

    private static string[] Parts(Composition c, Voice voice)
    {
        string Share(double? share) => share is { } known ? voice.Text(Percent.FromValue(known)) : voice.Words["not-known"];
        List<string> parts =
        [
            voice.Say("part.water", ("share", Share(c.Water))),
            voice.Say("part.fat", ("share", Share(c.Fat))),
            voice.Say("part.protein", ("share", Share(c.Protein))),
            voice.Say("part.carbohydrate", ("share", Share(c.Carbohydrate)), ("sugars", Share(c.Sugars)), ("fibre", Share(c.Fibre))),
            voice.Say("part.salt", ("share", Share(c.Salt))),
        ];
        if (c.Alcohol is > 0)
        {
            parts.Add(voice.Say("part.alcohol", ("share", Share(c.Alcohol))));
        }

        return [.. parts];
    }

    private static void WriteAllergens(Page page, Ingredient row, Voice voice)
    {
        string Listed(IReadOnlyList<string> codes) => codes.Count == 0
            ? voice.Words["nothing"]
            : voice.List(codes.Select(code => AllergenNames.Depends(code) ? voice.Say("larder-depends", ("name", AllergenNames.Of(code))) : AllergenNames.Of(code)));
        if (row.Allergens.Count + row.AllergensUnitedStates.Count == 0)
        {
            page.Paragraph(voice.Words["larder-allergens-none"], 2);
            return;
        }

        page.Paragraph(voice.Say("larder-allergens", ("european", Listed(row.Allergens)), ("states", Listed(row.AllergensUnitedStates))), 2);
    }

    private static void WritePreparation(Page page, Larder larder, Ingredient row, Voice voice)
    {
        if (larder.PreparationOf(row) is not { } preparation)
        {
            return;
        }

        var step = Voice.Kebab(preparation.Step.ToString());
        page.Paragraph(
            preparation.Factor is { } factor
                ? voice.Say($"larder-left.{step}", ("share", Percent.FromFraction(factor)), ("note", preparation.Note))
                : voice.Words["larder-left.unknown"],
            2);
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
            var note = measure.Evidence.Note;
            table.Add(measure.Unit, Show.Mass(measure.Mass), note.Length == 0
                ? Obtained(measure.Evidence.Obtained, voice)
                : voice.Say("larder-measure-note", ("obtained", Obtained(measure.Evidence.Obtained, voice)), ("note", note)));
        }

        table.WriteTo(page);
    }

    private static string InARecipe(LarderAsked asked, Voice voice) => asked.Match.Kind switch
    {
        MatchKind.Exact or MatchKind.ReadAs => voice.Say("larder-in-a-recipe", ("words", asked.Words), ("name", asked.Match.Ingredient!.Name)),
        MatchKind.Unknown => voice.Say("larder-not-in-a-recipe", ("words", asked.Words)),
        _ => voice.Say("larder-asked-in-a-recipe", ("words", asked.Words), ("names", asked.Match.Candidates.Select(row => row.Name).ToArray())),
    };

    private static string Evidence(Evidence evidence, Voice voice)
    {
        var source = SourceNames.Of(evidence.Source, voice);
        var said = evidence.Record is { } record
            ? voice.Say("larder-from-record", ("source", source), ("record", record), ("obtained", Obtained(evidence.Obtained, voice)))
            : voice.Say("larder-from", ("source", source), ("obtained", Obtained(evidence.Obtained, voice)));
        return evidence.Note.Length == 0 ? said : voice.Say("larder-from-note", ("from", said), ("note", evidence.Note));
    }

    private static string Obtained(string obtained, Voice voice) => voice.Words[$"obtained.{obtained.Replace(' ', '-')}"];

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
}
