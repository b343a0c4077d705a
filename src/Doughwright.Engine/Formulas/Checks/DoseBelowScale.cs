using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>Yeast or salt so light that the kitchen's scale cannot show it within a tenth. What is measured by the spoon never lies on the scale.</summary>
internal static class DoseBelowScale
{
    private const double WorstRounding = 0.10;

    // One part stirred into nine parts of water: ten times the mass to weigh.
    private const double Dilution = 10;

    public static IEnumerable<Finding> Check(Formula formula)
    {
        var scale = formula.Recipe.Home.Scale;
        return formula.Lines()
            .Where(at => at.Line.Source.Household is null && at.Line.Role is Role.Yeast or Role.Salt && at.Line.Mass > Mass.Zero && IsTooFine(at.Line.Mass, scale))
            .Select(at => at.About(
                "dose-below-scale",
                Grade.Warning,
                ("name", at.Line.Name),
                ("mass", at.Line.Mass),
                ("scale", scale),
                ("dilution", at.Line.Mass * Dilution)));
    }

    private static bool IsTooFine(Mass mass, Mass scale)
    {
        if (scale <= Mass.Zero)
        {
            return false;
        }

        var shown = scale * Math.Round(mass / scale, MidpointRounding.AwayFromZero);
        return mass < scale || Math.Abs((shown / mass) - 1) > WorstRounding;
    }
}
