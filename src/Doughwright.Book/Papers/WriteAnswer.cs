namespace Doughwright.Book.Papers;

/// <summary>What came of a write. It is on the disk, or nothing was done.</summary>
public abstract record WriteAnswer
{
    /// <summary>It is written; the paper is in this state.</summary>
    public sealed record Written(long State, string Hash) : WriteAnswer;

    /// <summary>Somebody wrote meanwhile: the paper is in this state, not in the one that the write started from.</summary>
    public sealed record Meanwhile(long State, string Hash, string Text) : WriteAnswer;

    /// <summary>There is nothing to step back or forward to.</summary>
    public sealed record Nothing : WriteAnswer;

    /// <summary>There is no such paper.</summary>
    public sealed record NoPaper : WriteAnswer;
}
