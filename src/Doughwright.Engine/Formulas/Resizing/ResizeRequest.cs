using Doughwright.Engine.Kitchens;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>What is asked of a resizing.</summary>
/// <param name="Wish">The one size asked for.</param>
public sealed record ResizeRequest(ResizeWish Wish)
{
    /// <summary>Whose scale, trays and oven it is for; null is the recipe's home.</summary>
    public Kitchen? Kitchen { get; init; }

    /// <summary>How many whole pieces to take of a line that comes in pieces, eggs say, by line id, or by line id and part, "egg@wash"; the others are weighed.</summary>
    public IReadOnlyDictionary<string, int> Take { get; init; } = new Dictionary<string, int>();
}
