namespace Doughwright.Book.Papers;

/// <summary>A paper as it is now.</summary>
/// <param name="Uid">Random, given once; by it a paper is the same under another name and in another book.</param>
/// <param name="Name">What it is called in addresses: unique among papers of its sort.</param>
/// <param name="Hash">Of its text.</param>
/// <param name="At">When it was last written, or stepped back.</param>
/// <param name="Did">What was done last, in words.</param>
/// <param name="Undo">What one step back takes back, in words; null at the beginning.</param>
/// <param name="Redo">What one step forward does again; null when nothing was taken back.</param>
/// <param name="GrownFrom">The state of another paper that it is an offshoot of.</param>
public sealed record Paper(string Uid, string Name, long State, string Hash, DateTimeOffset At, string Did, string? Undo, string? Redo, long? GrownFrom)
{
    /// <summary>The state that one step back leads to; null at the beginning.</summary>
    public long? Before { get; init; }
}
