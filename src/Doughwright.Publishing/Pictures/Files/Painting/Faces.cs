using System.Reflection;
using System.Text;
using Doughwright.Publishing.Pictures.Files.Styles;
using Doughwright.Publishing.Wording;
using SkiaSharp;

namespace Doughwright.Publishing.Pictures.Files.Painting;

/// <summary>
/// The faces of the house: as files to letter a painted picture with, and as rules that a picture in SVG carries along. Painting cannot read the
/// packed files of the web, so the four cuts that pictures use lie beside them unpacked.
/// </summary>
internal static class Faces
{
    private static readonly Dictionary<FaceCut, Lazy<Face>> Cuts = new()
    {
        [FaceCut.Label] = Cut("sofia-sans-semi-condensed-400.ttf"),
        [FaceCut.LabelBold] = Cut("sofia-sans-semi-condensed-680.ttf"),
        [FaceCut.Book] = Cut("brygada-1918-600.ttf"),
        [FaceCut.BookItalic] = Cut("brygada-1918-italic-400.ttf"),
    };

    public static Face Of(FaceCut cut) => Cuts[cut].Value;

    /// <summary>Rules that name the faces of these cuts and hold them, packed.</summary>
    public static string Rules(IEnumerable<FaceCut> cuts) => string.Concat(cuts.Select(Packed).Distinct().Order(StringComparer.Ordinal).Select(Rule));

    private static Lazy<Face> Cut(string file) => new(() =>
    {
        using var data = SKData.CreateCopy(EmbeddedFile.Bytes(Assembly.GetExecutingAssembly(), file));
        var typeface = SKTypeface.FromData(data) ?? throw new InvalidOperationException($"The face {file} cannot be read.");
        return new Face(typeface);
    });

    private static string Packed(FaceCut cut) => cut switch
    {
        FaceCut.Book => "page.brygada-1918-latin-wght-normal.woff2",
        FaceCut.BookItalic => "page.brygada-1918-latin-wght-italic.woff2",
        _ => "page.sofia-sans-semi-condensed-latin-wght-normal.woff2",
    };

    private static string Rule(string file)
    {
        var isBook = file.StartsWith("page.brygada", StringComparison.Ordinal);
        var rule = new StringBuilder("@font-face{font-family:\"").Append(isBook ? "Brygada 1918" : "Sofia Sans Semi Condensed")
            .Append("\";font-weight:").Append(isBook ? "400 600" : "400 700")
            .Append(";font-style:").Append(file.Contains("italic", StringComparison.Ordinal) ? "italic" : "normal")
            .Append(";src:url(data:font/woff2;base64,").Append(Convert.ToBase64String(EmbeddedFile.Bytes(Assembly.GetExecutingAssembly(), file)));
        return rule.Append(") format(\"woff2\")}").ToString();
    }
}
