using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// True water outside 50 to 90 % of the flour, for doughs mostly of wheat; rye and other flours bind too differently to say anything.
/// A hint and no more.
/// Source: formula-windows.
/// </summary>
internal static class WaterWindow
{
    private const double Low = 50;
    private const double High = 90;
    private const double MostlyWheat = 0.7;

    public static IEnumerable<Finding> Check(Formula formula)
    {
        if (formula.Percent.TrueWater is not { } water || WheatFlour(formula) < formula.Flour * MostlyWheat)
        {
            yield break;
        }

        if (water.Value < Low)
        {
            yield return Report.Make("dough-dry", Grade.Hint, "", Position.None, ("water", water), ("usual", Percent.FromValue(Low)));
        }
        else if (water.Value > High)
        {
            yield return Report.Make("dough-wet", Grade.Hint, "", Position.None, ("water", water), ("usual", Percent.FromValue(High)));
        }
    }

    private static Mass WheatFlour(Formula formula) => formula.Lines()
        .Where(at => at.Line.Role == Role.Flour && at.Line.Ingredient is { } flour && flour.Allergens.Contains("wheat-gluten"))
        .Aggregate(Mass.Zero, (sum, at) => sum + (at.Line.Mass * at.Component.ShareInDough));
}
