using Doughwright.Engine.Kitchens;
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
        var watch = new TargetWatch(target, step.Minutes, lanes, settles, limitMinutes);
        watch.Begin(air.At(Duration.Zero).Celsius);
        var run = ConductionRun.Start(grid, lanes.In(body), step);
        var airCelsius = new double[Stretch];
        var mean = new double[Stretch * lanes.Count];
        while (watch.IsOpen && run.Steps < MostSteps && !IsHopeless(run.Steps, settles))
        {
            var from = run.Steps;
            FillAir(airCelsius, from);
            run.Advance(airCelsius, mean);
            for (var index = 0; index < Stretch; index++)
            {
                watch.Take(from + index, airCelsius[index], mean.AsSpan(index * lanes.Count, lanes.Count));
            }
        }

        return watch.Result;
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

    public IReadOnlyList<(double Minutes, double Celsius)> Way(CoolingLanes one, double minutes)
    {
        var steps = (int)Math.Ceiling((minutes / step.Minutes) - 1e-9) - 1;
        if (steps <= 0)
        {
            return [];
        }

        var airCelsius = new double[steps];
        FillAir(airCelsius, 0);
        var mean = new double[steps];
        ConductionRun.Start(grid, one.In(body), step).Advance(airCelsius, mean);
        return [.. mean.Select((celsius, index) => ((index + 1) * step.Minutes, celsius))];
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
}
