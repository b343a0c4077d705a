using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// A steel tin too light to be large enough. An open box that holds the dough doubled, about 2 litres a kilogram, has at least
/// 5 V^(2/3) of sheet, and tinplate is at least 0.2 mm thick: 78.5 g x (2 kg)^(2/3). Aluminium foil is thinner, so it is not judged.
/// Source: tin-sheet.
/// </summary>
internal static class TinTooSmall
{
    private const double GramsPerSquare = 78.5;
    private const double LitresPerKilogram = 2;

    public static IEnumerable<Finding> Check(Formula formula)
    {
        foreach (var step in formula.Recipe.Steps.Where(step => step.Kind is StepKind.Proof or StepKind.Bake))
        {
            if (step.Vessel is { Shape: VesselShape.Tin, Material: VesselMaterial.Steel, Mass: { Grams: > 0 } tin }
                && formula.FindComponent(step.Component) is { Kind: ComponentKind.Dough, Mass: { Grams: > 0 } dough })
            {
                // Pieces that share a tin weigh more together; one piece is the least that is in it.
                var piece = formula.Recipe.Make is { Pieces: > 1, PieceMass: var each } ? each : dough;
                var litres = LitresPerKilogram * piece.Kilograms;
                if (Cubed(tin.Grams) < Cubed(GramsPerSquare) * litres * litres)
                {
                    yield return Report.Make(
                        "vessel-too-small", Grade.Warning, $"steps.{step.Id}", step.Position, ("step", step.Name), ("tin", tin), ("dough", piece));
                }
            }
        }
    }

    private static double Cubed(double number) => number * number * number;
}
