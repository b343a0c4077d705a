using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>How another kind of yeast goes in, and what much sugar does to it. Sources: yeast-equivalence, swap-traits.</summary>
internal static class YeastNotes
{
    // In percent of flour: from here on sugar slows yeast so far that the kind matters.
    private const double Sweet = 10;

    public static IEnumerable<Finding> Of(SwapChange change)
    {
        foreach (var swap in change.Swaps.Where(swap => swap.Manner == Manner.Yeast))
        {
            yield return swap.By!.Ingredient!.Yeast switch
            {
                YeastKind.Instant => swap.About("swap-yeast-goes-in-dry", Grade.Hint),
                YeastKind.ActiveDry => swap.About("swap-yeast-is-dissolved", Grade.Hint),
                _ => swap.About("swap-yeast-is-crumbled", Grade.Hint),
            };
            if (change.After.Percent.TrueSugar is { } sugar && sugar.Value >= Sweet)
            {
                yield return swap.About("swap-yeast-in-sweet-dough", Grade.Hint, ("sugar", sugar));
            }
        }
    }
}
