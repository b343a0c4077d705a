using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>Where a swap can hurt somebody: honey for the youngest, raw egg in what is not baked, less sugar in what sugar keeps. Source: home-safety.</summary>
internal static class SafetyNotes
{
    // In percent of the part. Sugar keeps a jam only as long as there is much of it.
    private const double SugarWorthSaying = -5;

    public static IEnumerable<Finding> Of(SwapChange change)
    {
        // Once, however many parts it comes into: who eats of one eats of all.
        foreach (var swap in change.Swaps.Where(swap => swap.By?.Ingredient?.Id == "honey").Take(1))
        {
            yield return swap.About("swap-brings-honey", Grade.Warning) with { Safety = true };
        }

        foreach (var swap in change.Swaps.Where(swap => swap.Component.Kind is ComponentKind.Icing or ComponentKind.Filling or ComponentKind.Topping))
        {
            if (IsEgg(swap.By?.Ingredient) && !IsEgg(swap.Line.Ingredient))
            {
                yield return swap.About("swap-brings-raw-egg", Grade.Warning) with { Safety = true };
            }
        }

        foreach (var swap in change.Swaps.Where(swap => swap.Component.Kind is ComponentKind.Filling or ComponentKind.Syrup or ComponentKind.Topping))
        {
            var sugar = SugarShare(change.After, swap.Component.Id) - SugarShare(change.Before, swap.Component.Id);
            if (sugar <= SugarWorthSaying)
            {
                yield return swap.About("swap-keeps-less", Grade.Warning) with { Safety = true };
            }
        }
    }

    private static bool IsEgg(Ingredient? ingredient) => ingredient?.Allergens.Contains("egg") ?? false;

    private static double? SugarShare(Formula formula, string component) => formula.FindComponent(component)?.Composition.Sugars;
}
