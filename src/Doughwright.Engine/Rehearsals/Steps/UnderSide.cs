using Doughwright.Engine.Recipes;
using Doughwright.Engine.Shapes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// How much of a baking piece lies on what is under it, and how much of it gives off no vapour. Told from the body that stands for it in the oven, along one
/// radius as over its section. Source: house-bake-lanes.
/// </summary>
internal static class UnderSide
{
    /// <summary>Of the mantle of a stick or a ring, what lies: a round stick sags on to a quarter of it. A choice.</summary>
    public const double OfStick = 0.25;

    /// <summary>Of the surface of a piece of which the shape is not known. A choice: between half a ball, a third of which lies, and a bun.</summary>
    public const double Usual = 0.3;

    /// <summary>Share of the surface that lies on a tray, a stone or the floor of a tin, 0 to 1.</summary>
    public static double Share(PieceForm form) => form.Shape switch
    {
        PieceShape.Batard or PieceShape.Baguette => OfStick * form.Long / (form.Long + (form.Wide / 2)),
        PieceShape.Ring => OfStick,
        PieceShape.TinLoaf when form.Long != form.Wide => OfBox(form),
        PieceShape.Sheet => OfBox(form),
        PieceShape.Ball or PieceShape.Boule => OfCylinder(RisenForm.DomeRadius(form), form.CubicMetres),
        _ => OfCylinder(form.Long.Metres / 2, form.CubicMetres),
    };

    /// <summary>Share of the surface that gives off no vapour: what lies, and of what is in a tin all but its top. What is on a rack is open all round.</summary>
    public static double Shut(PieceForm form, BakedOn on) => form.Shape switch
    {
        PieceShape.TinLoaf => 1 - Share(form),
        // Its tray or tin goes on the rack with it.
        PieceShape.Sheet => Share(form),
        _ => on == BakedOn.Rack ? 0 : Share(form),
    };

    /// <summary>Of an upright cylinder, its floor: r/2(r + h).</summary>
    public static double OfCylinder(double radius, double cubicMetres) => radius / (2 * (radius + (cubicMetres / (Math.PI * radius * radius))));

    /// <summary>Of a box, its floor.</summary>
    private static double OfBox(PieceForm form)
    {
        var (length, width, height) = (form.Long.Metres, form.Wide.Metres, form.CubicMetres / form.Long.Metres / form.Wide.Metres);
        return length * width / (2 * ((length * width) + (length * height) + (width * height)));
    }
}
