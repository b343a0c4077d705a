using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat.Warming;

/// <summary>How a warm place is filled with water.</summary>
/// <param name="Celsius">Water as it goes in, each time.</param>
/// <param name="Lead">How long before the dough the first water goes in.</param>
/// <param name="RenewEvery">After the dough went in, fresh water of the same warmth so often; null for never.</param>
internal sealed record PlaceFilling(double Celsius, Duration Lead, Duration? RenewEvery);

/// <summary>
/// Follows a warm place minute by minute. Steps in time are of the fourth order (Runge and Kutta), which keeps sums of heat to the last
/// digits. Source: place-balance.
/// </summary>
internal sealed class PlaceRun
{
    /// <summary>The longest step, s.</summary>
    private const double LongestStep = 20;

    private readonly PlaceBodies bodies;
    private readonly PlaceFilling filling;
    private readonly AirProfile room;
    private readonly double doughCelsius;
    private readonly int substeps;
    private readonly double seconds;

    /// <param name="room">Air from when the dough goes in; before that as it is then.</param>
    /// <param name="doughCelsius">Dough when it goes in.</param>
    public PlaceRun(PlaceBodies bodies, PlaceFilling filling, AirProfile room, double doughCelsius)
    {
        (this.bodies, this.filling, this.room, this.doughCelsius) = (bodies, filling, room, doughCelsius);
        substeps = (int)Math.Ceiling(60 / Math.Min(LongestStep, 0.5 / bodies.QuickestPerSecond));
        seconds = 60.0 / substeps;
    }

    /// <summary>Heat brought in with water and lamp, and with the dough as it is against the room, J.</summary>
    public double BroughtJoules { get; private set; }

    /// <summary>Heat left to the room, the air that went out of the door included, J.</summary>
    public double LostJoules { get; private set; }

    /// <summary>
    /// Every minute from when the dough goes in, the beginning included, for so many minutes; before it the lead, from the first water on.
    /// </summary>
    public PlaceTrace Follow(int minutes)
    {
        var lead = (int)Math.Round(filling.Lead.Minutes);
        var trace = new PlaceTrace(lead, minutes);
        var start = room.At(Duration.Zero).Celsius;
        (BroughtJoules, LostJoules) = (0, 0);
        var empty = bodies with { InsideToDough = 0, WaterToDough = 0, DoughToRoom = 0 };
        var state = new PlaceState(filling.Celsius, start, doughCelsius, 0);
        for (var minute = -lead; ; minute++)
        {
            if (minute > 0 && filling.RenewEvery is { } every && minute % (int)Math.Round(every.Minutes) == 0 && minute < minutes)
            {
                state = Renew(state, RoomAt(minute));
            }

            trace.Set(minute, state);
            if (minute == minutes)
            {
                LostJoules += state.Lost;
                return trace;
            }

            state = Minute(minute < 0 ? empty : bodies, state, RoomAt(minute + 0.5));
            BroughtJoules += bodies.LampWatts * 60;
        }
    }

    private double RoomAt(double minutes) => room.At(Duration.FromMinutes(Math.Max(0, minutes))).Celsius;

    private PlaceState Renew(PlaceState state, double roomCelsius)
    {
        var door = bodies.AirJoulesPerKelvin * (state.Inside - roomCelsius);
        BroughtJoules += bodies.WaterJoulesPerKelvin * (filling.Celsius - state.Water);
        LostJoules += door;
        return state with { Water = filling.Celsius, Inside = state.Inside - (door / bodies.InsideJoulesPerKelvin) };
    }

    private PlaceState Minute(PlaceBodies touching, PlaceState state, double roomCelsius)
    {
        for (var substep = 0; substep < substeps; substep++)
        {
            var one = PlaceBalance.Rate(touching, state, roomCelsius);
            var two = PlaceBalance.Rate(touching, state.Plus(one, seconds / 2), roomCelsius);
            var three = PlaceBalance.Rate(touching, state.Plus(two, seconds / 2), roomCelsius);
            var four = PlaceBalance.Rate(touching, state.Plus(three, seconds), roomCelsius);
            state = state.Plus(one, seconds / 6).Plus(two, seconds / 3).Plus(three, seconds / 3).Plus(four, seconds / 6);
        }

        return state;
    }
}
