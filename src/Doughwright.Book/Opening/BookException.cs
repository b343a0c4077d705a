using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Opening;

/// <summary>The book could not do what was asked; nothing of it was done.</summary>
public sealed class BookException(BookTrouble trouble, string path, string detail, Exception? cause = null) : IOException(detail, cause)
{
    private const int NoRight = 3;
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int Disk = 10;
    private const int Damaged = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int LockOrder = 15;
    private const int NotADatabase = 26;

    /// <summary>Less free room than this, and a disk that refused is taken for a full one.</summary>
    private const long NoRoom = 64 * 1024;

    public BookTrouble Trouble => trouble;

    /// <summary>Of the file that the trouble is with.</summary>
    public string Path => path;

    /// <summary>What the library says of a file, in our words; null for what is a fault of ours.</summary>
    internal static BookException? Of(SqliteException problem, string path)
    {
        BookTrouble? trouble = problem.SqliteErrorCode switch
        {
            Busy or Locked or LockOrder => BookTrouble.Busy,
            ReadOnly or NoRight => BookTrouble.ReadOnly,
            CannotOpen => File.Exists(path) || Directory.Exists(Folder(path)) ? BookTrouble.ReadOnly : BookTrouble.Missing,
            Disk => IsFull(path) ? BookTrouble.Full : BookTrouble.Disk,
            Damaged => BookTrouble.Damaged,
            Full => BookTrouble.Full,
            NotADatabase => BookTrouble.NotABook,
            _ => null,
        };
        return trouble is { } known ? new(known, path, problem.Message, problem) : null;
    }

    /// <summary>What the system says of a file, in our words; null for what is a fault of ours.</summary>
    internal static BookException? Of(Exception problem, string path) => problem switch
    {
        BookException told => told,
        SqliteException library => Of(library, path),
        UnauthorizedAccessException => new(BookTrouble.ReadOnly, path, problem.Message, problem),
        FileNotFoundException or DirectoryNotFoundException => new(BookTrouble.Missing, path, problem.Message, problem),
        IOException system => new(SystemErrors.Of(system) ?? (IsFull(path) ? BookTrouble.Full : BookTrouble.Disk), path, problem.Message, problem),
        _ => null,
    };

    private static string? Folder(string path) => System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(path));

    /// <summary>The library tells a full disk apart only when it writes, not when it maps or enlarges a file.</summary>
    private static bool IsFull(string path)
    {
        try
        {
            return Folder(path) is { } folder && new DriveInfo(folder).AvailableFreeSpace < NoRoom;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return false;
        }
    }
}
