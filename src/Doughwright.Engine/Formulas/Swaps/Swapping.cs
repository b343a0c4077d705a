using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>Replaces what a reader lacks, and says what that costs.</summary>
public static class Swapping
{
    /// <summary>
    /// The recipe with every wish carried through. Water, sugar and fat are kept as near as the lines of the part allow (weights 1, 2, 2 on
    /// the squares), flour and salt are held. What cannot be swapped is refused with the reason; then there is no recipe.
    /// </summary>
    /// <param name="wishes">All at once: their order makes no difference.</param>
    public static Swapped Swap(Recipe recipe, IReadOnlyList<Wish> wishes, Larder larder) =>
        new SwapRun(Formula.Balance(recipe, larder), wishes).Result();

    /// <summary>The lines a wish means, as (id of the part, id of the line); none when the recipe has no such ingredient.</summary>
    public static IReadOnlyList<(string Component, string Line)> LinesFor(Recipe recipe, Wish wish, Larder larder) =>
        [.. WishTargets.Of(Formula.Balance(recipe, larder), wish).Select(at => (at.Component.Id, at.Line.Id))];

    /// <summary>
    /// The swaps that the recipe allows, and its ingredients one can do without, each with what it would cost. What one does without a tool is
    /// no swap and is left out.
    /// </summary>
    public static IReadOnlyList<SwapOffer> Offer(Recipe recipe, Larder larder)
    {
        var formula = Formula.Balance(recipe, larder);
        SwapOffer Offered(Wish wish, AllowedSwap? allowed, Without? without) => new(wish, allowed, without, new SwapRun(formula, [wish]).Result());
        var allowed = recipe.Swaps.Select(swap => Offered(new(swap.What, swap.By, swap.Part), swap, null));
        var without = recipe.Without
            .Select(entry => (Entry: entry, Wish: new Wish(entry.What, "")))
            .Where(each => WishTargets.Of(formula, each.Wish).Count > 0)
            .Select(each => Offered(each.Wish, null, each.Entry));
        return [.. allowed, .. without];
    }
}
