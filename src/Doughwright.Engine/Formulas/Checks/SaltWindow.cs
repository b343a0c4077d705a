using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// Salt outside what bakers use. A plant window, so a hint and no more: 1.5 to 2.5 % of the flour, from 1.2 % in sweet or rich doughs.
/// Source: formula-windows.
/// </summary>
internal static class SaltWindow
{
    private const double Low = 1.5;
    private const double LowEnriched = 1.2;
    private const double High = 2.5;
    private const double EnrichedFrom = 10;

    public static IEnumerable<Finding> Check(Formula formula)
    {
        if (formula.Percent is not { Salt: { } salt, Sugar: { } sugar, Fat: { } fat })
        {
            yield break;
        }

        var low = sugar.Value >= EnrichedFrom || fat.Value >= EnrichedFrom ? LowEnriched : Low;
        if (salt.Value < low)
        {
            yield return Report.Make("salt-low", Grade.Hint, "", Position.None, ("salt", salt), ("usual", Percent.FromValue(low)));
        }
        else if (salt.Value > High)
        {
            yield return Report.Make("salt-high", Grade.Hint, "", Position.None, ("salt", salt), ("usual", Percent.FromValue(High)));
        }
    }
}
