using Doughwright.Engine.Heat.Warming;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>One plan for a place and what comes of it, lane by lane.</summary>
/// <param name="Planned">Minutes that the water was planned for.</param>
/// <param name="Time">Minutes that the step then takes; null when they cannot be told, infinite where it does not end.</param>
internal sealed record PlaceTrial(WarmPlace Place, PlaceRecipe Recipe, PlaceTrace[] Traces, Surroundings Around, int Planned, PerLane? Time)
{
    /// <summary>The place is followed for so many times the likely time, for draws that take longer.</summary>
    private const int Beyond = 3;

    /// <summary>
    /// How often a place is planned anew for the time it gave the time before. It settles after two or three rounds; where the rounding of water
    /// keeps it from settling, the plan nearest to its own time is told.
    /// </summary>
    private const int MostRounds = 8;

    /// <summary>Whole minutes of the likely time in this place; those it was planned for where the step does not end there.</summary>
    public int Minutes => Own ?? Planned;

    private int? Own => Time is { } time && time.Central is >= 1 and <= Places.LongestMinutes ? (int)Math.Ceiling(time.Central) : null;

    private int Off => Math.Abs(Minutes - Planned);

    /// <summary>
    /// Plans the water for the time that the step takes in that very place. The water itself decides that time, so each round plans for what the
    /// last one gave.
    /// </summary>
    /// <param name="minutes">A first guess.</param>
    public static PlaceTrial Of(WarmPlace place, StepAgain dough, Temperature target, int minutes)
    {
        var last = Planning(place, dough, target, minutes);
        var best = last;
        for (var round = 1; round < MostRounds && best.Off > 0; round++)
        {
            last = Planning(place, dough, target, last.Minutes);
            best = last.Off < best.Off ? last : best;
        }

        return best;
    }

    private static PlaceTrial Planning(WarmPlace place, StepAgain dough, Temperature target, int minutes)
    {
        var recipe = new PlaceSearch(place, target.Celsius, minutes, dough.Stage).Find();
        var traces = Enumerable.Range(0, dough.Lanes)
            .Select(lane => place.Follow(recipe.WaterKilograms, recipe.Filling, lane, Math.Min(Beyond * minutes, Places.LongestMinutes)))
            .ToArray();
        var around = AroundOf(place, traces, dough);
        return new(place, recipe, traces, around, minutes, dough.MinutesIn(around));
    }

    private static Surroundings AroundOf(WarmPlace place, PlaceTrace[] traces, StepAgain dough)
    {
        var minutes = new double[(traces[0].Minutes + 1) * traces.Length];
        for (var minute = 0; minute <= traces[0].Minutes; minute++)
        {
            var room = dough.Room.At(Duration.FromMinutes(minute)).Celsius;
            for (var lane = 0; lane < traces.Length; lane++)
            {
                minutes[(minute * traces.Length) + lane] = place.Felt(traces[lane][minute], room, lane);
            }
        }

        return new(minutes, traces.Length, place.Exchange);
    }
}
