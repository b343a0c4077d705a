using System.Text;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Balance;

/// <summary>
/// One share on its way: it winds round the others of its line, now before them and now behind, unlays itself, and runs in a curve to its sort. Its thickness
/// is the same all along.
/// </summary>
internal static class Ribbon
{
    private const double Turns = 1.15;
    private const int Steps = 44;

    /// <summary>Share of the twist behind which the yarns lie side by side.</summary>
    private const double LastCrossing = 0.7;

    /// <summary>The way begins so much inside the twist, so that no seam shows between them.</summary>
    private const double Overlap = 1;

    /// <param name="Strand">Top and bottom of the whole line.</param>
    /// <param name="Top">Upper edge of the ribbon at the end of the twist.</param>
    /// <param name="End">Upper edge at the right.</param>
    /// <param name="Thickness">In units of the picture.</param>
    /// <param name="Phase">Where in the twist it starts, in turns.</param>
    public readonly record struct Way(Box Strand, double Top, double End, double Thickness, double Phase);

    /// <summary>A stretch of a ribbon in the twist.</summary>
    /// <param name="IsFront">Whether it lies before the others there.</param>
    /// <param name="Centres">Points of its middle line.</param>
    public sealed record Run(bool IsFront, IReadOnlyList<(double X, double Y)> Centres);

    /// <summary>The twist, cut where the ribbon comes to the front or goes behind. Runs overlap by a step, so that no seam shows.</summary>
    public static IReadOnlyList<Run> Twist(Way way, double left, double unlaid)
    {
        var points = Enumerable.Range(0, Steps + 1).Select(step => At(way, (double)step / Steps, left, unlaid)).ToList();
        var runs = new List<Run>();
        var from = 0;
        for (var i = 1; i <= points.Count; i++)
        {
            if (i == points.Count || points[i].IsFront != points[from].IsFront)
            {
                runs.Add(new(points[from].IsFront, [.. points[Math.Max(0, from - 1)..Math.Min(points.Count, i + 1)].Select(point => (point.X, point.Y))]));
                from = i;
            }
        }

        return runs;
    }

    /// <summary>Twist and way as one outline, for what is not known and only outlined.</summary>
    public static string Whole(Way way, double left, double unlaid, double right)
    {
        var (half, bend) = (way.Thickness / 2, (unlaid + right) / 2);
        var points = Enumerable.Range(0, Steps + 1).Select(step => At(way, (double)step / Steps, left, unlaid)).ToList();
        return new StringBuilder("M").AppendJoin('L', points.Select(point => $"{Svg.Number(point.X)} {Svg.Number(point.Y - half)}"))
            .Append(Curve(bend, way.Top, way.End, right))
            .Append($"L{Svg.Number(right)} {Svg.Number(way.End + way.Thickness)}")
            .Append(Curve(bend, way.End + way.Thickness, way.Top + way.Thickness, unlaid))
            .Append('L').AppendJoin('L', Enumerable.Reverse(points).Select(point => $"{Svg.Number(point.X)} {Svg.Number(point.Y + half)}"))
            .Append('Z').ToString();
    }

    /// <summary>The way from the end of the twist to the right.</summary>
    public static string Tail(Way way, double unlaid, double right)
    {
        var bend = (unlaid + right) / 2;
        return new StringBuilder($"M{Svg.Number(unlaid - Overlap)} {Svg.Number(way.Top)}L{Svg.Number(unlaid)} {Svg.Number(way.Top)}")
            .Append(Curve(bend, way.Top, way.End, right))
            .Append($"L{Svg.Number(right)} {Svg.Number(way.End + way.Thickness)}")
            .Append(Curve(bend, way.End + way.Thickness, way.Top + way.Thickness, unlaid))
            .Append($"L{Svg.Number(unlaid - Overlap)} {Svg.Number(way.Top + way.Thickness)}Z").ToString();
    }

    /// <summary>Upper and lower edge of the way to the right.</summary>
    public static IEnumerable<string> Edges(Way way, double unlaid, double right)
    {
        var bend = (unlaid + right) / 2;
        return new[] { 0, way.Thickness }.Select(down => $"M{Svg.Number(unlaid - Overlap)} {Svg.Number(way.Top + down)}L{Svg.Number(unlaid)} {Svg.Number(way.Top + down)}{Curve(bend, way.Top + down, way.End + down, right)}");
    }

    private static (double X, double Y, bool IsFront) At(Way way, double share, double left, double unlaid)
    {
        var middle = (way.Strand.Top + way.Strand.Bottom) / 2;
        var swing = Math.Max(0, (way.Strand.Bottom - way.Strand.Top - way.Thickness) / 2);
        var turned = 2 * Math.PI * ((Turns * share) + way.Phase);

        // The last part of the way the twist lets go; there nothing crosses any more.
        var lastTurn = 2 * Math.PI * ((Turns * Math.Min(share, LastCrossing)) + way.Phase);
        var loose = Smooth((share - 0.45) / 0.55);
        var centre = ((middle - (swing * Math.Cos(turned))) * (1 - loose)) + ((way.Top + (way.Thickness / 2)) * loose);
        return (left + (share * (unlaid - left)), centre, Math.Sin(lastTurn) > 0);
    }

    private static string Curve(double bend, double from, double to, double x) =>
        $"C{Svg.Number(bend)} {Svg.Number(from)} {Svg.Number(bend)} {Svg.Number(to)} {Svg.Number(x)} {Svg.Number(to)}";

    private static double Smooth(double share)
    {
        var u = Math.Clamp(share, 0, 1);
        return u * u * (3 - (2 * u));
    }
}
