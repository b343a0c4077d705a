using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>A body whose inside is followed by conduction, step by step.</summary>
internal sealed class ConductionMarch(Body body, CoolingTarget target, AirProfile air, ConductionGrid grid, Duration step) : ICoolingMarch
{
    private const int Stretch = 16;

    /// <summary>After so many steps, some hundred times the expected way, a lane counts as never ending.</summary>
    private const int MostSteps = 6000;

    private readonly double lastChange = air.Knots[^1].From.Minutes;

    public CoolingTimes TimeToReach(CoolingLanes lanes, double[]? limitMinutes)
    {
        var settles = air.Knots[^1].Air.Celsius;
        var search = new Search(target, step.Minutes, lanes, settles, limitMinutes);
        search.Begin(air.At(Duration.Zero).Celsius);
        var run = ConductionRun.Start(grid, lanes.In(body), step);
        var airCelsius = new double[Stretch];
        var mean = new double[Stretch * lanes.Count];
        while (search.IsOpen && run.Steps < MostSteps && !IsHopeless(run.Steps, settles))
        {
            var from = run.Steps;
            FillAir(airCelsius, from);
            run.Advance(airCelsius, mean);
            for (var index = 0; index < Stretch; index++)
            {
                search.Take(from + index, airCelsius[index], mean.AsSpan(index * lanes.Count, lanes.Count));
            }
        }

        return search.Result;
    }

    public double[] MeanAfter(CoolingLanes lanes, Duration time)
    {
        // The last step ends past the time, and the mean is read between its two ends.
        var steps = Math.Max(1, (int)Math.Ceiling(time / step));
        var airCelsius = new double[steps];
        FillAir(airCelsius, 0);
        var mean = new double[steps * lanes.Count];
        ConductionRun.Start(grid, lanes.In(body), step).Advance(airCelsius, mean);
        var share = (time / step) - (steps - 1);
        var after = new double[lanes.Count];
        for (var lane = 0; lane < lanes.Count; lane++)
        {
            var end = mean[((steps - 1) * lanes.Count) + lane];
            var begin = steps == 1 ? lanes.StartCelsius[lane] : mean[((steps - 2) * lanes.Count) + lane];
            after[lane] = begin + (share * (end - begin));
        }

        return after;
    }

    private bool IsHopeless(int steps, double settles) => steps * step.Minutes >= lastChange && target.In(settles) is null;

    // A step across a change of the air takes the mean of both, weighted by their time.
    private void FillAir(Span<double> airCelsius, int from)
    {
        for (var index = 0; index < airCelsius.Length; index++)
        {
            var (begin, end) = ((from + index) * step.Minutes, (from + index + 1) * step.Minutes);
            var sum = 0.0;
            for (var knot = 0; knot < air.Knots.Count; knot++)
            {
                var until = knot + 1 < air.Knots.Count ? air.Knots[knot + 1].From.Minutes : double.PositiveInfinity;
                sum += air.Knots[knot].Air.Celsius * Math.Max(0, Math.Min(end, until) - Math.Max(begin, air.Knots[knot].From.Minutes));
            }

            airCelsius[index] = sum / (end - begin);
        }
    }

    /// <summary>Watches the means for the step in which each lane passes its target.</summary>
    private sealed class Search
    {
        private readonly CoolingTarget target;
        private readonly double stepMinutes;
        private readonly double[]? limits;
        private readonly double[] last;
        private readonly bool[] ended;
        private int open;

        public Search(CoolingTarget target, double stepMinutes, CoolingLanes lanes, double settles, double[]? limits)
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
                    var minutes = (stepsBefore + ShareOfStep(last[lane] - airCelsius, mean[lane] - airCelsius, celsius - airCelsius)) * stepMinutes;
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
}
