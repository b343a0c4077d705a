namespace Doughwright.Book.Safety;

/// <summary>Where a book does not agree with itself.</summary>
public enum FlawKind
{
    /// <summary>The file itself: pages, tables, indexes.</summary>
    File,

    /// <summary>The tables are not those of its form.</summary>
    Shape,

    /// <summary>Something that belongs to what is not there.</summary>
    Link,

    /// <summary>A text that is not the one that was written.</summary>
    Text,

    /// <summary>A photo that is not the one that was laid in.</summary>
    Photo,

    /// <summary>A paper that is in no state of its own.</summary>
    Paper,

    /// <summary>A state that follows one of another paper, or a later one.</summary>
    Chain,

    /// <summary>An instant that is none.</summary>
    Instant,

    /// <summary>What was written last is not in the log any more.</summary>
    Log,
}

/// <summary>One place where a book does not agree with itself.</summary>
/// <param name="What">For those who look after the file: which page, row or hash.</param>
public sealed record Flaw(FlawKind Kind, string What)
{
    public override string ToString() => $"{Kind}: {What}";
}
