namespace Doughwright.Publishing.Pages.Method;

/// <summary>One step as a reader has it in hand.</summary>
/// <param name="Name">Of the step.</param>
/// <param name="Time">When it begins, whose time it takes, how long.</param>
/// <param name="Paragraphs">What to do.</param>
/// <param name="Cue">What is seen when it is done; null when the recipe does not say.</param>
internal sealed record PageStep(string Name, string Time, IReadOnlyList<string> Paragraphs, string? Cue)
{
    public IReadOnlyList<PagePhoto> Photos { get; init; } = [];

    /// <summary>Places of the notes that belong to it, and what they are called.</summary>
    public IReadOnlyList<(string Id, string Title)> Notes { get; init; } = [];
}
