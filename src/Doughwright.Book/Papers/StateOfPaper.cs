namespace Doughwright.Book.Papers;

/// <summary>A state that a paper was in.</summary>
/// <param name="Id">In this book.</param>
/// <param name="Before">The state it was written from.</param>
/// <param name="Did">What was done, in words.</param>
public sealed record StateOfPaper(long Id, long? Before, string Hash, DateTimeOffset At, string Did);

/// <summary>A state that was kept: it has a name and a note.</summary>
/// <param name="Id">Of the keeping.</param>
/// <param name="State">What was kept.</param>
/// <param name="Published">Whether readers have it; then it is frozen.</param>
public sealed record KeptState(long Id, long State, string Hash, DateTimeOffset At, string Name, string Note, bool Published);
