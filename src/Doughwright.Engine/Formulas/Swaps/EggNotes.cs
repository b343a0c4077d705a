using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>A yolk and a white in different parts come from one egg. When one goes, the other is bought alone, or its half is left over.</summary>
internal static class EggNotes
{
    private const string Yolk = "egg-yolk";
    private const string White = "egg-white";

    public static IEnumerable<Finding> Of(SwapChange change) => Of(change, Yolk, White).Concat(Of(change, White, Yolk));

    private static IEnumerable<Finding> Of(SwapChange change, string gone, string left)
    {
        if (change.Swaps.FirstOrDefault(swap => swap.Line.Ingredient?.Id == gone) is not { } swap
            || UsedIn(change.After, gone) > Mass.Zero
            || change.After.Lines().FirstOrDefault(at => at.Line.Ingredient?.Id == left) is not { Component: { } part, Line: { } other })
        {
            yield break;
        }

        if (part.Kind == ComponentKind.Wash)
        {
            yield return swap.About("swap-wash-was-the-other-half", Grade.Warning, ("other", other.Name), ("wash", part.Name), ("mass", other.Mass));
        }
        else
        {
            yield return swap.About("swap-leaves-the-other-half", Grade.Hint, ("other", other.Name), ("where", part.Name), ("mass", other.Mass));
        }
    }

    private static Mass UsedIn(Formula formula, string id) => formula.Buy.FirstOrDefault(item => item.Ingredient?.Id == id)?.Used ?? Mass.Zero;
}
