using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>A dough that rises in a room, a proofer or a fridge: as a bulk that nobody has timed before.</summary>
internal sealed class RiseKind : CaseKind
{
    public const string Dough = "dough";
    public const string Mass = "mass";
    public const string Pieces = "pieces";
    public const string Called = "called";
    public const string Start = "start";
    public const string Air = "air";
    public const string Place = "where";
    public const string Cover = "cover";
    public const string Vessel = "vessel";
    public const string Altitude = "altitude";
    public const string To = "to";

    public static CaseQuantity Volume { get; } = new("volume", Dimension.Time, Dimension.Ratio);

    public static CaseQuantity TimeToVolume { get; } = new("time to volume", Dimension.Growth, Dimension.Time);

    public static CaseQuantity SpeedByAltitude { get; } = new("speed by altitude", Dimension.Altitude, Dimension.Ratio, IsAgainst: true);

    public static CaseQuantity SpeedByAir { get; } = new("speed by air", Dimension.Air, Dimension.Ratio, IsAgainst: true);

    public static CaseQuantity SpeedByDough { get; } = new("speed by dough temperature", Dimension.DoughWarmth, Dimension.Ratio, IsAgainst: true);

    public static CaseQuantity SpeedBySugar { get; } = new("speed by sugar", Dimension.Share, Dimension.Ratio, IsAgainst: true);

    public static CaseQuantity SpeedBySalt { get; } = new("speed by salt", Dimension.Share, Dimension.Ratio, IsAgainst: true);

    public static CaseQuantity SpeedByYeast { get; } = new("speed by yeast", Dimension.Share, Dimension.Ratio, IsAgainst: true);

    public override string Name => "rise";

    public override IReadOnlyList<string> Keys => [Dough, Mass, Pieces, Called, Start, Air, Place, Cover, Vessel, Altitude, To];

    public override IReadOnlyList<CaseQuantity> Quantities =>
        [Volume, TimeToVolume, SpeedByAltitude, SpeedByAir, SpeedByDough, SpeedBySugar, SpeedBySalt, SpeedByYeast];

    public override ICaseModel? Read(CaseConditions conditions)
    {
        var dough = conditions.NeedLines(Dough, ComponentKind.Dough);
        var mass = conditions.May(Mass, Dimension.Mass);
        var start = conditions.Need(Start, Dimension.DoughWarmth);
        var air = conditions.NeedAir(Air);
        var rising = new RisingDough
        {
            Pieces = conditions.MayCount(Pieces, Limits.Pieces) ?? 1,
            Called = conditions.MayWords(Called) ?? "",
            Where = conditions.MayBe<Where>(Place) ?? Where.Room,
            Cover = conditions.MayBe<Cover>(Cover) ?? Recipes.Cover.Covered,
            Vessel = conditions.MayVessel(Vessel) ?? Kitchens.Vessel.None,
            Altitude = Length.FromMetres(conditions.May(Altitude, Dimension.Altitude) ?? 0),
            To = conditions.May(To, Dimension.Growth) ?? 2,
        };
        return dough is null || start is null || air is null ? null : rising with
        {
            Dough = mass is { } grams ? CaseRecipe.Weighing(dough, Engine.Quantities.Mass.FromGrams(grams)) : dough,
            Start = Temperature.FromCelsius(start.Value),
            Air = air,
        };
    }
}
