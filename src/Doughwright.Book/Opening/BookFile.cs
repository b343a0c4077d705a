using Dapper;
using Doughwright.Book.Schema;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Doughwright.Book.Opening;

/// <summary>The open file of a book: one connection, used by one at a time.</summary>
internal sealed class BookFile : IDisposable
{
    /// <summary>The first release without a fault that could spoil a file with two connections.</summary>
    private static readonly Version SoundLibrary = new(3, 51, 3);

    private readonly Lock turn = new();
    private readonly WriterLock? writer;
    private readonly SqliteConnection connection;
    private bool isClosed;

    private BookFile(string path, WriterLock? writer, Forms forms, SqliteOpenMode mode, bool neverChanges = false)
    {
        (Path, this.writer, Forms) = (path, writer, forms);
        OpenFiles.Add(path);
        try
        {
            connection = Connect(path, mode, neverChanges);
        }
        catch
        {
            OpenFiles.Remove(path);
            throw;
        }
    }

    public string Path { get; }

    public Forms Forms { get; }

    /// <summary>Opens a book to write in, and makes it when there is none.</summary>
    /// <param name="beforeMigration">Is told when a book of an older form is about to be brought forward.</param>
    /// <exception cref="BookException">It cannot be opened; the file is as it was.</exception>
    public static BookFile Open(string path, Forms forms, Action<BookFile, int>? beforeMigration = null)
    {
        var real = BookPaths.Real(path);
        if (File.Exists(real) || Directory.Exists(real))
        {
            OpenFiles.Unless(real, () => Header.Check(real, forms));
        }

        var writer = WriterLock.Take(real);
        try
        {
            CheckLog(real);
            var file = new BookFile(real, writer, forms, SqliteOpenMode.ReadWriteCreate);
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
    public static BookFile OpenToRead(string path, Forms forms) => OpenAny(path, forms, forms.CheckReadable);

    /// <summary>Opens a book of any form to look at it or to copy it.</summary>
    /// <exception cref="BookException">It cannot be opened, or is newer.</exception>
    public static BookFile OpenToCopy(string path, Forms forms) => OpenAny(path, forms, forms.CheckNotEmpty);

    /// <summary>Opens what is left of a book whose log has lost its end.</summary>
    /// <exception cref="BookException">It cannot be opened, or is newer.</exception>
    public static BookFile OpenRest(string path, Forms forms) => Checked(new(BookPaths.Real(path), null, forms, SqliteOpenMode.ReadWrite), forms.CheckNotEmpty);

    /// <summary>Does something with the file while nobody else does.</summary>
    public T Use<T>(Func<SqliteConnection, T> work)
    {
        lock (turn)
        {
            ObjectDisposedException.ThrowIf(isClosed, this);
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

    /// <summary>Reads several things as they are at one moment.</summary>
    public T Read<T>(Func<SqliteConnection, T> work) => Use(open =>
    {
        using var all = open.BeginTransaction(deferred: true);
        return work(open);
    });

    /// <summary>Waits for what is being done with the file, a copy for example.</summary>
    public void Dispose()
    {
        lock (turn)
        {
            if (!isClosed)
            {
                isClosed = true;
                connection.Dispose();
                OpenFiles.Remove(Path);
                writer?.Dispose();
            }
        }
    }

    /// <summary>A connection of its own, not shared and not kept.</summary>
    internal static SqliteConnection Connect(string path, SqliteOpenMode mode, bool neverChanges = false)
    {
        // A name may hold anything, so as an address all but letters is escaped.
        var source = neverChanges ? $"file:{string.Join('/', path.Split('/').Select(Uri.EscapeDataString))}?immutable=1" : path;
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = source, Mode = mode, Pooling = false, DefaultTimeout = 5 }.ConnectionString);
        try
        {
            connection.Open();
            // WAL is said only to a file that may be written; the others hold for this connection. On macOS a flush reaches the disk only when it is a full one.
            Script.Run(connection, "PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL; PRAGMA fullfsync = ON; PRAGMA checkpoint_fullfsync = ON; PRAGMA trusted_schema = OFF;");
            return connection;
        }
        catch (SqliteException problem) when (BookException.Of(problem, path) is { } told)
        {
            connection.Dispose();
            throw told;
        }
    }

    private static BookFile OpenAny(string path, Forms forms, Func<SqliteConnection, string, int> check)
    {
        var real = BookPaths.Real(path);
        if (!File.Exists(real))
        {
            throw new BookException(Directory.Exists(real) ? BookTrouble.NotABook : BookTrouble.Missing, real, "");
        }

        OpenFiles.Unless(real, () => Header.Check(real, forms));
        // Who opens first takes the log in; whether anything was lost from it can be told only before that. Where somebody writes, he has looked.
        var hasLog = new FileInfo(BookPaths.Log(real)) is { Exists: true, Length: > 0 } || File.Exists(BookPaths.Index(real));
        using var first = hasLog ? WriterLock.TryTake(real) : null;
        if (first is not null)
        {
            CheckLog(real);
        }

        try
        {
            return Checked(new(real, null, forms, SqliteOpenMode.ReadOnly), check);
        }
        catch (BookException problem) when (problem.Trouble == BookTrouble.ReadOnly && !hasLog)
        {
            // Where nothing can be made beside the book, the library reads it only when it is told that nobody writes.
            return Checked(new(real, null, forms, SqliteOpenMode.ReadOnly, neverChanges: true), check);
        }
    }

    private static BookFile Checked(BookFile file, Func<SqliteConnection, string, int> check)
    {
        try
        {
            file.Use(open => check(open, file.Path));
            return file;
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <exception cref="BookException">Something that was told to be written is not in the log any more.</exception>
    private static void CheckLog(string real) => OpenFiles.Unless(real, () =>
    {
        if (LogCheck.Loss(real) is { } lost)
        {
            throw new BookException(BookTrouble.LogDamaged, real, lost);
        }
    });

    private void Prepare(Action<BookFile, int>? beforeMigration) => Use(open =>
    {
        var library = Version.Parse(open.ExecuteScalar<string>("SELECT sqlite_version()")!);
        if (library < SoundLibrary)
        {
            throw new InvalidOperationException($"SQLite {library} is older than {SoundLibrary}, which books need.");
        }

        // A file that may not be written is opened all the same, to read.
        if (raw.sqlite3_db_readonly(open.Handle, "main") == 1)
        {
            throw new BookException(BookTrouble.ReadOnly, Path, "");
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
