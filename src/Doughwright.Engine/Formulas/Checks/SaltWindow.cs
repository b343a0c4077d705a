using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// Salt outside what bakers use. A plant window, so a hint: 1.5 to 2.5 % of the flour, from 1.2 % in sweet or rich doughs. No salt at all, or
/// so little or so much that a point or a unit must have slipped, is a warning. It stands at the heaviest salt of the dough.
/// Source: formula-windows, dose-slips.
/// </summary>
internal static class SaltWindow
{
    private const double Low = 1.5;
    private const double LowEnriched = 1.2;
    private const double High = 2.5;
    private const double EnrichedFrom = 10;

    // Sound doughs lie between half a percent (children's breads) and four (cured or very sour ones).
    private const double SlippedBelow = 0.5;
    private const double SlippedAbove = 5;
    private static readonly Percent Usual = Percent.FromValue(1.8);

    public static IEnumerable<Finding> Check(Formula formula)
    {
        if (formula.Percent is not { Salt: { } salt, Sugar: { } sugar, Fat: { } fat } || formula.FinalDough() is not { } dough)
        {
            return [];
        }

        var low = sugar.Value >= EnrichedFrom || fat.Value >= EnrichedFrom ? LowEnriched : Low;
        var offered = formula.Flour * Usual.Fraction;
        var salts = Salts(formula).ToArray();
        if (salts.Length == 0)
        {
            return [formula.About(dough, "salt-missing", Grade.Warning, ("offered", offered))];
        }

        var heaviest = salts.MaxBy(at => at.Line.Mass.Grams);
        var rest = salts.Where(at => at.Line != heaviest.Line).Aggregate(Mass.Zero, (sum, at) => sum + (at.Line.Mass * at.Component.ShareInDough));
        var share = (offered - rest) / heaviest.Component.ShareInDough;
        return salt.Value < SlippedBelow || salt.Value > SlippedAbove
                ? [heaviest.About("salt-slip", Grade.Warning, ("salt", salt), ("offered", share > Mass.Zero ? share : offered))]
            : salt.Value < low ? [heaviest.About("salt-low", Grade.Hint, ("salt", salt), ("usual", Percent.FromValue(low)))]
            : salt.Value > High ? [heaviest.About("salt-high", Grade.Hint, ("salt", salt), ("usual", Percent.FromValue(High)))]
            : [];
    }

    private static IEnumerable<(ComponentFormula Component, LineFormula Line)> Salts(Formula formula) =>
        formula.Lines().Where(at => at.Line is { Role: Role.Salt, Mass.Grams: > 0 } && at.Component.ShareInDough > 0);
}
