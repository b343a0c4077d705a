using System.Text;
using System.Xml.Linq;
using Doughwright.Publishing.Pictures.Files.Styles;
using SkiaSharp;

namespace Doughwright.Publishing.Pictures.Files.Painting;

/// <summary>Letters the texts of a picture in the faces of the house; a letter that these do not have comes from the system, or is told as missing.</summary>
internal sealed class Letterer(Looks looks, Inks inks)
{
    private readonly List<string> missing = [];
    private readonly List<Face> others = [];

    /// <summary>Letters that are not on the picture, each once.</summary>
    public IReadOnlyList<string> Missing => missing;

    public void Draw(SKCanvas canvas, XElement text)
    {
        var line = new List<Run>();
        var (x, y) = (Painter.Number(text, "x"), Painter.Number(text, "y"));
        foreach (var node in text.Nodes())
        {
            var (look, words) = node switch
            {
                XElement span => (looks.At(span), span.Value),
                XText plain => (looks.At(text), plain.Value),
                _ => throw new NotSupportedException("A text holds only words."),
            };
            var gap = 0f;
            if (node is XElement placed)
            {
                if (placed.Attribute("x") is not null)
                {
                    DrawLine(canvas, text, line, x, y);
                    line.Clear();
                    x = Painter.Number(placed, "x");
                }

                y += Ems(placed, "dy", look);
                gap = Painter.Number(placed, "dx");
            }

            line.AddRange(Runs(words, look, gap));
        }

        DrawLine(canvas, text, line, x, y);
    }

    private static float Ems(XElement span, string name, Look look) => span.Attribute(name) is { } length
        ? float.Parse(length.Value.Replace("em", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture) * (float)look.FontSize
        : 0;

    private void DrawLine(SKCanvas canvas, XElement text, List<Run> line, float x, float y)
    {
        var width = line.Sum(run => run.Gap + run.Width);
        var left = x - (text.Attribute("text-anchor")?.Value switch { "middle" => width / 2, "end" => width, _ => 0 });
        foreach (var run in line)
        {
            left += run.Gap;
            Draw(canvas, run, left, y);
            left += run.Width;
            run.Letters?.Dispose();
        }
    }

    private void Draw(SKCanvas canvas, Run run, float x, float y)
    {
        if (run.Letters is null)
        {
            return;
        }

        using var stroke = inks.Stroke(run.Look, SKRect.Empty);
        using var fill = inks.Fill(run.Look, SKRect.Empty);
        foreach (var ink in run.Look.StrokeFirst ? [stroke, fill] : new[] { fill, stroke })
        {
            if (ink is not null)
            {
                canvas.DrawText(run.Letters, x, y, ink);
            }
        }
    }

    /// <summary>Words in pieces of one face.</summary>
    private IEnumerable<Run> Runs(string words, Look look, float gap)
    {
        var own = Faces.Of(look.Face);
        var piece = new StringBuilder();
        Face? face = null;
        foreach (var letter in words.EnumerateRunes())
        {
            var next = FaceOf(letter, own);
            if (face is not null && next != face)
            {
                yield return Shape(piece.ToString(), face, look, gap);
                piece.Clear();
                gap = 0;
            }

            face = next ?? face;
            if (next is not null)
            {
                piece.Append(letter);
            }
        }

        if (face is not null && piece.Length > 0)
        {
            yield return Shape(piece.ToString(), face, look, gap);
        }
    }

    /// <summary>The face a letter comes from; null when none has it.</summary>
    private Face? FaceOf(Rune letter, Face own)
    {
        if (own.Has(letter.Value))
        {
            return own;
        }

        if (SKFontManager.Default.MatchCharacter(letter.Value) is { } system && Other(system) is var other && other.Has(letter.Value))
        {
            return other;
        }

        if (!missing.Contains(letter.ToString()))
        {
            missing.Add(letter.ToString());
        }

        return null;
    }

    /// <summary>A face of the system, made ready once.</summary>
    private Face Other(SKTypeface system)
    {
        if (others.FirstOrDefault(other => other.Typeface.FamilyName == system.FamilyName && other.Typeface.FontStyle.Equals(system.FontStyle)) is { } known)
        {
            return known;
        }

        others.Add(new(system));
        return others[^1];
    }

    private static Run Shape(string words, Face face, Look look, float gap)
    {
        var (letters, width) = face.Shape(words, (float)look.FontSize, look.IsTabular);
        return new(look, letters, width, gap);
    }

    /// <summary>Letters of one look and one face.</summary>
    /// <param name="Gap">Free before it.</param>
    private sealed record Run(Look Look, SKTextBlob? Letters, float Width, float Gap);
}
