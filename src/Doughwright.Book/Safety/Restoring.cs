using System.Globalization;
using Dapper;
using Doughwright.Book.Opening;
using Doughwright.Book.Schema;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Safety;

/// <summary>Brings a book back from a copy. What was the book before is set aside under another name, whatever its state.</summary>
internal static class Restoring
{
    private const string Unfinished = ".unfinished";

    /// <param name="from">The copy; null takes what is left of a book that lost the end of its log, or else the latest sound copy.</param>
    /// <exception cref="BookException">There is no sound copy, or somebody has the book open, or it cannot be written; the book is as it was.</exception>
    public static BroughtBack Bring(string path, string? from, Forms forms, DateTimeOffset now)
    {
        var book = BookPaths.Real(path);
        using var writer = WriterLock.Take(book);
        var coming = $"{book}.{Path.GetRandomFileName()}{Unfinished}";
        try
        {
            var taken = from is { } named ? Take(named, coming, forms)
                : TakeRest(book, coming, forms) ? book
                : Copies.LatestSound(book, forms) is { } latest ? Take(latest.Path, coming, forms)
                : throw new BookException(BookTrouble.NoSoundCopy, book, "");
            var aside = SetAside(book, now);
            Empty(book);
            Copies.Put(coming, book, overwrite: true);
            return new(book, taken, aside);
        }
        catch (Exception problem) when (BookException.Of(problem, book) is { } told)
        {
            throw told;
        }
        finally
        {
            foreach (var rest in new[] { "", "-wal", "-shm", "-journal" })
            {
                Copies.DeleteQuietly(coming + rest);
            }
        }
    }

    private static string Take(string copy, string coming, Forms forms)
    {
        using var file = BookFile.OpenToCopy(copy, forms);
        return Take(file, coming);
    }

    /// <summary>Makes a sound file of a copy, beside the book.</summary>
    private static string Take(BookFile file, string coming)
    {
        if (Verifier.Verify(file) is { Count: > 0 } wrong)
        {
            throw new BookException(BookTrouble.Damaged, file.Path, string.Join("; ", wrong));
        }

        Copies.Make(file, coming);
        return file.Path;
    }

    /// <summary>Of a book that lost the end of its log, all that stands before the loss.</summary>
    private static bool TakeRest(string book, string coming, Forms forms)
    {
        if (!File.Exists(book) || LogCheck.Loss(book) is null)
        {
            return false;
        }

        var rest = $"{book}.{Path.GetRandomFileName()}{Unfinished}";
        try
        {
            CopyBytes(book, rest);
            CopyBytes(BookPaths.Log(book), BookPaths.Log(rest));
            using var left = BookFile.OpenRest(rest, forms);
            _ = Take(left, coming);
            return true;
        }
        catch (BookException problem) when (problem.Trouble is BookTrouble.Damaged or BookTrouble.LogDamaged or BookTrouble.NotABook)
        {
            return false;
        }
        finally
        {
            foreach (var one in new[] { rest, BookPaths.Log(rest), BookPaths.Index(rest) })
            {
                Copies.DeleteQuietly(one);
            }
        }
    }

    /// <summary>Copies the bytes of a book and its log, sound or not.</summary>
    /// <returns>The file; null when there is none.</returns>
    private static string? SetAside(string book, DateTimeOffset now)
    {
        if (!File.Exists(book))
        {
            return null;
        }

        var name = $"{Path.GetFileNameWithoutExtension(book)}-set-aside-{now.UtcDateTime.ToString("yyyyMMdd'T'HHmmss", CultureInfo.InvariantCulture)}";
        var aside = Enumerable.Range(1, int.MaxValue)
            .Select(number => Path.Join(Path.GetDirectoryName(book), number == 1 ? name + ".db" : string.Create(CultureInfo.InvariantCulture, $"{name}-{number}.db")))
            .First(free => !File.Exists(free));
        CopyBytes(BookPaths.Log(book), BookPaths.Log(aside));
        CopyBytes(book, aside);
        FolderSync.Flush(Path.GetDirectoryName(book)!);
        return aside;
    }

    /// <summary>
    /// Takes the log into the file that is to be replaced, as far as that goes, and away: a log of the old book beside the new one would be read into it. Whoever
    /// ends this in the middle has the old book still, and what is set aside.
    /// </summary>
    private static void Empty(string book)
    {
        try
        {
            if (File.Exists(book) && LogCheck.Loss(book) is null)
            {
                using var old = BookFile.Connect(book, SqliteOpenMode.ReadWrite);
                old.Execute("PRAGMA wal_checkpoint(TRUNCATE)");
            }
        }
        catch (Exception problem) when (problem is BookException or SqliteException)
        {
            // A file so damaged that it cannot be opened has nothing to take in; its bytes are set aside.
        }

        File.Delete(BookPaths.Log(book));
        File.Delete(BookPaths.Index(book));
    }

    private static void CopyBytes(string from, string to)
    {
        if (!File.Exists(from))
        {
            return;
        }

        File.Copy(from, to, overwrite: false);
        using var written = new FileStream(to, FileMode.Open, FileAccess.ReadWrite);
        written.Flush(flushToDisk: true);
    }
}
