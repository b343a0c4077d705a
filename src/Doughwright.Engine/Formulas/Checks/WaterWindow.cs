using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// True water outside 50 to 90 % of the flour, for doughs mostly of wheat; rye and other flours bind too differently to say anything so near.
/// A hint and no more. Far outside, whatever the flour, nothing is left that a hand would call dough: a warning.
/// Source: formula-windows, dose-slips.
/// </summary>
internal static class WaterWindow
{
    private const double Low = 50;
    private const double High = 90;
    private const double MostlyWheat = 0.7;

    // Batters are poured from about 120 % on; a stiff noodle dough still holds together at 30 %.
    private const double FarTooWet = 150;
    private const double FarTooDry = 30;

    public static IEnumerable<Finding> Check(Formula formula)
    {
        if (formula.Percent.TrueWater is not { } water || formula.FinalDough() is not { } dough)
        {
            return [];
        }

        if (water.Value > FarTooWet)
        {
            return [formula.About(dough, "dough-far-too-wet", Grade.Warning, ("water", water))];
        }

        if (water.Value < FarTooDry)
        {
            return [formula.About(dough, "dough-far-too-dry", Grade.Warning, ("water", water))];
        }

        return WheatFlour(formula) < formula.Flour * MostlyWheat ? []
            : water.Value < Low ? [formula.About(dough, "dough-dry", Grade.Hint, ("water", water), ("usual", Percent.FromValue(Low)))]
            : water.Value > High ? [formula.About(dough, "dough-wet", Grade.Hint, ("water", water), ("usual", Percent.FromValue(High)))]
            : [];
    }

    private static Mass WheatFlour(Formula formula) => formula.Lines()
        .Where(at => at.Line.Role == Role.Flour && at.Line.Ingredient is { } flour && flour.Allergens.Contains("wheat-gluten"))
        .Aggregate(Mass.Zero, (sum, at) => sum + (at.Line.Mass * at.Component.ShareInDough));
}
