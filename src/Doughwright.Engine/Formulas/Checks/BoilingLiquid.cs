using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>Something goes in boiling, or so hot that it burns within seconds. Sources: home-safety, skin-burns.</summary>
internal static class BoilingLiquid
{
    private static readonly Temperature Burns = Temperature.FromCelsius(60);

    public static IEnumerable<Finding> Check(Formula formula)
    {
        foreach (var at in formula.Lines())
        {
            if (at.Line.Source.Warmth.Kind == WarmthKind.Boiling)
            {
                yield return at.About("boiling-liquid", Grade.Hint, ("name", at.Line.Name)) with { Safety = true };
            }
            else if (at.Line.Role is Role.Water or Role.Liquid or Role.Fat && at.Line.Source.Warmth.Stated is { } celsius && celsius >= Burns)
            {
                yield return at.About("hot-liquid", Grade.Hint, ("name", at.Line.Name), ("celsius", celsius)) with { Safety = true };
            }
        }
    }
}
