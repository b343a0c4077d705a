using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Publishing.Pictures.Rise;

/// <summary>Where a time and a growth lie in the picture. Both axes follow what there is to draw: a quarter of an hour or most of a day.</summary>
internal sealed class RiseFrame
{
    public const double Width = 520;
    public const double Left = 44;

    /// <summary>Right of it stands the last temperature of the ribbon.</summary>
    public const double Right = 466;

    /// <summary>Height of the plot; the growth at the start is at its foot.</summary>
    public const double Foot = 234;

    public const double Head = 24;

    private const double LongestMinutes = 7 * 24 * 60;

    /// <summary>How much longer than the own curve the axis may be for the sake of others.</summary>
    private const double MostOfOthers = 1.6;

    private static readonly double[] MinuteSteps = [1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440];
    private static readonly double[] GrowthSteps = [0.1, 0.25, 0.5, 1, 2, 5];

    private RiseFrame(double minutes, double step, double lowest, double highest, bool isProof)
    {
        Minutes = minutes;
        StepMinutes = step;
        Lowest = lowest;
        Highest = highest;
        IsProof = isProof;
        GrowthStep = GrowthSteps.FirstOrDefault(growth => (highest - lowest) / growth <= 5, GrowthSteps[^1]);
    }

    /// <summary>Length of the axis of time.</summary>
    public double Minutes { get; }

    public double StepMinutes { get; }

    public double Lowest { get; }

    public double Highest { get; }

    public double GrowthStep { get; }

    /// <summary>A final proof ends by sight: growth is drawn but never told as a figure.</summary>
    public bool IsProof { get; }

    public static RiseFrame Of(RiseCurve own, RehearsedStep step, IReadOnlyList<OtherRise> others)
    {
        var ends = new List<double>();
        Add(ends, own, step.Time);
        foreach (var other in others)
        {
            Add(ends, other.Curve, other.Time);
        }

        // A curve that is worth half an hour is not pressed into a corner by another that takes a day: that one runs out of the picture.
        var mine = new List<double>();
        Add(mine, own, step.Time);
        var wanted = Math.Clamp(ends.Max(), 5, Math.Max(5, Math.Min(LongestMinutes, mine.Max() * MostOfOthers)));
        var stepMinutes = MinuteSteps.FirstOrDefault(minutes => wanted / minutes <= 6, MinuteSteps[^1]);
        var axis = Math.Ceiling((wanted - 1e-9) / stepMinutes) * stepMinutes;
        var growths = others.SelectMany(other => other.Curve.Likely).Concat(own.Likely).Where(point => point.After.Minutes <= axis).Select(point => point.Growth).ToList();
        var highest = growths.Max() * 1.02;
        if (own.Target is { } target && step.Kind != StepKind.Proof)
        {
            // The level of the cue is always seen, and not much above it.
            highest = Math.Max(Math.Min(highest, 1 + ((target - 1) * 1.5)), 1 + ((target - 1) * 1.12));
        }

        return new(axis, stepMinutes, Math.Min(1, growths.Min()), Math.Max(1.1, highest), step.Kind == StepKind.Proof);
    }

    public double X(Duration after) => Left + (after.Minutes / Minutes * (Right - Left));

    public double Y(double growth) => Foot - ((growth - Lowest) / (Highest - Lowest) * (Foot - Head));

    /// <summary>A curve as far as it lies in the picture; cut exactly at its edges.</summary>
    public IReadOnlyList<(double X, double Y)> Run(IEnumerable<(Duration After, double Growth)> points)
    {
        var run = new List<(double X, double Y)>();
        (double Minutes, double Growth)? before = null;
        foreach (var (after, growth) in points)
        {
            var (minutes, level) = (after.Minutes, growth);
            var share = 1.0;
            if (before is { } last)
            {
                share = Math.Min(ShareTo(last.Minutes, minutes, Minutes), ShareTo(last.Growth, level, Highest));
                (minutes, level) = (last.Minutes + ((minutes - last.Minutes) * share), last.Growth + ((level - last.Growth) * share));
            }

            run.Add((X(Duration.FromMinutes(minutes)), Y(level)));
            if (share < 1)
            {
                break;
            }

            before = (minutes, level);
        }

        return run;
    }

    private static double ShareTo(double from, double to, double limit) => to <= limit ? 1 : Math.Max(0, (limit - from) / (to - from));

    /// <summary>Growth at a time, between the points of a curve.</summary>
    public static double? GrowthAt(IReadOnlyList<RisePoint> points, Duration after)
    {
        for (var i = 1; i < points.Count; i++)
        {
            var (a, b) = (points[i - 1], points[i]);
            if (after >= a.After && after <= b.After)
            {
                var length = (b.After - a.After).Minutes;
                return length <= 0 ? b.Growth : a.Growth + ((b.Growth - a.Growth) * (after - a.After).Minutes / length);
            }
        }

        return null;
    }

    private static void Add(List<double> ends, RiseCurve curve, Estimate<Duration>? time)
    {
        var last = curve.Likely[^1].After.Minutes;
        if (time is { } known)
        {
            // A little past the last moment that counts.
            ends.Add(Math.Max(known.Likely.Minutes * 1.25, (known.High ?? known.Likely).Minutes * 1.08));
            ends.Add(Math.Min(last, known.Likely.Minutes * 1.6));
        }
        else
        {
            ends.Add(last);
        }
    }
}
