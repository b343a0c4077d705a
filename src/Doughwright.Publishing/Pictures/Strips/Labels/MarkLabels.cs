using Doughwright.Publishing.Pictures.Strips.Marks;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>Puts the marks of findings where they belong, beside what is written there and never over it.</summary>
internal static class MarkLabels
{
    private const double Step = 22;
    private const double TopRow = 14.5;

    /// <param name="at">Where the mark of a place would like to be, the best first.</param>
    public static void Draw(Sheet sheet, IReadOnlyList<StripMark> marks, Func<string[], IEnumerable<(double X, double Y)>> at)
    {
        foreach (var mark in marks)
        {
            var wished = at(mark.Place.Split('.')).ToArray();
            var last = wished.Length == 0 ? (X: 12, Y: TopRow) : wished[^1];
            foreach (var (x, y) in wished.Concat(Anywhere(sheet, last)))
            {
                if (sheet.Placer.Take(Flag.Box(x, y)))
                {
                    Flag.Draw(sheet.Svg, x, y, mark);
                    break;
                }
            }
        }
    }

    /// <summary>In the row over everything, as near as can be; when that is full, wherever nothing is written.</summary>
    private static IEnumerable<(double X, double Y)> Anywhere(Sheet sheet, (double X, double Y) near) =>
        from y in Enumerable.Range(0, (int)((sheet.Frame.Height - TopRow) / Step)).Select(row => TopRow + (row * Step))
        from x in Enumerable.Range(0, (int)(sheet.Frame.Width / Step)).Select(i => 12 + (i * Step)).OrderBy(x => Math.Abs(x - near.X))
        select (x, y);
}
