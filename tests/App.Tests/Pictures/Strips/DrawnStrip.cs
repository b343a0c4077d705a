using System.Globalization;
using System.Xml.Linq;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>A strip read back from its markup.</summary>
internal sealed class DrawnStrip
{
    private const double PairGap = 7;

    private static readonly (string Class, Face Face, double Size)[] Writing =
    [
        ("cue", Face.Cue, 14.2),
        ("dt", Face.Figures, 14.2),
        ("cl", Face.Label, 14.2),
        ("sh", Face.LabelBold, 14.2),
        ("sl", Face.LabelBold, 14.2),
        ("key", Face.LabelBold, 14.2),
        ("sv", Face.Label, 14.2),
        ("hr", Face.Label, 14.2),
        ("nl", Face.Label, 14.2),
    ];

    public DrawnStrip(string markup)
    {
        Markup = markup;
        Root = XElement.Parse(markup);
        var box = Root.Attribute("viewBox")!.Value.Split(' ').Select(Number).ToArray();
        (Width, Height) = (box[2], box[3]);
    }

    public string Markup { get; }

    public XElement Root { get; }

    public double Width { get; }

    public double Height { get; }

    public IEnumerable<XElement> All(string name) => Root.Descendants(name);

    public IEnumerable<XElement> OfClass(string @class) => Root.Descendants().Where(element => Classes(element).Contains(@class));

    /// <summary>Everything written, with the rectangle it takes on paper, where type is largest. Numbers of marks are apart.</summary>
    public IEnumerable<(string Text, Box Box)> Texts => All("text").Where(text => !Classes(text).Contains("flagt")).Select(text => (text.Value, BoxOf(text)));

    /// <summary>The rectangles that marks of findings take, line included.</summary>
    public IEnumerable<Box> Marks => OfClass("flag").Select(mark => mark.Name.LocalName switch
    {
        "rect" => Box.Of(At(mark, "x"), At(mark, "y"), At(mark, "x") + At(mark, "width"), At(mark, "y") + At(mark, "height")),
        "circle" => new Box(At(mark, "cx"), At(mark, "cy"), At(mark, "cx"), At(mark, "cy")).Grown(At(mark, "r")),
        _ => Points(mark) is var points ? new Box(points.Min(p => p.X), points.Min(p => p.Y), points.Max(p => p.X), points.Max(p => p.Y)) : default,
    }).Select(box => box.Grown(0.6));

    public IEnumerable<string> NumbersOfMarks => OfClass("flagt").Select(text => text.Value);

    public string Says => string.Join('\n', Texts.Select(text => text.Text));

    /// <summary>What was written, with the lines put together into which a longer text was broken.</summary>
    public IEnumerable<string> Paragraphs
    {
        get
        {
            var told = new List<string>();
            XElement? above = null;
            foreach (var text in All("text").Where(text => !Classes(text).Contains("flagt")))
            {
                var isNext = above is not null && !above.Value.EndsWith('…') && above.Attribute("class")?.Value == text.Attribute("class")?.Value
                    && above.Attribute("x")!.Value == text.Attribute("x")!.Value && At(text, "y") - At(above, "y") is > 0 and < 18;
                (told, above) = (isNext ? [.. told[..^1], told[^1] + " " + text.Value] : [.. told, text.Value], text);
            }

            return told;
        }
    }

    public static IEnumerable<string> Classes(XElement element) => element.Attribute("class")?.Value.Split(' ') ?? [];

    public static List<(double X, double Y)> Points(XElement path) =>
    [
        .. path.Attribute("d")!.Value.TrimStart('M').TrimEnd('Z').Split('L').Select(point => point.Split(' ')).Select(pair => (Number(pair[0]), Number(pair[1]))),
    ];

    /// <summary>How thick a band is, measured across time at a place along it.</summary>
    public static double Thickness(XElement band, double place, bool wide) => Across(band, place, wide) is var (low, high) ? high - low : throw new InvalidOperationException($"No band at {place}.");

    /// <summary>Where a band lies, across time at a place along it; null where it is not.</summary>
    public static (double Low, double High)? Across(XElement band, double place, bool wide)
    {
        var points = Points(band).Select(point => wide ? point : (X: point.Y, Y: point.X)).ToList();
        var crossings = points.Zip(points.Skip(1).Append(points[0]))
            .Where(edge => edge.First.X <= place != edge.Second.X <= place)
            .Select(edge => edge.First.Y + ((edge.Second.Y - edge.First.Y) * (place - edge.First.X) / (edge.Second.X - edge.First.X)))
            .ToArray();
        return crossings.Length == 0 ? null : (crossings.Min(), crossings.Max());
    }

    public static double At(XElement element, string attribute) => Number(element.Attribute(attribute)!.Value);

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static Box BoxOf(XElement text)
    {
        var spans = text.Elements("tspan").ToArray();
        var width = spans.Length == 0 ? WidthOf(text.Value, Classes(text)) : spans.Sum(span => WidthOf(span.Value, Classes(span))) + (PairGap * (spans.Length - 1));
        var size = spans.Length == 0 ? SizeOf(Classes(text)) : 14;
        var (x, y) = (At(text, "x"), At(text, "y"));
        var left = text.Attribute("text-anchor")?.Value switch { "end" => x - width, "middle" => x - (width / 2), _ => x };
        return new(left, y - (0.74 * size), left + width, y + (0.2 * size));
    }

    private static double WidthOf(string text, IEnumerable<string> classes) => Style(classes) is var style ? TextWidth.Of(text, style.Size, style.Face) : 0;

    private static double SizeOf(IEnumerable<string> classes) => Style(classes).Size;

    private static (string Class, Face Face, double Size) Style(IEnumerable<string> classes) => Writing.First(style => classes.Contains(style.Class));
}
