namespace Doughwright.Book.Safety;

/// <summary>A copy that lies beside a book.</summary>
/// <param name="At">When it was written, by the clock of the file.</param>
public sealed record BookCopy(string Path, DateTimeOffset At);

/// <summary>What came of bringing a book back.</summary>
/// <param name="Book">The file that is the book now.</param>
/// <param name="From">The copy that was taken; the book itself when only the end of its log was lost.</param>
/// <param name="SetAside">The book as it was before; null when there was none.</param>
public sealed record BroughtBack(string Book, string From, string? SetAside);
