namespace Doughwright.Engine.Recipes;

/// <summary>A swap that the author allows: "butter by sunflower oil".</summary>
/// <param name="What">The ingredient that is replaced, as written.</param>
/// <param name="By">What stands in for it, as written.</param>
/// <param name="Part">Id of the only part it holds for; null for every part.</param>
public sealed record AllowedSwap(string What, string By, string? Part, Position Position)
{
    /// <summary>The day it was baked so, as typed; null when it was never tried.</summary>
    public string? Tried { get; init; }

    /// <summary>What changes for the reader, as written.</summary>
    public string? Words { get; init; }
}
