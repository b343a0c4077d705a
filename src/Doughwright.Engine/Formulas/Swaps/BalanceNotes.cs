using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What was made good, by what, and what is left over.</summary>
internal static class BalanceNotes
{
    // In percent of flour: what makes another dough. Common practice, no source.
    private const double Another = 2;

    // Less sugar than this is tasted, and browns less. Common practice, no source.
    private const double Tasted = 2;

    public static IEnumerable<Finding> Of(SwapChange change)
    {
        foreach (var edit in change.Edits.Where(edit => edit.Water > Mass.Zero))
        {
            yield return edit.Lines.First(line => line.Swap is not null).Swap!.About("swap-adds-water", Grade.Hint, ("water", edit.Water));
        }

        foreach (var residual in change.Residuals)
        {
            var swaps = change.Swaps.Where(swap => residual.Component is null ? swap.Component.ShareInDough > 0 : swap.Component.Id == residual.Component).ToArray();
            var swap = swaps.FirstOrDefault();
            // A wash is no matter of balance, and what another flour brings along is held for none; its salt is told by SaltNotes.
            if (swap is null || swap.Component.Kind == ComponentKind.Wash || swaps.All(other => other.Manner == Manner.Flour))
            {
                continue;
            }

            var worst = new[] { residual.Water, residual.Sugar, residual.Fat }.Max(each => Math.Abs(each?.Value ?? 0));
            var isDough = residual.Component is null;
            (string, object)[] left = [("water", Signed(residual.Water)), ("sugar", Signed(residual.Sugar)), ("fat", Signed(residual.Fat))];
            if (worst >= Another)
            {
                yield return swap.About(isDough ? "swap-not-made-good" : "swap-part-not-made-good", Grade.Warning, left);
            }
            else if (worst >= SwapResidual.Felt && Percent.FromValue(worst).Fraction * Basis(change, residual) >= change.Before.Recipe.Home.Scale)
            {
                yield return swap.About(isDough ? "swap-not-made-good" : "swap-part-not-made-good", Grade.Hint, left);
            }

            if (residual.Sugar is { } sugar && sugar.Value <= -Tasted && change.Swaps.FirstOrDefault(other => other.Line.Role == Role.Sugar) is { } sweet)
            {
                yield return sweet.About("swap-less-sweet", Grade.Hint, ("sugar", Percent.FromValue(-sugar.Value)));
            }
        }
    }

    /// <summary>What the residual is in percent of. Of a small glaze half a percent is less than the scale shows.</summary>
    private static Mass Basis(SwapChange change, SwapResidual residual) => residual.Component is { } id && change.Before.FindComponent(id) is { } part
        ? SwapResiduals.BasisOf(change.Before, part)
        : change.Before.Flour;

    /// <summary>"+1.2 %": what is more has its sign too. What is not known is left out of the sentence.</summary>
    public static string Signed(Percent? percent) =>
        percent is not { } known ? "" : (known.Value >= 0.05 ? "+" : "") + Show.Percent(known);
}
