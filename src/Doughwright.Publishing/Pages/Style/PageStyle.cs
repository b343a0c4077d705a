using System.Security.Cryptography;
using System.Text;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Style;

/// <summary>The style of one page: faces, the desk's tokens and rules as far as the page uses them, and the rules of the page itself.</summary>
internal static class PageStyle
{
    /// <summary>Faces with the range of weights that was cut from each.</summary>
    private static readonly (string Family, string File, string Weights, string Style)[] Faces =
    [
        ("Brygada 1918", "brygada-1918-latin-wght-normal.woff2", "400 650", "normal"),
        ("Brygada 1918", "brygada-1918-latin-wght-italic.woff2", "400 600", "italic"),
        ("Sofia Sans Semi Condensed", "sofia-sans-semi-condensed-latin-wght-normal.woff2", "400 700", "normal"),
    ];

    private static readonly Lazy<string> Embedded = new(() => string.Concat(Faces.Select(Face)));

    /// <summary>The whole style for a piece of markup.</summary>
    public static string Of(string markup)
    {
        var used = MarkupNames.Of(markup);
        var sheets = new[] { "tokens.css", "desk.css", "page.css" }.Select(name => StyleSheet.Used(Text(name), used));
        // What fits every paper: no size, so that A4 and Letter both print.
        var style = $"{Embedded.Value}{string.Concat(sheets)}@page{{margin:13mm 14mm 14mm}}";
        return style.Contains('<') ? throw new FormatException("A style sheet must not end itself.") : style;
    }

    /// <summary>The source that a content policy allows: just this style.</summary>
    public static string SourceOf(string style) => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}'";

    private static string Face((string Family, string File, string Weights, string Style) face) =>
        $"@font-face{{font-family:\"{face.Family}\";src:url(\"data:font/woff2;base64,{Convert.ToBase64String(Bytes(face.File))}\") format(\"woff2\");"
        + $"font-weight:{face.Weights};font-style:{face.Style};font-display:swap}}\n";

    private static string Text(string name) => Encoding.UTF8.GetString(Bytes(name)).Replace("\r", "", StringComparison.Ordinal);

    private static byte[] Bytes(string name) => EmbeddedFile.Bytes(typeof(PageStyle).Assembly, "page." + name);
}
