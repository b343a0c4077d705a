using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What another flour drinks. Nothing is changed: it is a range, so water is held back and the feel decides.</summary>
internal static class FlourNotes
{
    // Of the dough's flour, to hold back at first. Common practice, no source.
    private const double HoldBack = 0.05;

    public static IEnumerable<Finding> Of(SwapChange change)
    {
        foreach (var swap in change.Swaps.Where(swap => swap.Manner == Manner.Flour))
        {
            if (change.Thirst.FirstOrDefault(each => each.Component == swap.Component.Id && each.Line == swap.Line.Source.Id) is not { } thirst)
            {
                yield return swap.About("swap-flour-thirst-not-known", Grade.Hint, ("holdBack", change.Before.Flour * HoldBack));
                continue;
            }

            var (low, high) = (thirst.LowMass, thirst.HighMass);
            if (high <= Mass.Zero)
            {
                yield return swap.About(
                    "swap-flour-drinks-less", Grade.Hint, ("low", high * -1), ("high", low * -1), ("from", -thirst.High), ("to", -thirst.Low),
                    ("holdBack", change.Before.Flour * HoldBack));
            }
            else if (low >= Mass.Zero)
            {
                yield return swap.About(
                    "swap-flour-drinks-more", Grade.Hint, ("low", low), ("high", high), ("from", thirst.Low), ("to", thirst.High));
            }
            else
            {
                yield return swap.About(
                    "swap-flour-drinks-either-way", Grade.Hint, ("less", low * -1), ("more", high), ("holdBack", change.Before.Flour * HoldBack));
            }
        }
    }
}
