using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>Everything a swap does to a recipe beside its masses, in the order in which it is told.</summary>
internal static class SwapConsequences
{
    private static readonly Func<SwapChange, IEnumerable<Finding>>[] All =
    [
        AllergenNotes.Of,
        SafetyNotes.Of,
        BalanceNotes.Of,
        SaltNotes.Of,
        FlourNotes.Of,
        YeastNotes.Of,
        AlcoholNotes.Of,
        TraitNotes.Of,
        EggNotes.Of,
        MethodNotes.Of,
        LeftOverEntries.Of,
    ];

    public static IEnumerable<Finding> Of(SwapChange change) =>
        change.Swaps.Count == 0 ? [] : All.SelectMany(notes => notes(change)).DistinctBy(finding => (finding.Kind, finding.Place, Told(finding)));

    private static string Told(Finding finding) => string.Join('\n', finding.Arguments.Values);
}
