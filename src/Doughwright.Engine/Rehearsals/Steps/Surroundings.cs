using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What a dough stands in when a place was made warm for it: a temperature for every minute and lane.</summary>
/// <param name="minutes">Minute by minute, the beginning included, at [minute × lanes + lane]. After the last it stays as it is then.</param>
/// <param name="exchange">How readily the place gives heat to the outer area of the dough, W/(m² K); null for what the step itself says.</param>
internal sealed class Surroundings(double[] minutes, int lanes, PerLane? exchange)
{
    public PerLane? Exchange { get; } = exchange;

    private int Last => (minutes.Length / lanes) - 1;

    /// <summary>Half way through each step of a run, in the first so many lanes, at [step × lanes + lane].</summary>
    public double[] Over(Duration from, Duration step, int steps, int ofLanes)
    {
        var celsius = new double[steps * ofLanes];
        for (var index = 0; index < steps; index++)
        {
            var at = (from + (step * (index + 0.5))).Minutes;
            for (var lane = 0; lane < ofLanes; lane++)
            {
                celsius[(index * ofLanes) + lane] = At(at, lane);
            }
        }

        return celsius;
    }

    public double At(double minute, int lane)
    {
        var whole = (int)Math.Min(minute, Last);
        var next = Math.Min(whole + 1, Last);
        var share = Math.Min(minute, Last) - whole;
        var (before, after) = (minutes[(whole * lanes) + lane], minutes[(next * lanes) + lane]);
        return before + (share * (after - before));
    }
}
