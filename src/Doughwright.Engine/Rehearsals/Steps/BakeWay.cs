using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What a bake came to in every lane, told on request.</summary>
/// <param name="Core">What counts as a done core, °C.</param>
/// <param name="Minutes">How long it took.</param>
/// <param name="Transfer">What the oven gave, against its default.</param>
/// <param name="RoomCelsius">The air when it comes out.</param>
/// <param name="ColourMinutes">When the crust is as brown as at home; null where no bake at home says how brown that is.</param>
internal sealed record BakeWay(BakedPiece Baked, OvenPiece Piece, PerLane Core, PerLane Minutes, PerLane Transfer, PerLane? ColourMinutes, double RoomCelsius)
{
    /// <summary>How many times as long it takes over a section through the piece.</summary>
    public double Moved { get; init; } = 1;

    /// <summary>The same, where nobody timed the bake: then it is the piece that is slower, and stays so out of the oven.</summary>
    public double Slower { get; init; } = 1;

    /// <summary>Null where what follows the oven does not come to rest.</summary>
    public BakeTelling? Tell() => Piece.CarriesOn(Minutes.Central, Transfer.Central, Baked.Pace.Central, RoomCelsius) is { } carried ? Tell(carried.Celsius, carried.Minutes) : null;

    private BakeTelling Tell(double carriesTo, double carriesFor) =>
        new(
            ToTemperature(Baked.Core(Minutes)),
            ToTemperature(Baked.Surface(Minutes)),
            Report.PercentOf(Ended(Baked.Loss(Minutes))),
            Temperature.FromCelsius(Core.Central),
            Duration.FromMinutes(Moved * Minutes.Central / Baked.Longer.Central),
            Temperature.FromCelsius(carriesTo),
            Duration.FromMinutes(Slower * carriesFor),
            ColourMinutes is { Central: var likely } && double.IsFinite(likely) ? Duration.FromMinutes(Moved * likely) : null,
            ColourMinutes is { } colour ? Crusts.Rank(Minutes.Central, colour.Central) : null);

    private Estimate<Temperature> ToTemperature(PerLane celsius) => Report.TemperatureOf(Ended(celsius));

    /// <summary>Lanes that never end say nothing here: the likely one stands in for them.</summary>
    private static PerLane Ended(PerLane values) => values.Map(value => double.IsFinite(value) ? value : values.Central);
}
