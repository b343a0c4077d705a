namespace Doughwright.Book.Papers;

/// <summary>A paper that a new book begins with.</summary>
/// <param name="States">In the order they came to be; the last is what it says.</param>
/// <param name="IsTakenAway">Whether it can only be put back.</param>
public sealed record FirstPaper(PaperSort Sort, string Name, IReadOnlyList<FirstState> States, bool IsTakenAway = false);

/// <summary>A state of a paper that a new book begins with.</summary>
/// <param name="Did">What was done, in words.</param>
/// <param name="At">When; null for now.</param>
public sealed record FirstState(string Text, string Did, DateTimeOffset? At = null);
