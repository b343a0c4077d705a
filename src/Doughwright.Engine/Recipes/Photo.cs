namespace Doughwright.Engine.Recipes;

/// <summary>A photo that a recipe shows. Its bytes are in the author's book, not in the text.</summary>
/// <param name="Name">The first digits of the hash of its bytes, small and hexadecimal: "1f9c03ab77e2d4c1".</param>
/// <param name="Words">What is to be seen on it, for readers who cannot see it.</param>
public sealed record Photo(string Name, string Words, Position Position);
