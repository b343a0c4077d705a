using Doughwright.Engine.Heat;
using Doughwright.Engine.Heat.Warming;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>A kind of place with the dough of a step in it: gives the lumps of heat for so much water, and what the dough stands in.</summary>
internal sealed class WarmPlace
{
    /// <summary>Share of a bowl's outer area that stands in the bath; the rest is its lid. Source: body-shapes.</summary>
    private const double WetShare = 2.0 / 3;

    /// <summary>No household basin holds more beside a bowl. common practice, no source.</summary>
    private const double MostBathKilograms = 10;

    /// <summary>A bowl swims in less.</summary>
    private const double LeastBathKilograms = 5;

    /// <summary>Water for each kilogram of dough, so that the dough does not make the temperature of the bath.</summary>
    private const double BathForDough = 5;

    private readonly StepAgain dough;
    private readonly PlaceWish wish;
    private readonly PerLane doughOutside;
    private readonly PerLane aroundShare;
    private readonly PlaceDraws draws;

    public WarmPlace(PlaceKind kind, StepAgain dough, PlaceWish wish, bool isWarming)
    {
        (Kind, this.dough, this.wish, IsWarming) = (kind, dough, wish, isWarming);
        draws = new(dough.Lanes);
        var pieces = Math.Max(1, dough.Before.Pieces);
        var body = dough.Body;
        DoughJoulesPerKelvin = pieces * (body.JoulesPerKelvin + body.WallJoulesPerKelvin);
        var (wet, dry) = (dough.Exchanging(ExchangeCoefficient.WaterBath) * WetShare, dough.Exchange * (1 - WetShare));
        Exchange = IsBath ? wet + dry : null;
        aroundShare = IsBath ? wet / (wet + dry) : PerLane.Same(1, dough.Lanes);
        doughOutside = (Exchange ?? dough.Exchange).Map(h => DoughJoulesPerKelvin / body.TimeConstantSeconds(h));
    }

    public PlaceKind Kind { get; }

    public bool IsBath => Kind == PlaceKind.WaterBath;

    /// <summary>Whether the room is colder than what is asked. Nobody leaves a lamp on to cool.</summary>
    public bool IsWarming { get; }

    public Enclosure? Enclosure => Kind switch
    {
        PlaceKind.Oven => Enclosure.Oven,
        PlaceKind.CoolBox => Enclosure.CoolBox,
        PlaceKind.Cupboard => Enclosure.Cupboard,
        _ => null,
    };

    /// <summary>
    /// How readily a bowl in a bath takes heat over its whole outer area, W/(m² K): from the bath where it is wet, from the room through its lid.
    /// Null where the step itself says how air gives it.
    /// </summary>
    public PerLane? Exchange { get; }

    public double DoughJoulesPerKelvin { get; }

    /// <summary>How long before the dough the water goes in, so that the walls are at its temperature. A bath needs none.</summary>
    public Duration Lead => IsBath ? Duration.Zero : Duration.FromMinutes(20);

    /// <summary>Water in the basin; as much as there is room for where the dough is large.</summary>
    public double BathKilograms => Math.Max(LeastBathKilograms, BathForDough * dough.Before.Mass.Kilograms);

    /// <summary>Whether what the dough stands in has room there.</summary>
    public bool Holds => dough.Holder switch
    {
        PlaceHolder.Bowl => dough.Before.Mass.Kilograms <= MostDoughKilograms,
        // A basin would stand in for the bowl's own wall, and a tray goes into no box.
        PlaceHolder.Tin => !IsBath && dough.Before.Mass.Kilograms <= MostDoughKilograms,
        _ => Kind is PlaceKind.Oven or PlaceKind.Cupboard && dough.Before.Mass.Kilograms <= MostDoughKilograms,
    };

    private double MostDoughKilograms => Enclosure?.MostDoughKilograms ?? MostBathKilograms / BathForDough;

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
                WaterToDough = doughOutside[lane] * aroundShare[lane],
                WaterToRoom = jug,
                DoughToRoom = doughOutside[lane] * (1 - aroundShare[lane]),
            };
        }

        return new()
        {
            WaterJoulesPerKelvin = WaterVessel.JoulesPerKelvin(waterKilograms),
            InsideJoulesPerKelvin = enclosure.AirJoulesPerKelvin + draws.Skin(enclosure)[lane],
            DoughJoulesPerKelvin = DoughJoulesPerKelvin,
            WaterToInside = jug,
            InsideToDough = doughOutside[lane],
            InsideToRoom = draws.Walls(enclosure)[lane],
            AirJoulesPerKelvin = enclosure.AirJoulesPerKelvin,
            LampWatts = Kind == PlaceKind.Oven && IsWarming && wish.Lamp is { } lamp ? lamp.Watts : 0,
            OpenSquareMetres = wish.OpenWater ? WaterVessel.OpenSquareMetres(waterKilograms) : 0,
        };
    }

    public PlaceTrace Follow(double waterKilograms, PlaceFilling filling, int lane, int minutes) =>
        new PlaceRun(Lumps(waterKilograms, lane), filling, dough.Room, dough.Start[lane]).Follow(minutes);

    /// <summary>What the dough stands in, where a thermometer is laid.</summary>
    public double Around(PlaceState state) => IsBath ? state.Water : state.Inside;

    /// <summary>
    /// The one temperature that passes as much heat to the dough as all that is around it: for a bowl in a bath the water and the room over its
    /// lid, each by its share. So the dough of the balance and the dough that rises meet the same.
    /// </summary>
    public double Felt(PlaceState state, double roomCelsius, int lane) => roomCelsius + (aroundShare[lane] * (Around(state) - roomCelsius));

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
            : [jug, new("place-bath", EstimateOf(dough.Exchanging(ExchangeCoefficient.WaterBath) * WetShare), "W/(m² K)", "exchange-defaults")];
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
