namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>One thing written beside the tall strip, in as many lines as it takes.</summary>
/// <param name="Step">Id of the step it tells of; null for the outcome.</param>
internal sealed record TallItem(double Minute, string? Step, IReadOnlyList<(Type Type, string Text)> Lines, bool IsCue = false)
{
    public const double LineHeight = 15;

    private const double Under = 4.5;

    /// <summary>With the space under it.</summary>
    public double Height => (Lines.Count * LineHeight) + Under;
}
