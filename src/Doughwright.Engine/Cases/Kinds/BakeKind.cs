using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>A piece in an oven. Its size is that as it goes in, risen.</summary>
internal sealed class BakeKind : CaseKind
{
    private const string Mass = "mass";
    private const string ShapeKey = "shape";
    private const string Diameter = "diameter";
    private const string Long = "length";
    private const string Width = "width";
    private const string Height = "height";
    private const string Volume = "volume";
    private const string Start = "start";
    private const string Oven = "oven";
    private const string Mode = "mode";
    private const string Altitude = "altitude";
    private const string Coefficient = "coefficient";
    private const string Core = "core";

    public static CaseQuantity TimeToCore { get; } = new("time to core temperature", Dimension.Temperature, Dimension.Time);

    public static CaseQuantity TimeByOven { get; } = new("time by oven", Dimension.Temperature, Dimension.Ratio, IsAgainst: true);

    public override string Name => "bake";

    public override IReadOnlyList<string> Keys =>
        [Mass, ShapeKey, Diameter, Long, Width, Height, Volume, .. CaseMatter.Keys, Start, Oven, Mode, Altitude, Coefficient, Core];

    public override IReadOnlyList<CaseQuantity> Quantities =>
    [
        TimeToCore,
        TimeByOven,
        new("core temperature", Dimension.Time, Dimension.Temperature),
        new("surface temperature", Dimension.Time, Dimension.Temperature),
        new("moisture", Dimension.Time, Dimension.Moisture),
        new("loss", Dimension.Time, Dimension.Share),
    ];

    public override ICaseModel? Read(CaseConditions conditions)
    {
        var matter = CaseMatter.Read(conditions, conducts: false);
        var mass = conditions.Need(Mass, Dimension.Mass);
        var start = conditions.Need(Start, Dimension.Temperature);
        var oven = conditions.Need(Oven, Dimension.Temperature);
        var mode = conditions.MayBe<OvenAir>(Mode) ?? OvenAir.Measured;
        var altitude = conditions.May(Altitude, Dimension.Altitude) ?? 0;
        var coefficient = conditions.May(Coefficient, Dimension.Coefficient);
        var core = conditions.May(Core, Dimension.Temperature);
        var litres = ReadVolume(conditions);
        if (matter is null || mass is null || start is null || oven is null || litres is null)
        {
            return null;
        }

        var gasFree = 1000 / matter.Properties.Density.KilogramsPerCubicMetre;
        var growth = litres.Value * 1000 / (mass.Value * gasFree);
        if (growth < 1)
        {
            conditions.Tell(CaseFaults.SmallerThanDough, Volume, ("size", Dimension.Volume.Text(litres.Value)), ("gasFree", Dimension.Volume.Text(mass.Value * gasFree / 1000)));
            return null;
        }

        return new OvenBake(
            new(
                Engine.Quantities.Mass.FromGrams(mass.Value),
                matter.Properties.SpecificHeat.JoulesPerGramKelvin,
                gasFree,
                PerLane.Same(growth, Rehearser.OrdinaryLanes),
                PerLane.Same(start.Value, Rehearser.OrdinaryLanes)),
            oven.Value,
            mode,
            SaturatedWater.BoilingPoint(Length.FromMetres(altitude)),
            coefficient,
            core);
    }

    /// <summary>Volume in l: as stated, or from the shape and its sides.</summary>
    private static double? ReadVolume(CaseConditions conditions)
    {
        if (conditions.Clash(Volume, ShapeKey))
        {
            return null;
        }

        if (conditions.Has(Volume))
        {
            return conditions.May(Volume, Dimension.Volume);
        }

        if (!conditions.Has(ShapeKey))
        {
            conditions.TellOneOf(Volume, ShapeKey);
            return null;
        }

        double? Side(string key) => conditions.Need(key, Dimension.Size);
        return 1000 * (conditions.MayBe<Shape>(ShapeKey) switch
        {
            Shape.Ball => Side(Diameter) is { } ball ? Math.PI / 6 * ball * ball * ball : null,
            Shape.Cylinder => Round(Side(Diameter), Side(Height), Math.PI / 4),
            // Half of an ellipsoid of revolution.
            Shape.Dome => Round(Side(Diameter), Side(Height), Math.PI / 6),
            Shape.Brick => Product(Side(Long), Side(Width), Side(Height)),
            _ => null,
        });
    }

    private static double? Round(double? across, double? high, double factor) => factor * across * across * high;

    private static double? Product(double? one, double? two, double? three) => one * two * three;

    private enum Shape
    {
        Ball,
        Cylinder,
        Dome,
        Brick,
    }
}
