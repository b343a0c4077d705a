using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>Allergens that come in, go out, or stay in elsewhere. A reader may be asking because of one.</summary>
internal static class AllergenNotes
{
    public static IEnumerable<Finding> Of(SwapChange change)
    {
        foreach (var swap in change.Swaps)
        {
            var gained = AllergenChanges.Names(swap.By?.Ingredient).Where(change.Allergens.Gained.Contains).ToArray();
            if (gained.Length > 0)
            {
                yield return swap.About("swap-brings-allergen", Grade.Warning, ("allergens", gained)) with { Safety = true };
            }

            var gone = AllergenChanges.Names(swap.Line.Ingredient).ToArray();
            var still = gone.Where(change.Allergens.After.Contains).ToArray();
            if (still.Length > 0 && !AllergenChanges.Names(swap.By?.Ingredient).Intersect(still).Any())
            {
                var parts = AllergenChanges.PartsWith(change.After, still);
                yield return swap.About("swap-allergen-stays", Grade.Hint, ("allergens", still), ("parts", parts)) with { Safety = true };
            }

            var lost = gone.Where(change.Allergens.Lost.Contains).ToArray();
            if (lost.Length > 0)
            {
                yield return swap.About("swap-allergen-gone", Grade.Hint, ("allergens", lost)) with { Safety = true };
            }

            if (swap.By is { Ingredient: null })
            {
                yield return swap.About("swap-allergens-not-known", Grade.Warning) with { Safety = true };
            }
        }
    }
}
