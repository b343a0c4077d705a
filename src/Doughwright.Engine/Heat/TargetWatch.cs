using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Heat;

/// <summary>Watches the means for the step in which each lane passes its target.</summary>
internal sealed class TargetWatch
{
    private readonly CoolingTarget target;
    private readonly double stepMinutes;
    private readonly double[]? limits;
    private readonly double[] last;
    private readonly bool[] ended;
    private int open;

    public TargetWatch(CoolingTarget target, double stepMinutes, CoolingLanes lanes, double settles, double[]? limits)
    {
        this.target = target;
        this.stepMinutes = stepMinutes;
        this.limits = limits;
        last = [.. lanes.StartCelsius];
        ended = new bool[lanes.Count];
        open = lanes.Count;
        Result = new(new double[lanes.Count], new double[lanes.Count], settles);
        Result.Minutes.AsSpan().Fill(double.PositiveInfinity);
        Result.EndCelsius.AsSpan().Fill(settles);
    }

    public CoolingTimes Result { get; }

    public bool IsOpen => open > 0;

    public void Begin(double airCelsius)
    {
        for (var lane = 0; lane < last.Length; lane++)
        {
            if (target.In(airCelsius) is { } waitedFor && target.IsReached(last[lane], waitedFor))
            {
                End(lane, 0, last[lane]);
            }
        }
    }

    public void Take(int stepsBefore, double airCelsius, ReadOnlySpan<double> mean)
    {
        var waitedFor = target.In(airCelsius);
        for (var lane = 0; lane < last.Length; lane++)
        {
            if (ended[lane])
            {
                continue;
            }

            if (waitedFor is { } celsius && target.IsReached(mean[lane], celsius))
            {
                var share = ShareOfStep(last[lane] - airCelsius, mean[lane] - airCelsius, celsius - airCelsius);
                var minutes = (stepsBefore + share) * stepMinutes;
                End(lane, limits is null || minutes <= limits[lane] ? minutes : double.PositiveInfinity, celsius);
            }
            else if (limits is not null && stepsBefore * stepMinutes > limits[lane])
            {
                End(lane, double.PositiveInfinity, Result.SettlesAtCelsius);
            }

            last[lane] = mean[lane];
        }
    }

    /// <summary>Where in a step the distance from the air passes a value: exact when it decays by a constant share.</summary>
    private static double ShareOfStep(double before, double after, double wanted)
    {
        if (before == after)
        {
            return 0;
        }

        var share = before / wanted > 0 && after / wanted > 0
            ? Elementary.Log(before / wanted) / Elementary.Log(before / after)
            : (before - wanted) / (before - after);
        // The waited-for value can jump with the air, and the passing then lies where the step begins.
        return share > 0 ? share : 0;
    }

    private void End(int lane, double minutes, double celsius)
    {
        ended[lane] = true;
        open--;
        Result.Minutes[lane] = minutes;
        Result.EndCelsius[lane] = double.IsPositiveInfinity(minutes) ? Result.SettlesAtCelsius : celsius;
    }
}
