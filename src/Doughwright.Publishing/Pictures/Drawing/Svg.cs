using System.Globalization;
using System.Net;
using System.Text;

namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>Writes the marks of a picture. No script, no inline style: looks come from classes, so that the content policy can stay strict.</summary>
internal sealed class Svg
{
    private readonly StringBuilder marks = new(4096);

    /// <summary>A coordinate with one decimal, and none where it is whole.</summary>
    public static string Number(double value)
    {
        var rounded = Math.Round(value, 1, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.#", CultureInfo.InvariantCulture);
    }

    /// <summary>Text of any origin, harmless in markup.</summary>
    public static string Escape(string text) => WebUtility.HtmlEncode(text);

    /// <summary>A picture that says what it shows and tells its course to those who hear the page.</summary>
    /// <param name="id">Unique on the page.</param>
    /// <param name="defs">Gradients and patterns; may be empty.</param>
    public string Picture(string @class, double width, double height, string id, string title, string? description, string defs = "")
    {
        var described = description is null ? "" : $"<desc id=\"{id}d\">{Escape(description)}</desc>";
        var labels = description is null ? $"{id}t" : $"{id}t {id}d";
        return $"<svg class=\"{@class}\" viewBox=\"0 0 {Number(width)} {Number(height)}\" role=\"img\" aria-labelledby=\"{labels}\"><title id=\"{id}t\">{Escape(title)}</title>{described}{(defs.Length == 0 ? "" : $"<defs>{defs}</defs>")}{marks}</svg>";
    }

    /// <summary>What was drawn so far.</summary>
    public override string ToString() => marks.ToString();

    public Svg Raw(string markup)
    {
        marks.Append(markup);
        return this;
    }

    public Svg Line(string @class, double x1, double y1, double x2, double y2) =>
        Raw($"<line class=\"{@class}\" x1=\"{Number(x1)}\" y1=\"{Number(y1)}\" x2=\"{Number(x2)}\" y2=\"{Number(y2)}\"/>");

    public Svg Rect(string @class, double x, double y, double width, double height, string? fill = null) =>
        Raw($"<rect class=\"{@class}\"{Fill(fill)} x=\"{Number(x)}\" y=\"{Number(y)}\" width=\"{Number(width)}\" height=\"{Number(height)}\"/>");

    public Svg Circle(string @class, double x, double y, double radius) =>
        Raw($"<circle class=\"{@class}\" cx=\"{Number(x)}\" cy=\"{Number(y)}\" r=\"{Number(radius)}\"/>");

    /// <summary>Straight lines from point to point.</summary>
    public Svg Path(string @class, IEnumerable<(double X, double Y)> points, bool closed = false, string? fill = null)
    {
        marks.Append($"<path class=\"{@class}\"{Fill(fill)} d=\"");
        var first = true;
        foreach (var (x, y) in points)
        {
            marks.Append(first ? 'M' : 'L').Append(Number(x)).Append(' ').Append(Number(y));
            first = false;
        }

        marks.Append(closed ? "Z\"/>" : "\"/>");
        return this;
    }

    /// <summary>One line of text.</summary>
    /// <param name="anchor">start, middle or end.</param>
    public Svg Text(string @class, double x, double y, string text, Anchor anchor = Anchor.Start) =>
        Raw($"<text{Class(@class)} x=\"{Number(x)}\" y=\"{Number(y)}\"{At(anchor)}>{Escape(text)}</text>");

    /// <summary>A name and its value as one text with two spans, so that they keep their distance at any size of type.</summary>
    public Svg Pair(double x, double y, string name, string value, Anchor anchor = Anchor.Start, string nameClass = "sl", string valueClass = "sv") =>
        Raw($"<text x=\"{Number(x)}\" y=\"{Number(y)}\"{At(anchor)}><tspan class=\"{nameClass}\">{Escape(name)}</tspan><tspan class=\"{valueClass}\" dx=\"7\">{Escape(value)}</tspan></text>");

    /// <summary>Two lines whose distance follows the size of type.</summary>
    /// <param name="above">Whether both stand above the point.</param>
    public Svg TwoLines(double x, double y, string first, string second, bool above, Anchor anchor = Anchor.Start, string firstClass = "sl", string secondClass = "sv") =>
        Raw($"<text x=\"{Number(x)}\" y=\"{Number(y)}\"{At(anchor)}><tspan class=\"{firstClass}\" x=\"{Number(x)}\" dy=\"{(above ? "-1.65em" : "1.05em")}\">{Escape(first)}</tspan><tspan class=\"{secondClass}\" x=\"{Number(x)}\" dy=\"1.15em\">{Escape(second)}</tspan></text>");

    private static string Class(string @class) => @class.Length == 0 ? "" : $" class=\"{@class}\"";

    private static string Fill(string? fill) => fill is null ? "" : $" fill=\"{fill}\"";

    private static string At(Anchor anchor) => anchor switch
    {
        Anchor.Middle => " text-anchor=\"middle\"",
        Anchor.End => " text-anchor=\"end\"",
        _ => "",
    };
}

/// <summary>Which end of a text lies at its point.</summary>
internal enum Anchor
{
    Start,
    Middle,
    End,
}
