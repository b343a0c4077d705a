using System.Globalization;
using System.Xml.Linq;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Pictures.Files.Painting;
using Doughwright.Publishing.Pictures.Files.Styles;

namespace Doughwright.Publishing.Pictures.Files;

/// <summary>
/// A picture that stands alone: with its looks for one ground, a margin and a size in pixels. It can be written as SVG, or painted.
/// </summary>
internal sealed class PictureFile
{
    /// <summary>Narrower, no letter can be read; wider, no screen and no film shows it.</summary>
    public const int Narrowest = 160;

    public const int Widest = 8192;

    /// <summary>More would take more memory than a small machine has.</summary>
    public const long MostPixels = 64L * 1024 * 1024;

    /// <summary>Free on all four sides, in units of the picture.</summary>
    private const double Margin = 18;

    private static readonly XNamespace Namespace = "http://www.w3.org/2000/svg";

    private readonly XElement root;
    private readonly Looks looks;

    private PictureFile(XElement root, Looks looks, int widthPixels, int heightPixels) =>
        (this.root, this.looks, WidthPixels, HeightPixels) = (root, looks, widthPixels, heightPixels);

    public int WidthPixels { get; }

    public int HeightPixels { get; }

    /// <param name="picture">A picture of this house, as it stands in a page.</param>
    /// <param name="widthPixels">From <see cref="Narrowest"/> to <see cref="Widest"/>, margins included; its height follows.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is outside its limits.</exception>
    public static PictureFile Of(string picture, Ground ground, int widthPixels)
    {
        if (widthPixels is < Narrowest or > Widest)
        {
            throw new ArgumentOutOfRangeException(nameof(widthPixels), widthPixels, "Outside its limits.");
        }

        var root = XElement.Parse(picture.Replace("<svg ", $"<svg xmlns=\"{Namespace}\" ", StringComparison.Ordinal), LoadOptions.PreserveWhitespace);
        var (width, height) = SizeOf(root);
        (width, height) = (width + (2 * Margin), height + (2 * Margin));
        root.SetAttributeValue("viewBox", $"{Svg.Number(-Margin)} {Svg.Number(-Margin)} {Svg.Number(width)} {Svg.Number(height)}");
        var looks = Looks.Of(root, ground);
        if (ground != Ground.None)
        {
            root.Elements().First(element => element.Name.LocalName is not ("title" or "desc")).AddBeforeSelf(new XElement(
                Namespace + "rect",
                new XAttribute("fill", looks.Paper),
                new XAttribute("x", Svg.Number(-Margin)),
                new XAttribute("y", Svg.Number(-Margin)),
                new XAttribute("width", Svg.Number(width)),
                new XAttribute("height", Svg.Number(height))));
        }

        return new(root, looks, widthPixels, HeightFor(widthPixels, width, height));
    }

    /// <summary>The greatest width, at most <see cref="Widest"/>, at which the picture keeps within <see cref="MostPixels"/>.</summary>
    public int WidestHere => (int)Math.Min(Widest, Math.Floor(Math.Sqrt((double)MostPixels * WidthPixels / HeightPixels)));

    public bool IsTooLarge => (long)WidthPixels * HeightPixels > MostPixels;

    /// <summary>The whole file, with the faces it is lettered in.</summary>
    public string ToSvg()
    {
        var file = new XElement(root);
        file.SetAttributeValue("width", WidthPixels.ToString(CultureInfo.InvariantCulture));
        file.SetAttributeValue("height", HeightPixels.ToString(CultureInfo.InvariantCulture));
        file.Elements().First(element => element.Name.LocalName is not ("title" or "desc"))
            .AddBeforeSelf(new XElement(Namespace + "style", Faces.Rules(looks.FacesUsed) + looks.ToCss()));
        return file.ToString(SaveOptions.DisableFormatting) + "\n";
    }

    /// <summary>Painted, as PNG.</summary>
    public PaintedPicture ToPng() => Painter.Paint(root, looks, WidthPixels, HeightPixels);

    private static (double Width, double Height) SizeOf(XElement root)
    {
        var numbers = root.Attribute("viewBox")!.Value.Split(' ');
        return (double.Parse(numbers[2], CultureInfo.InvariantCulture), double.Parse(numbers[3], CultureInfo.InvariantCulture));
    }

    private static int HeightFor(int widthPixels, double width, double height) => Math.Max(1, (int)Math.Round(widthPixels * height / width));
}

/// <summary>A painted picture.</summary>
/// <param name="Missing">Letters for which no face was found; they are not on it.</param>
internal sealed record PaintedPicture(byte[] Png, IReadOnlyList<string> Missing);
