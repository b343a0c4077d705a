using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
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
    private const string Oven = "oven";
    private const string Mode = "mode";
    private const string On = "on";
    private const string Altitude = "altitude";
    private const string Coefficient = "coefficient";
    private const string Core = "core";

    public static CaseQuantity TimeToCore { get; } = new("time to core temperature", Dimension.Temperature, Dimension.Time);

    public static CaseQuantity TimeByOven { get; } = new("time by oven", Dimension.Temperature, Dimension.Ratio, IsAgainst: true);

    public static CaseQuantity CoreTemperature { get; } = new("core temperature", Dimension.Time, Dimension.Temperature);

    public static CaseQuantity SurfaceTemperature { get; } = new("surface temperature", Dimension.Time, Dimension.Temperature);

    public static CaseQuantity Moisture { get; } = new("moisture", Dimension.Time, Dimension.Moisture);

    public static CaseQuantity Loss { get; } = new("loss", Dimension.Time, Dimension.Share);

    public override string Name => "bake";

    public override IReadOnlyList<string> Keys => [Dough, Heat, Mass, .. PieceSize.Keys, Start, Oven, Mode, On, Altitude, Coefficient, Core];

    public override IReadOnlyList<CaseQuantity> Quantities => [TimeToCore, TimeByOven, CoreTemperature, SurfaceTemperature, Moisture, Loss];

    public override ICaseModel? Read(CaseConditions conditions)
    {
        var dough = ReadDough(conditions);
        var mass = conditions.Need(Mass, Dimension.Mass);
        var size = PieceSize.Read(conditions);
        var start = conditions.Need(Start, Dimension.DoughWarmth);
        var oven = conditions.Need(Oven, Dimension.Temperature);
        var mode = conditions.MayBe<OvenMode>(Mode) ?? OvenMode.Fan;
        var on = conditions.MayBe<Standing>(On) ?? Standing.Tray;
        var altitude = conditions.May(Altitude, Dimension.Altitude) ?? 0;
        var coefficient = conditions.May(Coefficient, Dimension.Coefficient);
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
            Pressure = StandardAtmosphere.PressureAt(Length.FromMetres(altitude)),
            Effectiveness = BakeLaws.Effectiveness.Central,
            Skin = BakeLaws.Skin.Central,
            Oven = coefficient is { } stated ? new(oven.Value, stated, 0) : BakeLaws.Oven(mode, oven.Value),
            Shut = on switch { Standing.Tin => OvenPiece.ShutByTin, Standing.Tray => OvenPiece.ShutByTray, _ => 0 },
        };
        return new OvenBake(piece, IsOvenStated: coefficient is not null, core);
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

    private enum Standing
    {
        Tray,
        Tin,
        Rack,
    }
}
