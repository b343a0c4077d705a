using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>Name and weight of a wash, left of its thread.</summary>
internal static class WashLabels
{
    private const double Room = 110;

    /// <summary>Between a name and its weight on one line.</summary>
    private const double PairGap = 7;

    /// <summary>From the end of a label at the left to the start of one at the right of the thread.</summary>
    private const double RightOf = 14;

    /// <summary>Higher, and a little lower, where something else stands.</summary>
    private static readonly double[] Ups = [0, 12, -10, 24, 36];

    public static void Draw(Sheet sheet, BodyShape body)
    {
        foreach (var wash in sheet.Plan.Washes)
        {
            BlockThread(sheet, body, wash);
        }

        foreach (var wash in sheet.Plan.Washes)
        {
            var (x, y) = At(sheet, body, wash);
            var name = Type.Head.Fit(wash.Name, Room) ?? "";
            var mass = wash.Mass is { } weight ? sheet.Words.Text(weight) : null;
            var placed = Ups.Any(up => PutLines(sheet, x, y - up, name, mass, Anchor.End))
                || Ups.Any(up => mass is not null && PutOne(sheet, x, y - up, name, mass))
                || Ups.Any(up => PutLines(sheet, x + RightOf, y - up, name, mass, Anchor.Start));
            if (!placed)
            {
                // The name alone says which thread it is; the weight stands in the table of what goes in.
                _ = Ups.Any(up => sheet.Placer.Put(Type.Head, x, y - up, name, Anchor.End) || sheet.Placer.Put(Type.Head, x + RightOf, y - up, name));
            }
        }
    }

    private static bool PutLines(Sheet sheet, double x, double y, string name, string? mass, Anchor anchor) => sheet.Placer.PutLines(
        x, mass is null ? [(Type.Head, y, name)] : [(Type.Head, y, name), (Type.Value, y + 14, mass)], anchor);

    private static bool PutOne(Sheet sheet, double x, double y, string name, string mass)
    {
        var start = x - Type.Head.Width(name) - PairGap - Type.Value.Width(mass);
        return sheet.Placer.PutPair(start, y, name, mass, x - start + 1);
    }

    private static void BlockThread(Sheet sheet, BodyShape body, PlannedWash wash)
    {
        var points = WashMarks.Way(sheet.Layout, body, wash).Select(point => sheet.Frame.At(point.Minute, point.Height)).ToArray();
        for (var i = 1; i < points.Length; i++)
        {
            var ((x1, y1), (x2, y2)) = (points[i - 1], points[i]);
            sheet.Placer.Forbid(new(Math.Min(x1, x2), Math.Min(y1, y2), Math.Max(x1, x2) + 1, Math.Max(y1, y2) + 1));
        }
    }

    /// <summary>Where the label ends.</summary>
    public static (double X, double Y) At(Sheet sheet, BodyShape body, PlannedWash wash)
    {
        var (minute, height) = WashMarks.Start(sheet.Layout, body, wash);
        var (x, y) = sheet.Frame.At(minute, height);
        return (x - 6, y + 4);
    }
}
