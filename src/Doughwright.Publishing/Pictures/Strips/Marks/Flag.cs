using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Strips.Marks;

/// <summary>The mark of a finding on a strip: its shape tells the sort, its number leads to the list.</summary>
internal static class Flag
{
    /// <summary>Half the width of the widest shape and its line.</summary>
    public const double Reach = 10;

    /// <param name="y">The line on which its number stands.</param>
    public static Box Box(double x, double y) => new(x - Reach, y - 14, x + Reach, y + 5);

    public static void Draw(Svg svg, double x, double y, StripMark mark)
    {
        switch (mark.Shape)
        {
            case MarkShape.Wrong:
                svg.Rect("flag solid", x - 7, y - 11, 14, 14);
                break;
            case MarkShape.Missing:
                svg.Rect("flag dash", x - 7, y - 11, 14, 14);
                break;
            case MarkShape.Risky:
                svg.Path("flag", [(x, y - 13), (x + 9, y + 3.5), (x - 9, y + 3.5)], closed: true);
                break;
            default:
                svg.Circle("flag", x, y - 4, 8);
                break;
        }

        var number = mark.Number.ToString(System.Globalization.CultureInfo.InvariantCulture);
        svg.Text(mark.Shape == MarkShape.Wrong ? "flagt on" : "flagt", x, y + (mark.Shape == MarkShape.Risky ? 1.6 : 0.5), number, Anchor.Middle);
    }
}
