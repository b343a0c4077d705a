using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>Entries about an ingredient that a swap has taken out of the recipe. They mean nothing any more: they go, and that is told.</summary>
internal static class CarriedOut
{
    public static Recipe TakenOut(Formula before, Formula after, List<Finding> told)
    {
        var recipe = after.Recipe;
        AllowedSwap[] swaps = [.. recipe.Swaps.Where(swap => AdviceOfNothing.Names(before, swap) && !AdviceOfNothing.Names(after, swap))];
        Without[] without = [.. recipe.Without.Where(entry => AdviceOfNothing.Names(before, entry) && !AdviceOfNothing.Names(after, entry))];
        told.AddRange(swaps.Select(swap => Report.Make(
            "swap-entry-goes", Grade.Hint, $"swaps.{Slug.Of(swap.What)}", Position.None, ("what", swap.What), ("by", swap.By))));
        told.AddRange(without.Select(entry => Report.Make(
            "swap-without-goes", Grade.Hint, $"without.{Slug.Of(entry.What)}", Position.None, ("what", entry.What))));
        return swaps.Length + without.Length == 0 ? recipe : recipe with { Swaps = [.. recipe.Swaps.Except(swaps)], Without = [.. recipe.Without.Except(without)] };
    }
}
