using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Marks;

/// <summary>The strands beside the dough, with a notch for every ten degrees that they lose.</summary>
internal static class StrandMarks
{
    private const double NotchOver = 4;
    private const int Looks = 600;

    public static IReadOnlyList<StrandShape> Shapes(Layout layout, BodyShape? body)
    {
        var shapes = new Dictionary<Track, StrandShape>();
        foreach (var lane in layout.Lanes.OrderByDescending(lane => lane.Strand.JoinStart))
        {
            var together = layout.Lanes.Where(other => other.Strand.Joins == lane.Strand.Joins && other.Strand.Into == lane.Strand.Into).ToList();
            // The one that hangs highest comes in at the top of the winding.
            var phase = (double)together.OrderByDescending(other => other.Height).ToList().IndexOf(lane) / Math.Max(2, together.Count) * 0.9;
            var into = lane.Strand.Into is { } other && shapes.TryGetValue(other, out var shape) ? shape : null;
            shapes[lane.Strand.Track] = new(
                layout,
                lane,
                into is null ? _ => 0 : into.Bottom,
                into is not null ? into.Top : body is not null ? TopOf(body, lane) : _ => 0,
                phase);
        }

        return [.. layout.Lanes.Select(lane => shapes[lane.Strand.Track])];
    }

    public static void Draw(Canvas canvas, StrandShape shape, MeasureSystem measures)
    {
        double[] joints = [.. shape.Strand.Track.Joints, shape.Strand.JoinStart];
        canvas.Band("strand", canvas.PaintOf(shape.Strand.Start, shape.End, shape.Warmth), shape.Bottom, shape.Top, joints);
        foreach (var (minute, _) in Notches(shape, measures))
        {
            canvas.Upright("notch", minute, shape.Bottom(minute), shape.Top(minute) + NotchOver);
        }
    }

    /// <summary>When the strand falls past full tens of degrees Celsius, or twenties of degrees Fahrenheit.</summary>
    public static IEnumerable<(double Minute, int Degrees)> Notches(StrandShape shape, MeasureSystem measures)
    {
        var step = measures == MeasureSystem.Us ? 20 : 10;
        var (from, to) = (shape.Strand.Start, Math.Min(shape.FallStart, shape.Strand.Track.End));
        double? before = null;
        for (var i = 0; i <= Looks; i++)
        {
            var minute = from + ((to - from) * i / Looks);
            var now = Degrees(shape.Strand.Track.Warmth(minute), measures);
            if (before is { } warm && now is { } cool && cool < warm)
            {
                for (var full = (int)Math.Ceiling(warm / step) - 1; full * step >= cool; full--)
                {
                    yield return (minute, full * step);
                }
            }

            before = now;
        }
    }

    private static double? Degrees(Temperature? warmth, MeasureSystem measures) => measures == MeasureSystem.Us ? warmth?.Fahrenheit : warmth?.Celsius;

    private static Func<double, double> TopOf(BodyShape body, Lane lane) => lane.Strand.Manner == Manner.Winds ? body.Core : body.Top;
}
