using System.Globalization;
using System.Xml.Linq;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Tests.Pictures;

/// <summary>A picture read back from its markup, as a browser reads it.</summary>
internal sealed class Drawn
{
    /// <summary>Sizes of type as the sheet of styles sets them for charts: on a wide page, and on a phone.</summary>
    private static readonly Dictionary<string, (double Wide, double Phone, Face Face)> Letterings = new()
    {
        ["sl"] = (13.5, 18, Face.LabelBold),
        ["sh"] = (13.5, 18, Face.LabelBold),
        ["slipt"] = (13.5, 18, Face.LabelBold),
        ["sv"] = (13.5, 18, Face.Label),
        ["hr"] = (12, 15.5, Face.Label),
        ["cue"] = (14, 18, Face.Cue),
        ["dt"] = (14, 18, Face.Figures),
    };

    public Drawn(string markup)
    {
        Root = XElement.Parse(markup);
        var box = Root.Attribute("viewBox")!.Value.Split(' ').Select(Read).ToArray();
        (Width, Height) = (box[2], box[3]);
    }

    public XElement Root { get; }

    public double Width { get; }

    public double Height { get; }

    public IEnumerable<XElement> All(string name) => Root.Descendants(name);

    public IEnumerable<XElement> OfClass(string @class) => Root.Descendants().Where(element => Classes(element).Contains(@class));

    public IReadOnlyList<string> Texts => [.. Lines(phone: false).Select(line => line.Text)];

    public string Title => All("title").Single().Value;

    public string Description => All("desc").Single().Value;

    /// <summary>Every line of text with the room it takes.</summary>
    public IReadOnlyList<(string Text, string Class, Box Box)> Lines(bool phone)
    {
        var lines = new List<(string, string, Box)>();
        foreach (var text in All("text"))
        {
            var anchor = text.Attribute("text-anchor")?.Value ?? "start";
            var spans = text.Elements("tspan").ToList();
            var y = Value(text, "y");
            if (spans.Count == 0)
            {
                lines.Add(Line(text.Value, Classes(text).Single(), Value(text, "x"), y, anchor, phone));
            }

            foreach (var span in spans)
            {
                var @class = Classes(span).Single();
                y += Read(span.Attribute("dy")!.Value.Replace("em", "", StringComparison.Ordinal)) * SizeOf(@class, phone);
                if (span.Value.Length > 0)
                {
                    lines.Add(Line(span.Value, @class, Value(span, "x"), y, anchor, phone));
                }
            }
        }

        return lines;
    }

    public static double Value(XElement element, string attribute) => Read(element.Attribute(attribute)!.Value);

    public static string[] Classes(XElement element) => element.Attribute("class")?.Value.Split(' ') ?? [];

    private static double SizeOf(string @class, bool phone) => phone ? Letterings[@class].Phone : Letterings[@class].Wide;

    private static (string, string, Box) Line(string text, string @class, double x, double y, string anchor, bool phone)
    {
        var size = SizeOf(@class, phone);
        var width = TextWidth.Of(text, size, Letterings[@class].Face);
        var left = anchor switch { "end" => x - width, "middle" => x - (width / 2), _ => x };

        // From the top of the capitals to the foot of a p: what must not touch.
        return (text, @class, new(left, y - (0.7 * size), left + width, y + (0.2 * size)));
    }

    private static double Read(string number) => double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture);
}
