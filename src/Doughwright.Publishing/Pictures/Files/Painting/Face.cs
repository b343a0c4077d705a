using HarfBuzzSharp;
using SkiaSharp;
using SkiaSharp.HarfBuzz;
using Buffer = HarfBuzzSharp.Buffer;

namespace Doughwright.Publishing.Pictures.Files.Painting;

/// <summary>One face, ready to letter with: kerned, joined where the face joins letters, not hinted.</summary>
internal sealed class Face
{
    private static readonly Feature Tabular = Feature.Parse("tnum");

    private readonly SKFont letters;
    private readonly Font shaper;
    private readonly Lock shaping = new();

    public Face(SKTypeface typeface)
    {
        Typeface = typeface;
        letters = new(typeface);
        using var blob = typeface.OpenStream(out var index).ToHarfBuzzBlob();
        using var face = new HarfBuzzSharp.Face(blob, index) { Index = index, UnitsPerEm = typeface.UnitsPerEm };
        shaper = new(face);
        shaper.SetScale(typeface.UnitsPerEm, typeface.UnitsPerEm);
        shaper.SetFunctionsOpenType();
    }

    public SKTypeface Typeface { get; }

    public bool Has(int letter) => letters.ContainsGlyph(letter);

    /// <summary>Words as glyphs in their places, and how far they reach. Null letters when there is nothing to draw.</summary>
    public (SKTextBlob? Letters, float Width) Shape(string words, float size, bool tabular)
    {
        lock (shaping)
        {
            using var buffer = new Buffer();
            buffer.AddUtf16(words);
            buffer.GuessSegmentProperties();
            shaper.Shape(buffer, tabular ? [Tabular] : []);
            var scale = size / Typeface.UnitsPerEm;
            var (glyphs, places) = (new ushort[buffer.Length], new SKPoint[buffer.Length]);
            var (x, infos, positions) = (0f, buffer.GlyphInfos, buffer.GlyphPositions);
            for (var at = 0; at < glyphs.Length; at++)
            {
                glyphs[at] = (ushort)infos[at].Codepoint;
                places[at] = new(x + (positions[at].XOffset * scale), -positions[at].YOffset * scale);
                x += positions[at].XAdvance * scale;
            }

            using var font = new SKFont(Typeface, size) { Subpixel = true, Hinting = SKFontHinting.None, Edging = SKFontEdging.Antialias, LinearMetrics = true };
            using var builder = new SKTextBlobBuilder();
            builder.AddPositionedRun(glyphs, font, places);
            return (builder.Build(), x);
        }
    }
}
