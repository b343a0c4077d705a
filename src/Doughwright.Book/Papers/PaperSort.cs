namespace Doughwright.Book.Papers;

/// <summary>What a paper is.</summary>
public enum PaperSort
{
    Recipe,
    Kitchen,
    Note,
    Ingredient,
}
