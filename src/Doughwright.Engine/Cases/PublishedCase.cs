namespace Doughwright.Engine.Cases;

/// <summary>Something that somebody measured and published, as its text says: the conditions, the figures, and how far off an answer may be.</summary>
public sealed record PublishedCase
{
    /// <summary>Small words with hyphens, one of a kind among the cases that are run together.</summary>
    public required string Id { get; init; }

    public required string Title { get; init; }

    /// <summary>The kind of case, a word of the closed list in docs/evidence.md.</summary>
    public required string Kind { get; init; }

    public required CaseSource Source { get; init; }

    /// <summary>Whether a parameter of ours was fitted to these figures: then agreement shows nothing.</summary>
    public bool Fitted { get; init; }

    /// <summary>Whether agreement would be evidence: somebody's own figures, and no parameter was fitted to them.</summary>
    public bool IsEvidence => !Fitted && Source.Read != HowRead.Computed;

    /// <summary>What else is to be known, prose as written; null when there is nothing.</summary>
    public string? Note { get; init; }

    /// <summary>The conditions as written, key by key.</summary>
    public required IReadOnlyList<CaseCondition> Conditions { get; init; }

    public required IReadOnlyList<CaseSeries> Series { get; init; }

    internal ICaseModel Model { get; init; } = null!;
}

/// <summary>One condition as the text has it: "mass", "500 g".</summary>
public sealed record CaseCondition(string Key, string Words);

/// <summary>How somebody of this project knows the figures.</summary>
public enum HowRead
{
    /// <summary>Seen in the source itself.</summary>
    Read,

    /// <summary>Seen where somebody else gives the source's figures.</summary>
    ReadInACopy,

    /// <summary>Not seen again: recalled.</summary>
    FromMemory,

    /// <summary>Worked out from a printed formula. It holds the program to the formula and shows nothing about doughs.</summary>
    Computed,
}

/// <summary>Where the figures of a case stand.</summary>
public sealed record CaseSource
{
    /// <summary>Who wrote it; null when nobody is named.</summary>
    public string? Author { get; init; }

    /// <summary>The year as written; null when it is not known.</summary>
    public string? Year { get; init; }

    public required string Title { get; init; }

    /// <summary>Page, table or figure.</summary>
    public string? Place { get; init; }

    public string? Link { get; init; }

    public required HowRead Read { get; init; }

    /// <summary>What may be done with the figures, and why.</summary>
    public required string Licence { get; init; }
}
