using Dapper;
using Doughwright.Book.Schema;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Opening;

/// <summary>The open file of a book: one connection, used by one at a time.</summary>
internal sealed class BookFile : IDisposable
{
    /// <summary>The first release without a fault that could spoil a file with two connections.</summary>
    private static readonly Version SoundLibrary = new(3, 51, 3);

    private readonly Lock turn = new();
    private readonly WriterLock? writer;
    private readonly SqliteConnection connection;

    private BookFile(string path, WriterLock? writer, SqliteConnection connection) => (Path, this.writer, this.connection) = (path, writer, connection);

    public string Path { get; }

    /// <summary>Opens a book to write in, and makes it when there is none.</summary>
    /// <param name="beforeMigration">Is told when a book of an older form is about to be brought forward.</param>
    /// <exception cref="BookException">It cannot be opened; the file is as it was.</exception>
    public static BookFile Open(string path, Action<BookFile, int>? beforeMigration = null)
    {
        var writer = WriterLock.Take(path);
        try
        {
            var file = new BookFile(path, writer, Connect(path, SqliteOpenMode.ReadWriteCreate));
            try
            {
                file.Prepare(beforeMigration);
                return file;
            }
            catch
            {
                file.Dispose();
                throw;
            }
        }
        catch
        {
            writer.Dispose();
            throw;
        }
    }

    /// <summary>Opens a book to read, beside a program that writes in it.</summary>
    /// <exception cref="BookException">It cannot be opened, or is of another form.</exception>
    public static BookFile OpenToRead(string path)
    {
        if (!File.Exists(path))
        {
            throw new BookException(BookTrouble.Missing, path, "");
        }

        var file = new BookFile(path, null, Connect(path, SqliteOpenMode.ReadOnly));
        try
        {
            file.Use(open => Forms.CheckReadable(open, path));
            return file;
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <summary>Does something with the file while nobody else does.</summary>
    public T Use<T>(Func<SqliteConnection, T> work)
    {
        lock (turn)
        {
            try
            {
                return work(connection);
            }
            catch (SqliteException problem) when (BookException.Of(problem, Path) is { } told)
            {
                throw told;
            }
        }
    }

    /// <summary>Writes all of it or nothing; it is on the disk when this returns.</summary>
    public T Write<T>(Func<SqliteConnection, T> work) => Use(open =>
    {
        using var all = open.BeginTransaction(deferred: false);
        var result = work(open);
        all.Commit();
        return result;
    });

    public void Dispose()
    {
        connection.Dispose();
        writer?.Dispose();
    }

    /// <summary>A connection of its own, not shared and not kept.</summary>
    internal static SqliteConnection Connect(string path, SqliteOpenMode mode)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Mode = mode, Pooling = false, DefaultTimeout = 5 }.ConnectionString);
        try
        {
            connection.Open();
            // WAL is said only to a file that may be written; the other two hold for this connection.
            connection.Execute("PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL; PRAGMA trusted_schema = OFF;");
            return connection;
        }
        catch (SqliteException problem) when (BookException.Of(problem, path) is { } told)
        {
            connection.Dispose();
            throw told;
        }
    }

    private void Prepare(Action<BookFile, int>? beforeMigration) => Use(open =>
    {
        var library = Version.Parse(open.ExecuteScalar<string>("SELECT sqlite_version()")!);
        if (library < SoundLibrary)
        {
            throw new InvalidOperationException($"SQLite {library} is older than {SoundLibrary}, which books need.");
        }

        var form = Forms.CheckWritable(open, Path);
        if (open.ExecuteScalar<string>("PRAGMA journal_mode = WAL") != "wal")
        {
            throw new BookException(BookTrouble.ReadOnly, Path, "journal_mode");
        }

        if (form < Forms.Now && form > 0)
        {
            beforeMigration?.Invoke(this, form);
        }

        Forms.BringForward(open, Path, form);
        return 0;
    });
}
