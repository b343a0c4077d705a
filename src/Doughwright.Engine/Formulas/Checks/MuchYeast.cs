using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// Yeast far above what even heavy sweet doughs take: 6 to 8 % fresh on the flour is much, 12 % is a slip. Source: dose-slips.
/// </summary>
internal static class MuchYeast
{
    private static readonly Percent Most = Percent.FromValue(12);

    public static IEnumerable<Finding> Check(Formula formula)
    {
        if (formula.Percent.FreshYeast is not { } fresh || fresh <= Most)
        {
            return [];
        }

        var yeast = formula.Lines().Where(at => at.Line.Role == Role.Yeast && at.Component.ShareInDough > 0).MaxBy(at => at.Line.Mass.Grams);
        return [yeast.About("yeast-high", Grade.Warning, ("name", yeast.Line.Name), ("fresh", fresh), ("most", Most))];
    }
}
