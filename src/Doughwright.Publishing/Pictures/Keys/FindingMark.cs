using System.Globalization;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Keys;

/// <summary>The mark before a finding: its shape says of what sort it is, its number is the same on the strip.</summary>
internal static class FindingMark
{
    /// <param name="number">Null where only the sort matters.</param>
    public static string Draw(MarkShape shape, int? number = null)
    {
        var (form, @class, y) = shape switch
        {
            MarkShape.Wrong => ("<rect class=\"solid\" x=\"2\" y=\"2\" width=\"22\" height=\"22\"/>", " class=\"on\"", 17.5),
            MarkShape.Missing => ("<rect x=\"2\" y=\"2\" width=\"22\" height=\"22\" stroke-dasharray=\"4 2.6\"/>", "", 17.5),
            MarkShape.Risky => ("<path d=\"M13 1.5L25 24H1Z\"/>", "", 20.5),
            _ => ("<circle cx=\"13\" cy=\"13\" r=\"11\"/>", "", 17.5),
        };
        var written = number is { } shown ? $"<text{@class} x=\"13\" y=\"{Svg.Number(y)}\">{shown.ToString(CultureInfo.InvariantCulture)}</text>" : "";
        return $"<svg class=\"mk\" viewBox=\"0 0 26 26\" aria-hidden=\"true\">{form}{written}</svg>";
    }
}
