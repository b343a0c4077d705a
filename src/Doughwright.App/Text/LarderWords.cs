using Doughwright.App.Commands;
using Doughwright.App.Desk.Ingredients;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What the larder knows of one ingredient, sentence by sentence: said alike by the command and by the desk.</summary>
internal static class LarderWords
{
    public static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    public static string Share(double? share, Voice voice) => share is { } known ? voice.Text(Percent.FromValue(known)) : voice.Words["not-known"];

    /// <summary>"In 100 g: water 12 %, fat …", or that it is known by name only.</summary>
    public static string Holds(Ingredient row, Voice voice) =>
        row.HasFigures ? voice.Say("larder-holds-per-100", ("parts", Parts(row.Composition, voice))) : voice.Words["larder-no-figures"];

    /// <summary>"Counts as flour. One of your own."</summary>
    public static string CountsAs(OwnIngredient own, Voice voice) => $"{voice.Say("larder-role", ("role", voice.Member(own.Ingredient.Role)))} {voice.Words["larder.own"]}";

    /// <summary>What an own ingredient counts as and its lot, for a list of them.</summary>
    public static string Briefly(OwnPaper paper, Voice voice) => paper.Own is not { } own ? voice.Words["larder.own-not-understood"]
        : own.Lot is { } lot ? $"{CountsAs(own, voice)} {voice.Say("larder.lot", ("lot", lot))}"
        : CountsAs(own, voice);

    public static string Allergens(Ingredient row, Voice voice) => row.Allergens.Count + row.AllergensUnitedStates.Count == 0
        ? voice.Words["larder-allergens-none"]
        : voice.Say("larder-allergens", ("european", Listed(row.Allergens, voice)), ("states", Listed(row.AllergensUnitedStates, voice)));

    /// <summary>"milk and soy, depending on the brand".</summary>
    public static string Listed(IReadOnlyList<string> codes, Voice voice) => codes.Count == 0
        ? voice.Words["nothing"]
        : voice.List(codes.Select(code => AllergenNames.Depends(code) ? voice.Say("larder-depends", ("name", AllergenNames.Of(code))) : AllergenNames.Of(code)));

    /// <summary>What peeling or cooking leaves of it; null for what is used as bought.</summary>
    public static string? Left(Preparation? preparation, Voice voice) => preparation is null ? null
        : preparation.Factor is { } factor
            ? voice.Say($"larder-left.{Voice.Kebab(preparation.Step.ToString())}", ("share", Percent.FromFraction(factor)), ("note", preparation.Note))
            : voice.Words["larder-left.unknown"];

    public static string Evidence(Evidence evidence, Voice voice)
    {
        var source = SourceNames.Of(evidence.Source, voice);
        var said = evidence.Record is { } record
            ? voice.Say("larder-from-record", ("source", source), ("record", record), ("obtained", Obtained(evidence.Obtained, voice)))
            : voice.Say("larder-from", ("source", source), ("obtained", Obtained(evidence.Obtained, voice)));
        return evidence.Note.Length == 0 ? said : voice.Say("larder-from-note", ("from", said), ("note", evidence.Note));
    }

    public static string Obtained(string obtained, Voice voice) => voice.Words[$"obtained.{obtained.Replace(' ', '-')}"];

    /// <summary>How the weight of a measure came about, with its note.</summary>
    public static string Obtained(Measure measure, Voice voice)
    {
        var (obtained, note) = (Obtained(measure.Evidence.Obtained, voice), measure.Evidence.Note);
        return note.Length == 0 ? obtained : voice.Say("larder-measure-note", ("obtained", obtained), ("note", note));
    }

    /// <summary>What a recipe gets that says these words.</summary>
    public static string InARecipe(LarderAsked asked, Voice voice) => asked.Match.Kind switch
    {
        MatchKind.Exact or MatchKind.ReadAs => voice.Say("larder-in-a-recipe", ("words", asked.Words), ("name", asked.Match.Ingredient!.Name)),
        MatchKind.Unknown => voice.Say("larder-not-in-a-recipe", ("words", asked.Words)),
        _ => voice.Say("larder-asked-in-a-recipe", ("words", asked.Words), ("names", asked.Match.Candidates.Select(row => row.Name).ToArray())),
    };

    private static string[] Parts(Composition c, Voice voice)
    {
        List<string> parts =
        [
            voice.Say("part.water", ("share", Share(c.Water, voice))),
            voice.Say("part.fat", ("share", Share(c.Fat, voice))),
            voice.Say("part.protein", ("share", Share(c.Protein, voice))),
            voice.Say("part.carbohydrate", ("share", Share(c.Carbohydrate, voice)), ("sugars", Share(c.Sugars, voice)), ("fibre", Share(c.Fibre, voice))),
            voice.Say("part.salt", ("share", Share(c.Salt, voice))),
        ];
        if (c.Alcohol is > 0)
        {
            parts.Add(voice.Say("part.alcohol", ("share", Share(c.Alcohol, voice))));
        }

        return [.. parts];
    }
}
