using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Pieces out of the oven as they cool where they stand, in minutes of their own.</summary>
internal sealed class RackTrace(BakeTrace trace, HotLoaf loaf)
{
    /// <summary>The author's minutes are cut into so many; a run elsewhere goes by the same clock.</summary>
    public const int Steps = 60;

    /// <summary>In the middle, °C, after so many minutes; not a number in a lane whose bake never ended.</summary>
    public PerLane Core(PerLane minutes) => At(trace.Core, minutes);

    /// <summary>Share of the raw dough's mass that has gone since they came there.</summary>
    public PerLane Lost(PerLane from, PerLane to) => At(trace.Loss, to) - At(trace.Loss, from);

    /// <summary>The first minute from one on at which each core is no warmer than that; infinite where it never is while it was followed.</summary>
    public PerLane FallsTo(PerLane celsius, PerLane from) => celsius.Each((lane, target) => loaf.Bakes(lane)
        ? loaf.MinutesAt(lane, trace.Falls(trace.Core, lane, target, loaf.Clock(lane, from[lane])))
        : double.PositiveInfinity);

    /// <summary>Mean over the likely piece between two moments, in minutes from the first.</summary>
    /// <param name="stretch">Minutes that are told over those of the trace.</param>
    public IReadOnlyList<WayPoint> Way(double from, double to, double stretch)
    {
        var way = new List<WayPoint> { new(0, Mean(from), null) };
        for (var step = 1; step <= trace.Clock.Count; step++)
        {
            var minutes = loaf.MinutesAt(0, trace.Clock.Seconds[step]);
            if (minutes > from && minutes < to)
            {
                way.Add(new(stretch * (minutes - from), Known(trace.Mean[step * trace.Lanes]), null));
            }
        }

        way.Add(new(stretch * (to - from), Mean(to), null));
        return way;
    }

    private double? Mean(double minutes) => Known(trace.At(trace.Mean, 0, loaf.Clock(0, minutes)));

    private static double? Known(double celsius) => double.IsFinite(celsius) ? celsius : null;

    private PerLane At(double[] column, PerLane minutes) =>
        minutes.Each((lane, time) => loaf.Bakes(lane) ? trace.At(column, lane, loaf.Clock(lane, time)) : double.NaN);
}
