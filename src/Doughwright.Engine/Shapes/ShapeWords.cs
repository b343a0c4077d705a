namespace Doughwright.Engine.Shapes;

/// <summary>
/// What an author calls the pieces, where the word says how they are shaped: "1 ring of 700 g". A word that says nothing of it (loaf, roll, bun)
/// is not here. Common practice, no source.
/// </summary>
internal static class ShapeWords
{
    private static readonly Dictionary<string, PieceShape> Known = new(StringComparer.OrdinalIgnoreCase)
    {
        ["crown"] = PieceShape.Ring,
        ["crowns"] = PieceShape.Ring,
        ["ring"] = PieceShape.Ring,
        ["rings"] = PieceShape.Ring,
        ["wreath"] = PieceShape.Ring,
        ["wreaths"] = PieceShape.Ring,
        ["baguette"] = PieceShape.Baguette,
        ["baguettes"] = PieceShape.Baguette,
        ["batard"] = PieceShape.Batard,
        ["batards"] = PieceShape.Batard,
        ["bâtard"] = PieceShape.Batard,
        ["bâtards"] = PieceShape.Batard,
        ["boule"] = PieceShape.Boule,
        ["boules"] = PieceShape.Boule,
        ["spiral"] = PieceShape.Spiral,
        ["spirals"] = PieceShape.Spiral,
        ["snail"] = PieceShape.Spiral,
        ["snails"] = PieceShape.Spiral,
        ["swirl"] = PieceShape.Spiral,
        ["swirls"] = PieceShape.Spiral,
        ["sheet"] = PieceShape.Sheet,
        ["sheets"] = PieceShape.Sheet,
        ["slab"] = PieceShape.Sheet,
        ["slabs"] = PieceShape.Sheet,
        ["focaccia"] = PieceShape.Sheet,
        ["focaccias"] = PieceShape.Sheet,
        ["traybake"] = PieceShape.Sheet,
        ["flatbread"] = PieceShape.Flat,
        ["flatbreads"] = PieceShape.Flat,
        ["pita"] = PieceShape.Flat,
        ["pitas"] = PieceShape.Flat,
        ["pizza"] = PieceShape.Flat,
        ["pizzas"] = PieceShape.Flat,
    };

    /// <summary>The shape that one of the words names, the last of them before others; null when none does.</summary>
    public static PieceShape? Of(string words)
    {
        foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Reverse())
        {
            if (Known.TryGetValue(word, out var shape))
            {
                return shape;
            }
        }

        return null;
    }
}
