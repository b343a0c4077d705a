using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Opening;

/// <summary>The book could not do what was asked; nothing of it was done.</summary>
public sealed class BookException(BookTrouble trouble, string path, string detail, Exception? cause = null) : IOException(detail, cause)
{
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int Disk = 10;
    private const int Damaged = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int NotADatabase = 26;

    public BookTrouble Trouble => trouble;

    /// <summary>Of the book's file.</summary>
    public string Path => path;

    /// <summary>What the library says of a file, in our words; null for what is a fault of ours.</summary>
    internal static BookException? Of(SqliteException problem, string path) => problem.SqliteErrorCode switch
    {
        Busy or Locked => new(BookTrouble.Busy, path, problem.Message, problem),
        ReadOnly or CannotOpen => new(BookTrouble.ReadOnly, path, problem.Message, problem),
        Disk => new(BookTrouble.Disk, path, problem.Message, problem),
        Damaged => new(BookTrouble.Damaged, path, problem.Message, problem),
        Full => new(BookTrouble.Full, path, problem.Message, problem),
        NotADatabase => new(BookTrouble.NotABook, path, problem.Message, problem),
        _ => null,
    };
}
