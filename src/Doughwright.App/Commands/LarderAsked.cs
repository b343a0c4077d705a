using Doughwright.Engine.Ingredients;

namespace Doughwright.App.Commands;

/// <summary>What was asked of the larder and what it found.</summary>
/// <param name="Words">As typed.</param>
/// <param name="Match">What a recipe text that says these words gets.</param>
/// <param name="Hits">What is like them, the likest first.</param>
internal sealed record LarderAsked(Larder Larder, string Words, LarderMatch Match, IReadOnlyList<LarderHit> Hits)
{
    /// <summary>What the author's book adds to it.</summary>
    public OwnOfBook Own { get; init; } = OwnOfBook.None;
}
