using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>Something goes in boiling, which scalds hands. Source: home-safety.</summary>
internal static class BoilingLiquid
{
    public static IEnumerable<Finding> Check(Formula formula) => formula.Lines()
        .Where(at => at.Line.Source.Warmth.Kind == WarmthKind.Boiling)
        .Select(at => at.About("boiling-liquid", Grade.Hint, ("name", at.Line.Name)) with { Safety = true });
}
