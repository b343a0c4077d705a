namespace Doughwright.Engine.Ingredients;

/// <summary>A row that a search found.</summary>
/// <param name="Name">The name of the row that was nearest to the phrase.</param>
/// <param name="Likeness">1 is the name itself, 0 nothing in common. For ranking only.</param>
/// <param name="Note">What to know of that name; empty when nothing.</param>
public sealed record LarderHit(Ingredient Ingredient, string Name, double Likeness, string Note)
{
    /// <summary>Conditions of which one must stand beside the name, so that it means this row; none where it means it alone.</summary>
    public IReadOnlyList<string> When { get; init; } = [];
}
