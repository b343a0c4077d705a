using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>How many findings of a shape there are.</summary>
/// <param name="Mark">Markup of the shape.</param>
internal sealed record RowMark(string Mark, string Words)
{
    public static RowMark Of(KeptCount count, Voice voice)
    {
        var shape = Enum.Parse<MarkShape>(count.Mark);
        return new(Shape(shape), voice.Say("shelf.mark." + Voice.Kebab(count.Mark) + (count.Count == 1 ? "" : "s"), ("count", count.Count)));
    }

    /// <summary>Markup of a shape.</summary>
    public static string Shape(MarkShape shape) => "<svg class=\"mk\" viewBox=\"0 0 26 26\" aria-hidden=\"true\">" + shape switch
    {
        MarkShape.Wrong => "<rect class=\"solid\" x=\"2\" y=\"2\" width=\"22\" height=\"22\"/>",
        MarkShape.Missing => "<rect x=\"2\" y=\"2\" width=\"22\" height=\"22\" stroke-dasharray=\"4 2.6\"/>",
        MarkShape.Risky => "<path d=\"M13 1.5L25 24H1Z\"/>",
        _ => "<circle cx=\"13\" cy=\"13\" r=\"11\"/>",
    } + "</svg>";
}
