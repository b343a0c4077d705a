using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Courses;
using Doughwright.Publishing.Pictures.Strips.Geometry;

namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>The way of a part as functions of time. Minutes, grams.</summary>
internal sealed class Track
{
    private readonly CoursePoint[] points;

    /// <summary>Whether of the stretch that begins at a point only the two ends are known: the way between them is drawn softly.</summary>
    private readonly bool[] isPlain;

    public Track(Strand strand)
    {
        Strand = strand;
        points = [.. strand.Stretches.SelectMany(stretch => stretch.Points)];
        isPlain = [.. strand.Stretches.SelectMany(stretch => stretch.Points.Select((_, i) => i == 0 && stretch.Points.Count == 2))];
        Heaviest = points.Max(point => point.Mass.Grams);
    }

    public Strand Strand { get; }

    public double Start => points[0].At.Minutes;

    public double End => points[^1].At.Minutes;

    public double Heaviest { get; }

    /// <summary>Minutes at which something may jump, in order.</summary>
    public IEnumerable<double> Joints => Strand.Stretches.SelectMany(stretch => new[] { stretch.Start.Minutes, stretch.End.Minutes })
        .Concat(points.Zip(points.Skip(1)).Where(pair => pair.First.At == pair.Second.At).Select(pair => pair.First.At.Minutes))
        .Distinct()
        .Order();

    public double Grams(double minute)
    {
        var (from, to, share, _) = Around(minute);
        return from.Mass.Grams + ((to.Mass.Grams - from.Mass.Grams) * share);
    }

    /// <summary>Null where it cannot be told.</summary>
    public Temperature? Warmth(double minute)
    {
        var (from, to, share, _) = Around(minute);
        return (from.Temperature, to.Temperature) switch
        {
            ({ } a, { } b) => a + ((b - a) * share),
            ({ } a, null) when share == 0 => a,
            (null, { } b) when share == 1 => b,
            _ => null,
        };
    }

    /// <summary>Whether its volume cannot be told somewhere on its way.</summary>
    public bool RiseUntold => Array.Exists(points, point => point.Volume is null);

    /// <summary>As a multiple of the volume without gas; what cannot be told is drawn without gas.</summary>
    public double Swelling(double minute)
    {
        var (from, to, share, low) = Around(minute);
        return from.Volume is { } a && to.Volume is { } b ? a + ((b - a) * (isPlain[low] ? Ease.Smooth(share) : share)) : (share < 1 ? from.Volume : to.Volume) ?? 1;
    }

    /// <summary>The highest volume between two minutes.</summary>
    public double MostSwelling(double from, double to) => points
        .Where(point => point.At.Minutes >= from && point.At.Minutes <= to)
        .Select(point => point.Volume ?? 1)
        .Append(Swelling(from))
        .Append(Swelling(to))
        .Max();

    private (CoursePoint From, CoursePoint To, double Share, int Low) Around(double minute)
    {
        if (minute <= points[0].At.Minutes)
        {
            return (points[0], points[0], 0, 0);
        }

        if (minute >= points[^1].At.Minutes)
        {
            return (points[^1], points[^1], 1, points.Length - 1);
        }

        var (low, high) = (0, points.Length - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = points[middle].At.Minutes <= minute ? (middle, high) : (low, middle);
        }

        var length = points[high].At.Minutes - points[low].At.Minutes;
        return (points[low], points[high], length > 0 ? (minute - points[low].At.Minutes) / length : 0, low);
    }
}
