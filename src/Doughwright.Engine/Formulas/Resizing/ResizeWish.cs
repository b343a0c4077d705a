using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>What a recipe is resized to. A closed list.</summary>
public abstract record ResizeWish
{
    private ResizeWish()
    {
    }

    /// <summary>Another number of pieces of the same weight.</summary>
    /// <param name="Count">At least 1.</param>
    public sealed record Pieces(int Count) : ResizeWish;

    /// <summary>The same number of pieces of another weight.</summary>
    /// <param name="Each">Dough of one piece, above zero.</param>
    public sealed record PieceMass(Mass Each) : ResizeWish;

    /// <summary>So much dough.</summary>
    /// <param name="Mass">Above zero.</param>
    public sealed record Dough(Mass Mass) : ResizeWish;

    /// <summary>There is so much of a part; the rest follows it.</summary>
    /// <param name="Component">Id of the part.</param>
    /// <param name="Mass">Above zero.</param>
    public sealed record HavePart(string Component, Mass Mass) : ResizeWish;

    /// <summary>There is so much of an ingredient, counted over every part it goes into; the rest follows it.</summary>
    /// <param name="Line">Id of the line.</param>
    /// <param name="Mass">Above zero.</param>
    public sealed record HaveLine(string Line, Mass Mass) : ResizeWish;

    /// <summary>Another tin, filled as high as the recipe's own.</summary>
    /// <param name="Size">The new tin, with a volume.</param>
    /// <param name="Own">The recipe's own tin; null takes the one that a step states.</param>
    public sealed record Tin(VesselSize Size, VesselSize? Own) : ResizeWish;

    /// <summary>Another tray, covered as thickly as the recipe's own.</summary>
    /// <param name="Size">The new tray, with a floor.</param>
    /// <param name="Own">The recipe's own tray; null takes the one that a step states.</param>
    public sealed record Tray(VesselSize Size, VesselSize? Own) : ResizeWish;

    /// <summary>So many trays, as full as the recipe's own.</summary>
    /// <param name="Count">At least 1.</param>
    public sealed record Trays(int Count) : ResizeWish;
}
