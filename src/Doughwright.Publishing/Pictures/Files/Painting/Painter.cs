using System.Globalization;
using System.Xml.Linq;
using Doughwright.Publishing.Pictures.Files.Styles;
using SkiaSharp;

namespace Doughwright.Publishing.Pictures.Files.Painting;

/// <summary>
/// Paints the pictures of this house: lines, boxes, circles, paths, text, gradients and patterns, and no more than that. What it does not know
/// is a fault of ours and is not passed over.
/// </summary>
internal sealed class Painter
{
    private readonly Looks looks;
    private readonly Inks inks;
    private readonly Letterer letterer;

    private Painter(XElement root, Looks looks)
    {
        this.looks = looks;
        inks = new(root, looks, Draw);
        letterer = new(looks, inks);
    }

    public static PaintedPicture Paint(XElement root, Looks looks, int widthPixels, int heightPixels)
    {
        var painter = new Painter(root, looks);
        var frame = root.Attribute("viewBox")!.Value.Split(' ').Select(number => float.Parse(number, CultureInfo.InvariantCulture)).ToArray();
        using var surface = SKSurface.Create(new SKImageInfo(widthPixels, heightPixels, SKColorType.Rgba8888, SKAlphaType.Premul))
            ?? throw new InvalidOperationException("There is not enough memory for the picture.");
        var canvas = surface.Canvas;
        canvas.Clear(SKColors.Transparent);
        canvas.Scale(widthPixels / frame[2], heightPixels / frame[3]);
        canvas.Translate(-frame[0], -frame[1]);
        painter.DrawAll(canvas, root);
        canvas.Flush();
        using var image = surface.Snapshot();
        using var png = image.Encode(SKEncodedImageFormat.Png, 100);
        return new(png.ToArray(), painter.letterer.Missing);
    }

    private void DrawAll(SKCanvas canvas, XElement parent)
    {
        foreach (var element in parent.Elements())
        {
            Draw(canvas, element);
        }
    }

    private void Draw(SKCanvas canvas, XElement element)
    {
        switch (element.Name.LocalName)
        {
            case "title" or "desc" or "defs":
                break;
            case "text":
                letterer.Draw(canvas, element);
                break;
            case "line":
                var (from, to) = (new SKPoint(Number(element, "x1"), Number(element, "y1")), new SKPoint(Number(element, "x2"), Number(element, "y2")));
                Paint(inks.Stroke(looks.At(element), SKRect.Empty), ink => canvas.DrawLine(from, to, ink));
                break;
            case "rect":
                var box = SKRect.Create(Number(element, "x"), Number(element, "y"), Number(element, "width"), Number(element, "height"));
                FillAndStroke(element, box, ink => canvas.DrawRect(box, ink));
                break;
            case "circle":
                var (x, y, radius) = (Number(element, "cx"), Number(element, "cy"), Number(element, "r"));
                FillAndStroke(element, SKRect.Create(x - radius, y - radius, 2 * radius, 2 * radius), ink => canvas.DrawCircle(x, y, radius, ink));
                break;
            case "path":
                using (var path = SKPath.ParseSvgPathData(element.Attribute("d")!.Value))
                {
                    FillAndStroke(element, path.Bounds, ink => canvas.DrawPath(path, ink));
                }

                break;
            default:
                throw new NotSupportedException($"A picture cannot be painted with <{element.Name.LocalName}>.");
        }
    }

    private void FillAndStroke(XElement element, SKRect bounds, Action<SKPaint> draw)
    {
        Paint(inks.Fill(looks.At(element), bounds), draw);
        Paint(inks.Stroke(looks.At(element), bounds), draw);
    }

    private static void Paint(SKPaint? ink, Action<SKPaint> draw)
    {
        using (ink)
        {
            if (ink is not null)
            {
                draw(ink);
            }
        }
    }

    internal static float Number(XElement element, string name, float otherwise = 0) =>
        element.Attribute(name) is { } attribute ? float.Parse(attribute.Value, CultureInfo.InvariantCulture) : otherwise;
}
