namespace Doughwright.Engine.Ingredients;

/// <summary>How a name was found in the larder.</summary>
public enum MatchKind
{
    /// <summary>The name, or the name and its conditions, stand in the larder.</summary>
    Exact,

    /// <summary>Every word stands in the name of one row only, which is taken and said.</summary>
    ReadAs,

    /// <summary>Several rows fit, and they differ in whether they are raw or cooked, which was not said.</summary>
    RawOrCookedNotSaid,

    /// <summary>Several rows fit.</summary>
    NotClear,

    /// <summary>No row fits.</summary>
    Unknown,
}

/// <summary>What the larder makes of a name.</summary>
/// <param name="Ingredient">The row, when exactly one fits; else null.</param>
/// <param name="Candidates">The rows that fit when it is not one alone.</param>
/// <param name="Nearest">Names that look alike, for a person to choose from; never taken unasked.</param>
public sealed record LarderMatch(
    MatchKind Kind,
    Ingredient? Ingredient,
    IReadOnlyList<Ingredient> Candidates,
    IReadOnlyList<string> Nearest)
{
    /// <summary>What to know of the name, such as the ash a flour type may have; empty when nothing.</summary>
    public string Note { get; init; } = "";

    /// <summary>What it counts as; candidates that all count as the same leave no doubt. Null when there is one.</summary>
    internal Role? Role => Ingredient?.Role ?? (Candidates.Select(row => row.Role).Distinct().ToArray() is [var only] ? only : null);
}
