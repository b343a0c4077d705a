using System.Globalization;
using Dapper;
using Doughwright.Book.Opening;
using Doughwright.Book.Schema;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Safety;

/// <summary>Copies of a book, each verified before it takes its name.</summary>
internal static class Copies
{
    private const string Room = "copies";
    private const string Ending = ".db";
    private const string Unfinished = ".unfinished";
    private const string Moments = "yyyyMMdd'T'HHmmss";

    /// <summary>What was begun longer ago is not being written any more.</summary>
    private static readonly TimeSpan Abandoned = TimeSpan.FromDays(1);

    /// <summary>Where copies of a book lie: beside it.</summary>
    public static string RoomOf(string book) => Path.Join(Path.GetDirectoryName(Path.GetFullPath(book)), Room);

    /// <summary>Copies the book as it is at this moment, beside whoever writes in it.</summary>
    /// <exception cref="BookException">No sound copy could be made; what was there is still there.</exception>
    public static void Make(BookFile file, string to)
    {
        var whole = BookPaths.Real(to);
        var beside = $"{whole}.{Path.GetRandomFileName()}{Unfinished}";
        try
        {
            CheckFree(file, whole);
            var folder = Path.GetDirectoryName(whole)!;
            Directory.CreateDirectory(folder);
            using (var copy = BookFile.Connect(beside, SqliteOpenMode.ReadWriteCreate))
            {
                file.Use(open =>
                {
                    open.BackupDatabase(copy);
                    return 0;
                });
                // One file that needs nothing beside it, also where nothing can be written.
                copy.Execute("PRAGMA journal_mode = DELETE");
                if (Verifier.Verify(copy, file.Forms) is { Count: > 0 } wrong)
                {
                    throw new BookException(BookTrouble.Damaged, file.Path, string.Join("; ", wrong));
                }
            }

            Put(beside, whole, overwrite: true);
        }
        catch (Exception problem) when (BookException.Of(problem, whole) is { } told)
        {
            throw told;
        }
        finally
        {
            foreach (var rest in new[] { "", "-wal", "-shm", "-journal" })
            {
                DeleteQuietly(beside + rest);
            }
        }
    }

    public static string BeforeMigration(BookFile file, int form, DateTimeOffset now) =>
        MakeNew(file, string.Create(CultureInfo.InvariantCulture, $"before-form-{form + 1}-{now.UtcDateTime.ToString(Moments, CultureInfo.InvariantCulture)}"));

    /// <summary>A copy that somebody asked for. It is never let go.</summary>
    public static string ByHand(BookFile file, DateTimeOffset now) => MakeNew(file, "by-hand-" + now.UtcDateTime.ToString(Moments, CultureInfo.InvariantCulture));

    /// <param name="list">Names the files of a folder that are called so; null for what the disk says.</param>
    public static string? OfTheDay(BookFile file, DateTimeOffset now, Func<string, string, IEnumerable<string>>? list = null)
    {
        list ??= Directory.EnumerateFiles;
        var room = RoomOf(file.Path);
        var to = Path.Join(room, Rotation.NameOf(now) + Ending);
        if (File.Exists(to))
        {
            return null;
        }

        Make(file, to);
        try
        {
            // Only now, when a sound copy of today is there, may older ones go.
            foreach (var old in Rotation.TooOld(list(room, "*" + Ending), now).Concat(Left(list(room, $"*{Unfinished}*"), now)))
            {
                DeleteQuietly(old);
            }
        }
        catch (Exception problem) when (BookException.Of(problem, room) is { } told)
        {
            throw told;
        }

        return to;
    }

    /// <summary>Copies that lie beside a book, the latest first.</summary>
    public static IReadOnlyList<BookCopy> Of(string book)
    {
        var room = RoomOf(BookPaths.Real(book));
        try
        {
            return !Directory.Exists(room)
                ? []
                : [
                    .. Directory.EnumerateFiles(room, "*" + Ending)
                        .Select(file => new BookCopy(file, new DateTimeOffset(File.GetLastWriteTimeUtc(file), TimeSpan.Zero)))
                        .OrderByDescending(copy => copy.At)
                        .ThenByDescending(copy => copy.Path, StringComparer.Ordinal),
                ];
        }
        catch (Exception problem) when (BookException.Of(problem, room) is { } told)
        {
            throw told;
        }
    }

    /// <summary>The latest copy that agrees with itself; null when there is none.</summary>
    public static BookCopy? LatestSound(string book, Forms forms) => Of(book).FirstOrDefault(copy => IsSound(copy.Path, forms));

    /// <summary>Gives a file that is whole its name, and brings both to the disk.</summary>
    public static void Put(string beside, string to, bool overwrite)
    {
        using (var written = new FileStream(beside, FileMode.Open, FileAccess.ReadWrite))
        {
            written.Flush(flushToDisk: true);
        }

        File.Move(beside, to, overwrite);
        FolderSync.Flush(Path.GetDirectoryName(to)!);
    }

    public static void DeleteQuietly(string file)
    {
        try
        {
            File.Delete(file);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // What cannot be let go stays; it is in nobody's way.
            return;
        }
    }

    private static bool IsSound(string path, Forms forms)
    {
        try
        {
            using var copy = BookFile.OpenToCopy(path, forms);
            return Verifier.Verify(copy).Count == 0;
        }
        catch (BookException)
        {
            return false;
        }
    }

    /// <summary>A name that nobody has yet: two copies within a second are two.</summary>
    private static string MakeNew(BookFile file, string name)
    {
        var room = RoomOf(file.Path);
        var to = Enumerable.Range(1, int.MaxValue)
            .Select(number => Path.Join(room, number == 1 ? name + Ending : string.Create(CultureInfo.InvariantCulture, $"{name}-{number}{Ending}")))
            .First(free => !File.Exists(free));
        Make(file, to);
        return to;
    }

    /// <summary>A copy replaces a copy, and nothing else: not the book itself, not one that somebody has open, not a file that is no book.</summary>
    private static void CheckFree(BookFile file, string to)
    {
        if (to == file.Path || new FileInfo(BookPaths.Log(to)) is { Exists: true, Length: > 0 })
        {
            throw new BookException(BookTrouble.InUse, to, "");
        }

        if (File.Exists(to) || Directory.Exists(to))
        {
            OpenFiles.Unless(to, () => Header.Check(to, file.Forms));
        }
    }

    /// <summary>What programs that ended in the middle have left.</summary>
    private static IEnumerable<string> Left(IEnumerable<string> unfinished, DateTimeOffset now) =>
        unfinished.Where(file => now.UtcDateTime - File.GetLastWriteTimeUtc(file) > Abandoned).ToArray();
}
