namespace Doughwright.Book;

/// <summary>How much is in a book.</summary>
public sealed record BookSize(long Papers, long States, long Kept, long Photos);
