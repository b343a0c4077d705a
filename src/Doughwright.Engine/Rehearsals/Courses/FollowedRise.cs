using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>
/// A rise that was followed past its end. Every draw has its own reading of how far the author's dough had risen, so the levels of the band
/// are shares of each draw's own way to its end: the level of the target gives exactly the range of the step.
/// </summary>
internal sealed class FollowedRise(Step step, RisePath path, PerLane minutes, PerLane growth, double length)
{
    /// <summary>The curve goes on past the likely end, by half as long again.</summary>
    public const double Beyond = 1.5;

    /// <summary>Steps of the band from the start to the target, and at most in all.</summary>
    private const int LevelsToTarget = 20;
    private const int MostLevels = 60;

    /// <summary>A draw that has not got there by so many lengths of the curve never does.</summary>
    private const double Patience = 3;

    /// <summary>The likely lane to the end of the step.</summary>
    public IReadOnlyList<WayPoint> Way()
    {
        if (minutes.Central <= 0)
        {
            return [new(0, path.Likely(0)[0].Celsius, path.GrowthAt(0, 0)), new(0, path.Likely(0)[0].Celsius, path.GrowthAt(0, 0))];
        }

        return AsTold(path.Likely(minutes.Central));
    }

    /// <summary>
    /// A way that passes through the growth of the rehearsal at its end. A very long rise is followed in longer steps, which leaves it off by about
    /// a hundredth; one in the rehearsal's own steps stays as it is.
    /// </summary>
    private List<WayPoint> AsTold(List<WayPoint> way)
    {
        var (start, share) = (path.GrowthAt(0, 0), ToldOfFollowed(0));
        return way.ConvertAll(point => point with { Growth = start + ((point.Growth - start) * share) });
    }

    /// <summary>A lane's rise as the rehearsal tells it, against the same as it was followed.</summary>
    private double ToldOfFollowed(int lane)
    {
        var start = path.GrowthAt(0, lane);
        return double.IsFinite(minutes[lane]) && path.GrowthAfter(minutes[lane], lane) is { } followed && followed > start
            ? (growth[lane] - start) / (followed - start)
            : 1;
    }

    /// <summary>The curve with its band; null when the dough is past its end before it begins.</summary>
    public RiseCurve? Curve()
    {
        var start = path.GrowthAt(0, 0);
        var toTarget = growth.Central - start;
        if (!(toTarget > 1e-6) || minutes.Central <= 0)
        {
            return null;
        }

        var reference = step.Kind == StepKind.Proof ? start : 1;
        var likely = AsTold(path.Likely(length));
        var top = (likely.Max(point => point.Growth!.Value) - start) / toTarget;
        var perTarget = Math.Clamp((int)(MostLevels / Math.Max(top, 1)), 1, LevelsToTarget);
        var count = Math.Min(MostLevels, (int)((top * perTarget) + 1e-9));
        var reached = Reached(perTarget, count);
        return new(
            step.Id,
            step.End is StepEnd.AfterTime ? null : growth.Central / reference,
            [.. likely.Select(point => new RisePoint(Duration.FromMinutes(point.Minutes), point.Growth!.Value / reference, Temperature.FromCelsius(point.Celsius!.Value)))],
            // A level at the very top may be one that the likely lane does not quite reach.
            [.. reached.Select((times, level) => (Level: (start + (toTarget * level / perTarget)) / reference, Time: Report.TimeOf(times)))
                .TakeWhile(reach => reach.Time is not null).Select(reach => new RiseLevel(reach.Level, reach.Time!.Value))]);
    }

    /// <summary>When each lane reaches each level, level by level.</summary>
    private PerLane[] Reached(int perTarget, int count)
    {
        RunUntilReached((double)count / perTarget);
        var reached = new PerLane[count + 1];
        for (var level = 0; level <= count; level++)
        {
            reached[level] = new(new double[path.Lanes]);
        }

        var (levels, times) = (new double[count + 1], new double[count + 1]);
        for (var lane = 0; lane < path.Lanes; lane++)
        {
            var (start, share) = (path.GrowthAt(0, lane), ToldOfFollowed(lane));
            for (var level = 0; level <= count; level++)
            {
                levels[level] = start + ((growth[lane] - start) * level / perTarget / share);
            }

            path.Reach(lane, levels, times);
            // A draw of which the rehearsal tells that it never gets there gets no higher either.
            var known = double.IsFinite(minutes[lane]) ? count : Math.Min(count, perTarget - 1);
            for (var level = 0; level <= count; level++)
            {
                reached[level].Values[lane] = level <= known ? times[level] : double.PositiveInfinity;
            }
        }

        if (count >= perTarget)
        {
            reached[perTarget] = minutes;
        }

        return reached;
    }

    /// <summary>Goes on until so few lanes are missing at the top level that its range is known, or patience ends.</summary>
    private void RunUntilReached(double top)
    {
        var draws = path.Lanes - 1;
        var mayMiss = draws <= 0 ? 0 : draws - 1 - (int)Math.Ceiling((0.9 * (draws - 1)) - 1e-9);
        var high = Report.TimeOf(minutes)?.High?.Minutes ?? 0;
        while (path.Minutes < Math.Max(Patience * length, high))
        {
            var missing = 0;
            for (var lane = 0; lane < path.Lanes; lane++)
            {
                var start = path.GrowthAt(0, lane);
                missing += path.Highest[lane] < start + ((growth[lane] - start) * top) ? 1 : 0;
            }

            if (missing <= mayMiss && path.Minutes >= high)
            {
                return;
            }

            path.GoOn();
        }
    }
}
