using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>How large a risen piece is: its volume alone, or its shape and its sides.</summary>
internal sealed record PieceSize(double CubicMetres, RadialForm Form)
{
    /// <summary>Share of its surface that it lies on; null for a ball.</summary>
    public double? Under { get; private init; }

    private const string ShapeKey = "shape";
    private const string Diameter = "diameter";
    private const string Long = "length";
    private const string Width = "width";
    private const string Height = "height";
    private const string Volume = "volume";

    public static IReadOnlyList<string> Keys { get; } = [ShapeKey, Diameter, Long, Width, Height, Volume];

    public static PieceSize? Read(CaseConditions conditions)
    {
        if (conditions.Clash(Volume, ShapeKey))
        {
            return null;
        }

        if (conditions.Has(Volume))
        {
            return conditions.May(Volume, Dimension.Volume) is { } litres ? new(litres / 1000, RadialForm.Ball) : null;
        }

        if (!conditions.Has(ShapeKey))
        {
            conditions.TellOneOf(Volume, ShapeKey);
            return null;
        }

        double? Side(string key) => conditions.Need(key, Dimension.Size);
        switch (conditions.MayBe<Shape>(ShapeKey))
        {
            case Shape.Ball:
                return Side(Diameter) is { } ball ? new(Math.PI / 6 * ball * ball * ball, RadialForm.Ball) : null;
            case Shape.Cylinder:
                return (Side(Diameter), Side(Height)) is ({ } across, { } high)
                    ? new(Math.PI / 4 * across * across * high, RadialForm.OfCylinder(Length.FromMetres(across / 2), Length.FromMetres(high)))
                    {
                        Under = UnderSide.OfCylinder(across / 2, Math.PI / 4 * across * across * high),
                    }
                    : null;
            case Shape.Dome:
                return (Side(Diameter), Side(Height)) is ({ } wide, { } tall) ? Dome(wide / 2, tall) : null;
            case Shape.Brick:
                return (Side(Long), Side(Width), Side(Height)) is ({ } one, { } two, { } three)
                    ? new(one * two * three, RadialForm.OfBox(Length.FromMetres(one), Length.FromMetres(two), Length.FromMetres(three)))
                    {
                        Under = one * two / (2 * ((one * two) + (one * three) + (two * three))),
                    }
                    : null;
            default:
                return null;
        }
    }

    /// <summary>Half of an ellipsoid of revolution, which conducts as a cylinder of its volume, a little narrower than it.</summary>
    private static PieceSize Dome(double radius, double height)
    {
        var volume = 2.0 / 3 * Math.PI * radius * radius * height;
        var narrower = RisenForm.CylinderPerDome * radius;
        return new(volume, RadialForm.OfCylinder(Length.FromMetres(narrower), Length.FromMetres(volume / (Math.PI * narrower * narrower))))
        {
            Under = UnderSide.OfCylinder(narrower, volume),
        };
    }

    private enum Shape
    {
        Ball,
        Cylinder,
        Dome,
        Brick,
    }
}
