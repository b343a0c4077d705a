using Doughwright.Publishing.Pictures.Strips.Marks;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>Puts the marks of findings where they belong, beside what is written there and never over it.</summary>
internal static class MarkLabels
{
    /// <summary>Between two marks beside each other.</summary>
    public const double Step = 24;

    /// <param name="at">Where the mark of a place may stand, the best first.</param>
    public static void Draw(Sheet sheet, IReadOnlyList<StripMark> marks, MarkCorner corner, Func<string[], IEnumerable<(double X, double Y)>> at)
    {
        corner.Name(sheet);
        foreach (var mark in marks)
        {
            var places = corner.PlaceOf(sheet, mark) is { } own ? [own] : at(mark.Place.Split('.'));
            foreach (var (x, y) in places)
            {
                if (sheet.Placer.Take(Flag.Box(x, y)))
                {
                    Flag.Draw(sheet.Svg, x, y, mark);
                    break;
                }
            }
        }
    }

    /// <summary>Places from one to both sides, the nearest first.</summary>
    public static IEnumerable<double> Around(double at, double from, double to)
    {
        var start = Math.Clamp(at, from, to);
        return Enumerable.Range(-(int)((start - from) / Step), 1 + (int)((start - from) / Step) + (int)((to - start) / Step)).OrderBy(Math.Abs).Select(i => start + (i * Step));
    }
}
