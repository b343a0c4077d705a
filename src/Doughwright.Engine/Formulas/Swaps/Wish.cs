namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>What a reader wants swapped: "butter" by "olive oil", in every part or in one.</summary>
/// <param name="What">The ingredient that is missing, by any name the larder knows it under.</param>
/// <param name="By">What stands in for it, with its condition after a comma ("squash, baked"); empty to leave it out.</param>
/// <param name="Part">Id or name of the only part it is swapped in; null for every part.</param>
public sealed record Wish(string What, string By, string? Part = null)
{
    /// <summary>Whether it is left out and nothing stands in.</summary>
    public bool IsWithout => string.IsNullOrWhiteSpace(By);
}
