using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Shapes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>One piece of a portion as it stands in the oven, sprung, and what it is to heat.</summary>
internal static class RisenForm
{
    /// <summary>
    /// How far a piece comes in the oven, from where it goes in to what its flour holds, in logarithms: one with little gas springs most. White bread on
    /// a deck came to 5 mL a gram, tins are made for 3.1 to 4.4. A choice. Sources: rise-ceiling, pan-volume.
    /// </summary>
    private const double SpringShare = 0.8;

    /// <summary>A dome on a tray as a cylinder of nine tenths of its radius and its volume. Source: house-bake-section.</summary>
    public const double CylinderPerDome = 0.9;

    /// <summary>Null where the composition is not known well enough to say how large the dough is without gas.</summary>
    public static PieceForm? Of(Step step, Portion portion, Stage stage)
    {
        if (ThermalProperties.Of(portion.Composition, Temperature.FromCelsius(25)) is not { } properties)
        {
            return null;
        }

        var gasFree = portion.Mass.Grams / 1000 / portion.Pieces / properties.Density.KilogramsPerCubicMetre;
        return Of(step, portion, stage, gasFree);
    }

    /// <param name="gasFree">Volume of one piece without gas, m³.</param>
    public static PieceForm Of(Step step, Portion portion, Stage stage, double gasFree)
    {
        var shaped = gasFree / (1 - Bodies.AirAfterMixing);
        return PieceOf.In(step, portion, shaped, gasFree * GrowthOf(portion, stage)[0] / shaped);
    }

    /// <summary>Volume in the oven over that without gas, in each lane. What never rose is no larger than it is.</summary>
    public static double[] GrowthOf(Portion portion, Stage stage)
    {
        var growth = new double[stage.Lanes];
        for (var lane = 0; lane < growth.Length; lane++)
        {
            var enters = portion.Dough is { } dough ? dough.VolumePerGasFree[lane] : 1;
            var holds = stage.Priors.Rise.Ceiling[lane] / (1 - Bodies.AirAfterMixing);
            growth[lane] = portion.Swollen(portion.Dough is null ? 1 : enters * Elementary.Pow(Math.Max(1, holds / enters), SpringShare));
        }

        return growth;
    }

    /// <summary>Radius of the cylinder that stands for a dome.</summary>
    public static double DomeRadius(PieceForm form) => CylinderPerDome * Elementary.Pow(3 * form.CubicMetres / (2 * Math.PI), 1.0 / 3);

    /// <summary>The one direction in which heat runs through it.</summary>
    public static RadialForm Radial(PieceForm form)
    {
        RadialForm Cylinder(double radius) =>
            RadialForm.OfCylinder(Length.FromMetres(radius), Length.FromMetres(form.CubicMetres / (Math.PI * radius * radius)));
        return form switch
        {
            { Shape: PieceShape.Ball or PieceShape.Boule } => Cylinder(DomeRadius(form)),
            { Shape: PieceShape.Batard or PieceShape.Baguette } => Cylinder(form.Wide.Metres / 2),
            { Shape: PieceShape.Ring } => Cylinder(form.High.Metres / 2),
            { Shape: PieceShape.TinLoaf } when form.Long != form.Wide => RadialForm.OfBox(form.Long, form.Wide, form.High),
            { Shape: PieceShape.Sheet } => RadialForm.OfBox(form.Long, form.Wide, form.High),
            _ => Cylinder(form.Long.Metres / 2),
        };
    }
}
