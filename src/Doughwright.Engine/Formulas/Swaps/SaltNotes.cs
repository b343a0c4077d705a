using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>Salt that no line could hold, and salt of which nobody knows how much there is.</summary>
internal static class SaltNotes
{
    // In percent of flour: a sixth of what a dough usually holds is tasted. Common practice, no source.
    private const double Tasted = 0.3;

    // In percent of flour: of a smaller line even salty food is too little to be tasted. Common practice, no source.
    private const double MuchOfALine = 3;

    public static IEnumerable<Finding> Of(SwapChange change) => [.. Changed(change), .. NotKnown(change)];

    private static IEnumerable<Finding> Changed(SwapChange change)
    {
        foreach (var residual in change.Residuals)
        {
            var swap = change.Swaps.FirstOrDefault(swap => residual.Component is null ? swap.Component.ShareInDough > 0 : swap.Component.Id == residual.Component);
            if (swap is not null && swap.Component.Kind != ComponentKind.Wash && residual.Salt is { } salt && Math.Abs(salt.Value) >= SaltHold.WorthHolding)
            {
                var isDough = residual.Component is null;
                (string, object)[] arguments = [("salt", BalanceNotes.Signed(salt))];
                yield return Math.Abs(salt.Value) >= Tasted
                    ? swap.About(isDough ? "swap-salt-changes" : "swap-part-salt-changes", Grade.Warning, arguments)
                    : swap.About(isDough ? "swap-salt-changes" : "swap-part-salt-changes", Grade.Hint, arguments);
            }
        }
    }

    /// <summary>A flour without a figure is a flour; one with a raising agent may be salted.</summary>
    private static IEnumerable<Finding> NotKnown(SwapChange change)
    {
        var told =
            from swap in change.Swaps
            where swap.Component.Kind != ComponentKind.Wash && IsMuch(change, swap)
            from side in new[] { (swap.Line.Name, swap.Line.Ingredient), (swap.By?.Name ?? "", swap.By?.Ingredient) }
            where side.Item2 is { Composition.Salt: null }
            let raises = Traits.Of(side.Item2).Contains(Trait.Raises)
            where raises || side.Item2!.Role != Role.Flour
            select swap.About(raises ? "swap-raising-salt-not-known" : "swap-salt-not-known", Grade.Warning, ("what", side.Item1));
        return told.DistinctBy(finding => (finding.Kind, finding.Arguments["what"]));
    }

    private static bool IsMuch(SwapChange change, PlannedSwap swap)
    {
        var (mass, basis) = swap.Component.ShareInDough > 0
            ? (swap.Line.Mass * swap.Component.ShareInDough, change.Before.Flour)
            : (swap.Line.Mass, swap.Component.Base);
        return basis > Mass.Zero && Percent.Of(mass, basis).Value >= MuchOfALine;
    }
}
