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
            // In the row over everything there is always a place left.
            var row = Enumerable.Range(0, (int)(sheet.Frame.Width / Step)).Select(i => (X: 12 + (i * Step), Y: TopRow)).OrderBy(place => Math.Abs(place.X - last.X));
            foreach (var (x, y) in wished.Concat(row))
            {
                if (sheet.Placer.Take(Flag.Box(x, y)))
                {
                    Flag.Draw(sheet.Svg, x, y, mark);
                    break;
                }
            }
        }
    }
}
