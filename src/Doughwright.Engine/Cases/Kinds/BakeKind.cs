using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>A piece in an oven. Its size is that as it goes in, risen.</summary>
internal sealed class BakeKind : CaseKind
{
    private const string Dough = "dough";
    private const string Heat = "specific heat";
    private const string Mass = "mass";
    private const string Start = "start";
    private const string Altitude = "altitude";
    private const string Core = "core";

    public static CaseQuantity TimeToCore { get; } = new("time to core temperature", Dimension.Temperature, Dimension.Time);

    public static CaseQuantity TimeToSurface { get; } = new("time to surface temperature", Dimension.Temperature, Dimension.Time);

    public static CaseQuantity TimeByOven { get; } = new("time by oven", Dimension.Temperature, Dimension.Ratio, IsAgainst: true);

    public static CaseQuantity LossByCore { get; } = new("loss by core temperature", Dimension.Temperature, Dimension.Share);

    public static CaseQuantity CoreTemperature { get; } = new("core temperature", Dimension.Time, Dimension.Temperature);

    public static CaseQuantity SurfaceTemperature { get; } = new("surface temperature", Dimension.Time, Dimension.Temperature);

    public static CaseQuantity Moisture { get; } = new("moisture", Dimension.Time, Dimension.Moisture);

    public static CaseQuantity Loss { get; } = new("loss", Dimension.Time, Dimension.Share);

    public override string Name => "bake";

    public override IReadOnlyList<string> Keys => [Dough, Heat, Mass, .. PieceSize.Keys, Start, .. CaseOven.Keys, Altitude, Core];

    public override IReadOnlyList<CaseQuantity> Quantities => [TimeToCore, TimeToSurface, TimeByOven, LossByCore, CoreTemperature, SurfaceTemperature, Moisture, Loss];

    public override ICaseModel? Read(CaseConditions conditions)
    {
        var dough = ReadDough(conditions);
        var mass = conditions.Need(Mass, Dimension.Mass);
        var size = PieceSize.Read(conditions);
        var start = conditions.Need(Start, Dimension.DoughWarmth);
        var air = StandardAtmosphere.PressureAt(Length.FromMetres(conditions.May(Altitude, Dimension.Altitude) ?? 0));
        var oven = CaseOven.Read(conditions, size?.Under, air);
        var core = conditions.May(Core, Dimension.Temperature);
        if (dough is null || mass is null || size is null || start is null || oven is null)
        {
            return null;
        }

        var gasFree = mass.Value / 1000 / dough.Density;
        if (size.CubicMetres < gasFree)
        {
            conditions.Tell(
                CaseFaults.SmallerThanDough, Mass, ("size", Dimension.Volume.Text(1000 * size.CubicMetres)), ("gasFree", Dimension.Volume.Text(1000 * gasFree)));
            return null;
        }

        var piece = new RadialPiece
        {
            Dough = dough,
            Mass = Engine.Quantities.Mass.FromGrams(mass.Value),
            CubicMetres = size.CubicMetres,
            Form = size.Form,
            Start = Temperature.FromCelsius(start.Value),
            Pressure = air,
            Effectiveness = BakeLaws.Effectiveness.Central,
            Skin = BakeLaws.Skin.Central,
            Oven = oven.Oven,
            Shut = oven.Shut,
        };
        return new OvenBake(piece, oven.IsStated, core);
    }

    private static BakingDough? ReadDough(CaseConditions conditions)
    {
        if (conditions.Clash(Dough, Heat))
        {
            return null;
        }

        if (conditions.Has(Dough))
        {
            return conditions.MayLines(Dough, ComponentKind.Dough) is { } lines ? Known(conditions, Dough, BakingDough.Of(DoughOf.Portion(lines).Portion.Composition)) : null;
        }

        if (conditions.Has(Heat))
        {
            return conditions.May(Heat, Dimension.SpecificHeat) is { } heat ? Known(conditions, Heat, BakingDough.Of(1000 * heat)) : null;
        }

        conditions.TellOneOf(Dough, Heat);
        return null;
    }

    /// <summary>What has too little water in it bakes in another way.</summary>
    private static BakingDough? Known(CaseConditions conditions, string key, BakingDough? dough)
    {
        if (dough is null)
        {
            conditions.Tell(CaseFaults.NoDough, key);
        }

        return dough;
    }
}
