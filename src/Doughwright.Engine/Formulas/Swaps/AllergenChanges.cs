using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>The allergens of two formulas, over every part. A map of what ingredients usually are; labels go before it.</summary>
internal static class AllergenChanges
{
    public static AllergenChange Of(Formula before, Formula after)
    {
        var (was, now) = (NamesIn(before), NamesIn(after));
        return new(was, now, [.. now.Except(was)], [.. was.Except(now)], [.. now.Except(NamesIn(after, certainOnly: true))]);
    }

    /// <summary>Parts in which an allergen stands, by name.</summary>
    public static IReadOnlyList<string> PartsWith(Formula formula, IReadOnlyCollection<string> allergens) =>
        [.. formula.Components.Where(part => part.Lines.Any(line => Names(line.Ingredient).Any(allergens.Contains))).Select(part => part.Name)];

    public static IEnumerable<string> Names(Ingredient? ingredient, bool certainOnly = false) =>
        (ingredient?.Allergens ?? []).Where(code => !certainOnly || !AllergenNames.Depends(code)).Select(AllergenNames.Of);

    private static string[] NamesIn(Formula formula, bool certainOnly = false) =>
        [.. formula.Lines().SelectMany(at => Names(at.Line.Ingredient, certainOnly)).Distinct()];
}
