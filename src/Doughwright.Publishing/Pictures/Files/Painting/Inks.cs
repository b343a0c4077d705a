using System.Globalization;
using System.Xml.Linq;
using Doughwright.Publishing.Pictures.Files.Styles;
using SkiaSharp;

namespace Doughwright.Publishing.Pictures.Files.Painting;

/// <summary>What is painted with: colours, gradients of warmth, patterns of holes and hatching.</summary>
internal sealed class Inks
{
    private readonly Looks looks;
    private readonly Action<SKCanvas, XElement> draw;
    private readonly Dictionary<string, XElement> defined;

    public Inks(XElement root, Looks looks, Action<SKCanvas, XElement> draw)
    {
        (this.looks, this.draw) = (looks, draw);
        defined = root.Descendants().Where(element => element.Name.LocalName is "linearGradient" or "pattern").ToDictionary(element => element.Attribute("id")!.Value);
    }

    /// <summary>Null when nothing is filled.</summary>
    public SKPaint? Fill(Look look, SKRect bounds) => Ink(look.Fill, look, bounds);

    /// <summary>Null when there is no outline.</summary>
    public SKPaint? Stroke(Look look, SKRect bounds)
    {
        if (look.StrokeWidth <= 0 || Ink(look.Stroke, look, bounds) is not { } ink)
        {
            return null;
        }

        ink.Style = SKPaintStyle.Stroke;
        ink.StrokeWidth = (float)look.StrokeWidth;
        ink.StrokeMiter = 4;
        ink.StrokeJoin = look.IsRoundlyJoined ? SKStrokeJoin.Round : SKStrokeJoin.Miter;
        if (look.Dashes.Count > 0)
        {
            // An odd number of lengths goes round twice.
            var dashes = look.Dashes.Count % 2 == 0 ? look.Dashes : [.. look.Dashes, .. look.Dashes];
            ink.PathEffect = SKPathEffect.CreateDash([.. dashes.Select(length => (float)length)], 0);
        }

        return ink;
    }

    private SKPaint? Ink(string value, Look look, SKRect bounds)
    {
        if (value == Look.None)
        {
            return null;
        }

        var ink = new SKPaint { IsAntialias = true };
        var opacity = (byte)Math.Round(255 * look.Opacity);
        if (value.StartsWith("url(#", StringComparison.Ordinal))
        {
            ink.Shader = Shader(defined[value[5..^1]], bounds);
            ink.Color = SKColors.Black.WithAlpha(opacity);
        }
        else
        {
            ink.Color = SKColor.Parse(value).WithAlpha(opacity);
        }

        return ink;
    }

    private SKShader Shader(XElement definition, SKRect bounds) =>
        definition.Name.LocalName == "pattern" ? Pattern(definition) : Gradient(definition, bounds);

    private SKShader Gradient(XElement gradient, SKRect bounds)
    {
        var stops = gradient.Elements().ToList();
        var colours = stops.Select(stop => SKColor.Parse(looks.At(stop).StopColour)).ToArray();
        var offsets = stops.Select(stop => Painter.Number(stop, "offset")).ToArray();
        var isInPicture = gradient.Attribute("gradientUnits")?.Value == "userSpaceOnUse";
        var (from, to) = isInPicture
            ? (new SKPoint(Painter.Number(gradient, "x1"), Painter.Number(gradient, "y1")), new SKPoint(Painter.Number(gradient, "x2"), Painter.Number(gradient, "y2")))
            : (new SKPoint(bounds.Left, 0), new SKPoint(bounds.Right, 0));
        return colours.Length == 1 ? SKShader.CreateColor(colours[0]) : SKShader.CreateLinearGradient(from, to, colours, offsets, SKShaderTileMode.Clamp);
    }

    private SKShader Pattern(XElement pattern)
    {
        var tile = SKRect.Create(0, 0, Painter.Number(pattern, "width"), Painter.Number(pattern, "height"));
        using var recorder = new SKPictureRecorder();
        var canvas = recorder.BeginRecording(tile);
        canvas.ClipRect(tile);
        foreach (var element in pattern.Elements())
        {
            draw(canvas, element);
        }

        using var picture = recorder.EndRecording();
        return SKShader.CreatePicture(picture, SKShaderTileMode.Repeat, SKShaderTileMode.Repeat, SKFilterMode.Linear, Turned(pattern), tile);
    }

    private static SKMatrix Turned(XElement pattern) => pattern.Attribute("patternTransform")?.Value is { } turn
        ? SKMatrix.CreateRotationDegrees(float.Parse(turn["rotate(".Length..^1], CultureInfo.InvariantCulture))
        : SKMatrix.Identity;
}
