using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What another flour drinks. Nothing is changed: it is a range, so water is held back and the feel decides.</summary>
internal static class FlourNotes
{
    // Of the dough's flour, to hold back at first. Common practice, no source.
    private const double HoldBack = 0.05;

    public static IEnumerable<Finding> Of(SwapChange change) => change.Swaps
        .Where(swap => swap.Manner == Manner.Flour)
        .GroupBy(swap => (swap.Line.Ingredient?.Id, swap.By!.Name))
        .Select(group => Of(change, [.. group]));

    /// <summary>One flour by another, in whichever parts: one finding for all of the dough.</summary>
    private static Finding Of(SwapChange change, PlannedSwap[] swaps)
    {
        var swap = swaps[0];
        var holdBack = change.Before.Flour * HoldBack;
        var each = change.Thirst.Where(thirst => swaps.Any(other => other.Component.Id == thirst.Component && other.Line.Source.Id == thirst.Line)).ToArray();
        if (each.Length == 0)
        {
            return swap.About("swap-flour-thirst-not-known", Grade.Hint, ("holdBack", holdBack));
        }

        var low = each.Aggregate(Mass.Zero, (sum, thirst) => sum + thirst.LowMass);
        var high = each.Aggregate(Mass.Zero, (sum, thirst) => sum + thirst.HighMass);
        if (low == Mass.Zero && high == Mass.Zero)
        {
            return swap.About("swap-flour-drinks-alike", Grade.Hint);
        }

        // A range that begins at nothing is told by its other end.
        if (high == Mass.Zero)
        {
            return swap.About("swap-flour-drinks-up-to-less", Grade.Hint, ("low", low * -1), ("to", -each[0].Low));
        }

        if (low == Mass.Zero)
        {
            return swap.About("swap-flour-drinks-up-to-more", Grade.Hint, ("high", high), ("to", each[0].High));
        }

        if (high < Mass.Zero)
        {
            return swap.About(
                "swap-flour-drinks-less", Grade.Hint, ("low", high * -1), ("high", low * -1), ("from", -each[0].High), ("to", -each[0].Low), ("holdBack", holdBack));
        }

        return low > Mass.Zero
            ? swap.About("swap-flour-drinks-more", Grade.Hint, ("low", low), ("high", high), ("from", each[0].Low), ("to", each[0].High))
            : swap.About("swap-flour-drinks-either-way", Grade.Hint, ("less", low * -1), ("more", high), ("holdBack", holdBack));
    }
}
