using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Rise;

/// <summary>Finds places for names beside curves: outside the band if there is room, and never on a line or on another text.</summary>
internal sealed class RiseLabels(LabelPlan plan, IReadOnlyList<IReadOnlyList<(double X, double Y)>> curves, IReadOnlyList<(double X, double Y)> band)
{
    private const double Reach = 26;
    private const double TextRise = 4;
    private const double Spacing = 4;

    /// <summary>Where along its curve a name is looked for: in the middle of a curve on its own, at the ends of many, where they have parted.</summary>
    private static readonly double[] AlongOne = [0.5, 0.62, 0.38, 0.74, 0.28, 0.86, 0.2, 0.95, 0.12];
    private static readonly double[] AlongMany = [0.96, 0.86, 0.74, 0.62, 0.5, 0.38, 0.28, 0.2];

    private static readonly (double X, double Y, Anchor Anchor)[] Ways =
    [
        (Reach, 24, Anchor.Start), (-Reach, -24, Anchor.End), (Reach, 44, Anchor.Start), (-Reach, -44, Anchor.End), (Reach, 6, Anchor.Start), (-Reach, -6, Anchor.End),
        (Reach, 70, Anchor.Start), (-Reach, -70, Anchor.End), (Reach * 3, 34, Anchor.Start), (-Reach * 3, -34, Anchor.End), (Reach * 3, 62, Anchor.Start),
        (Reach, 96, Anchor.Start), (-Reach, -10, Anchor.End), (Reach * 2, 120, Anchor.Start), (-Reach * 2, -10, Anchor.End), (Reach * 4, 90, Anchor.Start), (-Reach * 4, -6, Anchor.End),
        (Reach * 3, 150, Anchor.Start), (-Reach * 2, 10, Anchor.End), (Reach * 5, 40, Anchor.Start),
    ];

    private readonly List<(double X, double Y)> onLines = [.. curves.SelectMany(Dense)];

    /// <summary>A label and the line that leads to it.</summary>
    public sealed record Place(double X, double Y, Anchor Anchor, double FromX, double FromY, double ToX, double ToY);

    /// <summary>A place for the name of a curve; null when there is none.</summary>
    public Place? Find(IReadOnlyList<(double X, double Y)> curve, string text, Lettering lettering)
    {
        foreach (var (avoidBand, avoidLines) in new[] { (true, true), (false, true) })
        {
            foreach (var share in curves.Count > 2 ? AlongMany : AlongOne)
            {
                var (x, y) = AtShare(curve, share);
                foreach (var (dx, dy, anchor) in Ways)
                {
                    var (toX, toY) = (x + dx, y + dy);
                    var textX = toX + (anchor == Anchor.Start ? Spacing : -Spacing);
                    var box = LabelPlan.Line(textX, toY + TextRise, text, lettering, anchor);
                    if (IsClear(box, avoidBand, avoidLines) && plan.IsFree(Box.Of(x, y, toX, toY)) && plan.TryTake(box))
                    {
                        return new(textX, toY + TextRise, anchor, x, y, toX, toY);
                    }
                }
            }
        }

        return null;
    }

    /// <summary>Whether a text there hides no line, and no band where that can be had.</summary>
    public bool IsClear(Box box, bool avoidBand = false, bool avoidLines = true) =>
        box.Top >= 0 && box.Bottom <= RiseFrame.Foot - 2
        && !(avoidLines && onLines.Any(point => box.Contains(point.X, point.Y)))
        && !(avoidBand && (band.Any(point => box.Contains(point.X, point.Y)) || IsInBand(box)));

    private bool IsInBand(Box box) => Inside(box.Left, box.Top) || Inside(box.Right, box.Bottom) || Inside(box.Left, box.Bottom) || Inside(box.Right, box.Top);

    private bool Inside(double x, double y)
    {
        var inside = false;
        for (int i = 0, j = band.Count - 1; i < band.Count; j = i++)
        {
            if (band[i].Y > y != band[j].Y > y && x < ((band[j].X - band[i].X) * (y - band[i].Y) / (band[j].Y - band[i].Y)) + band[i].X)
            {
                inside = !inside;
            }
        }

        return inside;
    }

    private static (double X, double Y) AtShare(IReadOnlyList<(double X, double Y)> curve, double share)
    {
        var dense = Dense(curve).ToList();
        return dense[(int)Math.Round(share * (dense.Count - 1))];
    }

    /// <summary>Points of a polyline every few units.</summary>
    private static IEnumerable<(double X, double Y)> Dense(IReadOnlyList<(double X, double Y)> curve)
    {
        for (var i = 1; i < curve.Count; i++)
        {
            var (a, b) = (curve[i - 1], curve[i]);
            var parts = Math.Max(1, (int)Math.Ceiling(Math.Max(Math.Abs(b.X - a.X), Math.Abs(b.Y - a.Y)) / 3));
            for (var part = 0; part < parts; part++)
            {
                yield return (a.X + ((b.X - a.X) * part / parts), a.Y + ((b.Y - a.Y) * part / parts));
            }
        }

        if (curve.Count > 0)
        {
            yield return curve[^1];
        }
    }
}
