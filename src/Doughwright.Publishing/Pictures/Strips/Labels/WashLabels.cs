using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Strips.Marks;
using Doughwright.Publishing.Pictures.Strips.Plans;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>Name and weight of a wash, left of its thread.</summary>
internal static class WashLabels
{
    private const double Room = 110;

    public static void Draw(Sheet sheet, BodyShape body)
    {
        foreach (var wash in sheet.Plan.Washes)
        {
            var (x, y) = At(sheet, body, wash);
            var name = Type.Head.Fit(wash.Name, Room) ?? "";
            (Type, double, string)[] lines = wash.Mass is { } mass
                ? [(Type.Head, y, name), (Type.Value, y + 14, sheet.Words.Text(mass))]
                : [(Type.Head, y, name)];
            foreach (var up in (double[])[0, 12, 24])
            {
                if (sheet.Placer.PutLines(x, [.. lines.Select(line => (line.Item1, line.Item2 - up, line.Item3))], Anchor.End))
                {
                    break;
                }
            }
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
