using Doughwright.Engine.Heat;
using Doughwright.Engine.Heat.Warming;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>A kind of place with the dough of a step in it: gives the lumps of heat for so much water, and what the dough stands in.</summary>
internal sealed class WarmPlace
{
    /// <summary>Share of a bowl's outer area that stands in the bath; the rest is its lid. Source: body-shapes.</summary>
    private const double WetShare = 2.0 / 3;

    private readonly StepAgain dough;
    private readonly PlaceWish wish;
    private readonly PerLane doughToAround;
    private readonly PerLane doughToRoom;
    private readonly PlaceDraws draws;

    public WarmPlace(PlaceKind kind, StepAgain dough, PlaceWish wish)
    {
        (Kind, this.dough, this.wish) = (kind, dough, wish);
        draws = new(dough.Lanes);
        var pieces = Math.Max(1, dough.Before.Pieces);
        var body = dough.Body;
        DoughJoulesPerKelvin = pieces * (body.JoulesPerKelvin + body.WallJoulesPerKelvin);
        Exchange = IsBath ? ExchangeCoefficient.WaterBath with { WattsPerSquareMetreKelvin = WetShare * ExchangeCoefficient.WaterBath.WattsPerSquareMetreKelvin } : null;
        doughToAround = (IsBath ? dough.Exchanging(Exchange!) : dough.Exchange).Map(h => DoughJoulesPerKelvin / body.TimeConstantSeconds(h));
        doughToRoom = IsBath ? dough.Exchange.Map(h => pieces * (1 - WetShare) * h * body.OuterSquareMetres) : PerLane.Same(0, dough.Lanes);
    }

    public PlaceKind Kind { get; }

    public bool IsBath => Kind == PlaceKind.WaterBath;

    public Enclosure? Enclosure => Kind switch
    {
        PlaceKind.Oven => Enclosure.Oven,
        PlaceKind.CoolBox => Enclosure.CoolBox,
        PlaceKind.Cupboard => Enclosure.Cupboard,
        _ => null,
    };

    /// <summary>How a bath gives heat to the bowl; null where the step itself says how air does.</summary>
    public ExchangeCoefficient? Exchange { get; }

    public double DoughJoulesPerKelvin { get; }

    /// <summary>How long before the dough the water goes in, so that the walls are warm. A bath needs none.</summary>
    public Duration Lead => IsBath ? Duration.Zero : Duration.FromMinutes(20);

    /// <summary>A bowl swims in less water, and a basin holds no more.</summary>
    public double BathKilograms => Math.Min(10, Math.Max(5, 5 * dough.Before.Mass.Kilograms));

    public double MostWaterKilograms => Enclosure?.MostWaterKilograms ?? BathKilograms;

    /// <summary>The lumps in one lane, with so much water.</summary>
    public PlaceBodies Lumps(double waterKilograms, int lane)
    {
        var jug = draws.Jug[lane] * WaterVessel.OuterSquareMetres(waterKilograms);
        if (Enclosure is not { } enclosure)
        {
            return new()
            {
                WaterJoulesPerKelvin = WaterVessel.JoulesPerKelvin(waterKilograms),
                InsideJoulesPerKelvin = 1,
                DoughJoulesPerKelvin = DoughJoulesPerKelvin,
                WaterToDough = doughToAround[lane],
                WaterToRoom = jug,
                DoughToRoom = doughToRoom[lane],
            };
        }

        return new()
        {
            WaterJoulesPerKelvin = WaterVessel.JoulesPerKelvin(waterKilograms),
            InsideJoulesPerKelvin = enclosure.AirJoulesPerKelvin + draws.Skin(enclosure)[lane],
            DoughJoulesPerKelvin = DoughJoulesPerKelvin,
            WaterToInside = jug,
            InsideToDough = doughToAround[lane],
            InsideToRoom = draws.Walls(enclosure)[lane],
            AirJoulesPerKelvin = enclosure.AirJoulesPerKelvin,
            LampWatts = Kind == PlaceKind.Oven && wish.Lamp is { } lamp ? lamp.Watts : 0,
            OpenSquareMetres = wish.OpenWater ? WaterVessel.OpenSquareMetres(waterKilograms) : 0,
        };
    }

    public PlaceTrace Follow(double waterKilograms, PlaceFilling filling, int lane, int minutes) =>
        new PlaceRun(Lumps(waterKilograms, lane), filling, dough.Room, dough.Start[lane]).Follow(minutes);

    /// <summary>What the dough stands in.</summary>
    public double Around(PlaceState state) => IsBath ? state.Water : state.Inside;

    /// <summary>What was assumed of it.</summary>
    public IReadOnlyList<PlaceFigure> RestsOn()
    {
        var jug = new PlaceFigure("place-jug", EstimateOf(draws.Jug), "W/(m² K)", "hot-surfaces");
        return Enclosure is { } enclosure
            ?
            [
                new("place-walls", EstimateOf(draws.Walls(enclosure)), "W/K", SourceOf(Kind)),
                new("place-skin", EstimateOf(draws.Skin(enclosure) * 0.001), "kJ/K", SourceOf(Kind)),
                jug,
            ]
            : [jug, new("place-bath", EstimateOf(dough.Exchanging(Exchange!)), "W/(m² K)", "exchange-defaults")];
    }

    private static string SourceOf(PlaceKind kind) => kind switch
    {
        PlaceKind.Oven => "place-oven",
        PlaceKind.CoolBox => "place-cool-box",
        _ => "place-cupboard",
    };

    private static Estimate<double> EstimateOf(PerLane values)
    {
        var spread = Numerics.Spread.OfLanes(values.Values);
        return new(spread.Central, spread.Low, spread.High);
    }
}
