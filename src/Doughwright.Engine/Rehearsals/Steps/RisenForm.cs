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
    /// Volume of the loaf over that of the piece that went in. The published small loaf more than doubled; the trade reckons with a third to a
    /// half again. Common practice, no source.
    /// </summary>
    public const double OvenSpring = 1.8;

    /// <summary>A dome on a tray as a cylinder of nine tenths of its radius and its volume. Source: house-bake-section.</summary>
    private const double CylinderPerDome = 0.9;

    /// <summary>Null where the composition is not known well enough to say how large the dough is without gas.</summary>
    public static PieceForm? Of(Step step, Portion portion)
    {
        if (ThermalProperties.Of(portion.Composition, Temperature.FromCelsius(25)) is not { } properties)
        {
            return null;
        }

        var gasFree = portion.Mass.Grams / 1000 / portion.Pieces / properties.Density.KilogramsPerCubicMetre;
        return Of(step, portion, gasFree);
    }

    /// <param name="gasFree">Volume of one piece without gas, m³.</param>
    public static PieceForm Of(Step step, Portion portion, double gasFree)
    {
        var shaped = gasFree / (1 - Bodies.AirAfterMixing);
        return PieceOf.In(step, portion, shaped, gasFree * OvenSpring * portion.Swollen(portion.Dough is { } dough ? dough.VolumePerGasFree.Central : 1) / shaped);
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
