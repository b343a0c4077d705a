namespace Doughwright.Engine.Recipes;

/// <summary>A place in a recipe text: line and column, both from 1. Zero means that there is no text.</summary>
public readonly record struct Position(int Line, int Column)
{
    public static Position None => default;

    public bool IsKnown => Line > 0;
}
