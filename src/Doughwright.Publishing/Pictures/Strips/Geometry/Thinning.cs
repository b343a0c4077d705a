namespace Doughwright.Publishing.Pictures.Strips.Geometry;

/// <summary>Leaves out points of a line that nobody would miss.</summary>
internal static class Thinning
{
    /// <summary>A point nearer than this to the straight line between those that stay is dropped, in the units of the picture.</summary>
    public const double Tolerance = 0.15;

    /// <summary>The ends stay; between them the point farthest off stays as long as it is farther than the tolerance.</summary>
    public static List<(double X, double Y)> Of(IReadOnlyList<(double X, double Y)> points)
    {
        var keep = new bool[points.Count];
        (keep[0], keep[^1]) = (true, true);
        var spans = new Stack<(int From, int To)>([(0, points.Count - 1)]);
        while (spans.TryPop(out var span))
        {
            var (farthest, distance) = (-1, Tolerance);
            for (var i = span.From + 1; i < span.To; i++)
            {
                if (Distance(points[i], points[span.From], points[span.To]) is var away && away > distance)
                {
                    (farthest, distance) = (i, away);
                }
            }

            if (farthest >= 0)
            {
                keep[farthest] = true;
                spans.Push((span.From, farthest));
                spans.Push((farthest, span.To));
            }
        }

        return [.. points.Where((_, i) => keep[i])];
    }

    private static double Distance((double X, double Y) point, (double X, double Y) from, (double X, double Y) to)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        return length == 0
            ? Math.Sqrt(((point.X - from.X) * (point.X - from.X)) + ((point.Y - from.Y) * (point.Y - from.Y)))
            : Math.Abs((dy * (point.X - from.X)) - (dx * (point.Y - from.Y))) / length;
    }
}
