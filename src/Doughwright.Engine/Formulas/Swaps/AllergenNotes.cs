using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>
/// Allergens that come in, go out, or stay in elsewhere. A reader may be asking because of one. Each is said once, in however many parts
/// something is swapped.
/// </summary>
internal static class AllergenNotes
{
    public static IEnumerable<Finding> Of(SwapChange change) => change.Swaps
        .GroupBy(swap => swap.By?.Name)
        .SelectMany(same => Brought(change, same.First()))
        .Concat(change.Swaps.GroupBy(swap => swap.Line.Ingredient?.Id ?? swap.Line.Name).SelectMany(same => Taken(change, [.. same])));

    private static IEnumerable<Finding> Brought(SwapChange change, PlannedSwap swap)
    {
        var gained = AllergenChanges.Names(swap.By?.Ingredient).Where(change.Allergens.Gained.Contains).ToArray();
        if (gained.Length > 0)
        {
            yield return swap.About("swap-brings-allergen", Grade.Warning, ("allergens", gained)) with { Safety = true };
        }

        if (swap.By is { Ingredient: null or { AllergensKnown: false } })
        {
            yield return swap.About("swap-allergens-not-known", Grade.Warning) with { Safety = true };
        }
    }

    private static IEnumerable<Finding> Taken(SwapChange change, PlannedSwap[] swaps)
    {
        var gone = AllergenChanges.Names(swaps[0].Line.Ingredient).ToArray();
        var still = gone.Where(change.Allergens.After.Contains).ToArray();
        if (still.Length > 0 && swaps.FirstOrDefault(swap => !AllergenChanges.Names(swap.By?.Ingredient).Intersect(still).Any()) is { } swap)
        {
            var parts = AllergenChanges.PartsWith(change.After, still);
            yield return swap.About("swap-allergen-stays", Grade.Hint, ("allergens", still), ("parts", parts)) with { Safety = true };
        }

        var lost = gone.Where(change.Allergens.Lost.Contains).ToArray();
        if (lost.Length > 0)
        {
            yield return swaps[0].About("swap-allergen-gone", Grade.Hint, ("allergens", lost)) with { Safety = true };
        }
    }
}
