using System.Text;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Geometry;

namespace Doughwright.Publishing.Pictures.Strips.Marks;

/// <summary>Draws in minutes and heights, and keeps the gradients that this needs.</summary>
internal sealed class Canvas(string id, Frame frame)
{
    /// <summary>Units of the picture between two points before thinning; what is long bends slowly.</summary>
    private const double Step = 1;
    private const double LongStep = 2;
    private const double Long = 500;

    /// <summary>Just before a jump.</summary>
    private const double Instant = 1e-6;

    private readonly StringBuilder defs = new();
    private readonly Dictionary<(double From, double To, Func<double, double> Height), List<(double X, double Y)>> lines = [];
    private int gradients;

    public Svg Svg { get; } = new();

    public Frame Frame => frame;

    /// <summary>Id of the pattern of holes.</summary>
    public string Holes => $"{id}dots";

    public string Defs => $"<pattern id=\"{Holes}\" width=\"23\" height=\"21\" patternUnits=\"userSpaceOnUse\">{Bubbles()}</pattern>{defs}";

    /// <summary>Defs without the holes, where nothing shows gas.</summary>
    public string Gradients => defs.ToString();

    /// <summary>Paints a stretch of time by warmth, in pieces where it is known and where not.</summary>
    public IReadOnlyList<Paint> PaintOf(double from, double to, Func<double, Temperature?> warmth)
    {
        var paints = new List<Paint>();
        var minutes = Minutes(from, to, []);
        for (var i = 0; i + 1 < minutes.Count;)
        {
            var known = IsKnown(i);
            var end = i + 1;
            while (end + 1 < minutes.Count && IsKnown(end) == known)
            {
                end++;
            }

            paints.Add(new(minutes[i], minutes[end], known ? Gradient(minutes[i], minutes[end], warmth) : Paint.None));
            i = end;
        }

        return paints;

        bool IsKnown(int i) => warmth((minutes[i] + minutes[i + 1]) / 2) is not null;
    }

    /// <summary>A band between two heights.</summary>
    public void Band(string @class, IReadOnlyList<Paint> paints, Func<double, double> bottom, Func<double, double> top, IEnumerable<double> joints)
    {
        var all = joints.ToArray();
        foreach (var (from, to, fill) in paints)
        {
            Svg.Path(@class, Line(from, to, top, all).Concat(Enumerable.Reverse(Line(from, to, bottom, all))), closed: true, fill: fill);
        }
    }

    /// <param name="share">Of the height at which the curve is drawn.</param>
    /// <param name="endHeight">Where it goes down to at its end.</param>
    public void Curve(string @class, double from, double to, Func<double, double> height, IEnumerable<double> joints, double share = 1, double? endHeight = null)
    {
        IEnumerable<(double X, double Y)> points = Line(from, to, height, joints);
        points = share == 1 ? points : points.Select(point => frame.IsWide
            ? (point.X, frame.Bench - (share * (frame.Bench - point.Y)))
            : (frame.Bench - (share * (frame.Bench - point.X)), point.Y));
        Svg.Path(@class, endHeight is { } end ? points.Append(frame.At(to, end)) : points);
    }

    /// <summary>A straight line across time.</summary>
    public void Upright(string @class, double minute, double from, double to)
    {
        var (x1, y1) = frame.At(minute, from);
        var (x2, y2) = frame.At(minute, to);
        Svg.Line(@class, x1, y1, x2, y2);
    }

    /// <summary>The same line is asked for by every mark that follows it, and worked out once.</summary>
    private List<(double X, double Y)> Line(double from, double to, Func<double, double> height, IEnumerable<double> joints)
    {
        if (!lines.TryGetValue((from, to, height), out var line))
        {
            line = Thinning.Of([.. Minutes(from, to, joints).Select(minute => frame.At(minute, height(minute)))]);
            lines.Add((from, to, height), line);
        }

        return line;
    }

    private List<double> Minutes(double from, double to, IEnumerable<double> joints)
    {
        var (start, end) = (frame.Time.Place(from), frame.Time.Place(to));
        var steps = Math.Max(4, (int)Math.Ceiling((end - start) / (end - start > Long ? LongStep : Step)));
        var inner = Enumerable.Range(1, steps - 1).Select(i => frame.Time.Minute(start + ((end - start) * i / steps)));
        return
        [
            from,
            .. inner.Concat(joints.SelectMany(joint => new[] { joint - Instant, joint })).Where(minute => minute > from && minute < to).Order(),
            to,
        ];
    }

    private string Gradient(double from, double to, Func<double, Temperature?> warmth)
    {
        var name = $"{id}g{++gradients}";
        var (a, b) = (Svg.Number(frame.Time.Place(from)), Svg.Number(frame.Time.Place(to)));
        var line = frame.IsWide ? $"x1=\"{a}\" y1=\"0\" x2=\"{b}\" y2=\"0\"" : $"x1=\"0\" y1=\"{a}\" x2=\"0\" y2=\"{b}\"";
        defs.Append($"<linearGradient id=\"{name}\" gradientUnits=\"userSpaceOnUse\" {line}>{WarmthStops.Of(from, to, frame.Time, warmth)}</linearGradient>");
        return $"url(#{name})";
    }

    private static string Bubbles()
    {
        ReadOnlySpan<(double X, double Y, double Radius)> holes =
        [
            (4, 4.5, 2.3), (12.5, 3, 1.3), (18.5, 7.5, 2.5), (10.5, 10.5, 1.9), (3.2, 13.4, 1.4), (16.6, 16, 1.8), (8, 18.3, 2.4), (21.2, 1.4, 1.1), (21.4, 18.6, 1.2),
        ];
        var svg = new Svg();
        foreach (var (x, y, radius) in holes)
        {
            svg.Circle("bub", x, y, radius);
        }

        return svg.ToString();
    }
}
