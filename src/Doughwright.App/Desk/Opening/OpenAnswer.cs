namespace Doughwright.App.Desk.Opening;

/// <summary>What came of giving a text to the desk.</summary>
internal sealed record OpenAnswer
{
    /// <summary>Where its page is, when it lies on the shelf now.</summary>
    public string? Address { get; init; }

    /// <summary>Why it was not taken at all.</summary>
    public OpenFault? Fault { get; init; }

    /// <summary>Everything in the text that was found, when a line was not understood.</summary>
    public IReadOnlyList<QuotedFinding> Findings { get; init; } = [];

    /// <summary>What stands in the field afterwards.</summary>
    public string Text { get; init; } = "";
}
