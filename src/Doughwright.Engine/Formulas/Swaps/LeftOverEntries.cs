using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>
/// Entries about an ingredient that a swap has taken out of the recipe. They are the author's, and another swap may bring the ingredient back, so
/// they are told and not taken out.
/// </summary>
internal static class LeftOverEntries
{
    public static IEnumerable<Finding> Of(SwapChange change)
    {
        var (before, after) = (change.Before, change.After);
        var swaps = after.Recipe.Swaps.Where(swap => AdviceOfNothing.Names(before, swap) && !AdviceOfNothing.Names(after, swap));
        var without = after.Recipe.Without.Where(entry => AdviceOfNothing.Names(before, entry) && !AdviceOfNothing.Names(after, entry));
        return
        [
            .. swaps.Select(swap => Report.Make(
                "swap-entry-left", Grade.Hint, $"swaps.{Slug.Of(swap.What)}", Position.None, ("what", swap.What), ("by", swap.By))),
            .. without.Select(entry => Report.Make(
                "swap-without-left", Grade.Hint, $"without.{Slug.Of(entry.What)}", Position.None, ("what", entry.What))),
        ];
    }
}
