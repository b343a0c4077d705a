using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Bake;

/// <summary>A section through a piece, coloured by its warmth: as it stands, or lying where its axis lies.</summary>
/// <param name="PerMillimetre">Units of the picture.</param>
internal sealed record SectionMap(BakedSection Section, double PerMillimetre)
{
    /// <summary>Each mark goes this far under the next, so that no ground shows between them.</summary>
    private const double Under = 0.4;

    public double Width => PerMillimetre * (Section.Lies ? Section.Height.Millimetres : 2 * Section.Radius.Millimetres);

    public double Height => PerMillimetre * (Section.Lies ? 2 * Section.Radius.Millimetres : Section.Height.Millimetres);

    /// <param name="x">Of its left edge.</param>
    /// <param name="y">Of its top.</param>
    public void Draw(Svg svg, SectionSlice slice, double x, double y)
    {
        var rings = slice.Edges.Count - 1;
        for (var layer = 0; layer < slice.Levels.Count - 1; layer++)
        {
            for (var ring = 0; ring < rings;)
            {
                // Cells of one colour beside each other are one mark, which keeps the picture small.
                var (colour, first) = (Warmth.Class(slice.Cells[(layer * rings) + ring]), ring);
                while (ring < rings && Warmth.Class(slice.Cells[(layer * rings) + ring]) == colour)
                {
                    ring++;
                }

                Mark(svg, slice, colour, layer, slice.Edges[first], slice.Edges[ring], x, y);
            }
        }

        svg.Rect("mapedge", x, y, Width, Height);
    }

    private void Mark(Svg svg, SectionSlice slice, string colour, int layer, double inner, double outer, double x, double y)
    {
        var (low, high, radius) = (slice.Levels[layer], slice.Levels[layer + 1], Section.Radius.Millimetres);
        var looks = "warmcell " + colour;
        void Put(double from, double to)
        {
            if (Section.Lies)
            {
                svg.Rect(looks, x + (PerMillimetre * low), y + (PerMillimetre * (radius - to)), (PerMillimetre * (high - low)) + Under, (PerMillimetre * (to - from)) + Under);
            }
            else
            {
                svg.Rect(looks, x + (PerMillimetre * (radius + from)), y + (PerMillimetre * (slice.Levels[^1] - high)), (PerMillimetre * (to - from)) + Under, (PerMillimetre * (high - low)) + Under);
            }
        }

        if (inner == 0)
        {
            Put(-outer, outer);
            return;
        }

        Put(inner, outer);
        Put(-outer, -inner);
    }
}
