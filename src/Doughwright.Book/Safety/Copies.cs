using System.Globalization;
using Doughwright.Book.Opening;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Safety;

/// <summary>Copies of a book, each verified before it takes its name.</summary>
internal static class Copies
{
    private const string Room = "copies";
    private const string Ending = ".db";
    private const string Days = "yyyy-MM-dd";

    /// <summary>So many of the last days that have a copy keep it.</summary>
    private const int DaysKept = 7;

    /// <summary>So many of the last weeks that have a copy keep their latest.</summary>
    private const int WeeksKept = 4;

    /// <summary>Where copies of a book lie: beside it.</summary>
    public static string RoomOf(string book) => Path.Join(Path.GetDirectoryName(Path.GetFullPath(book)), Room);

    /// <summary>Copies the book as it is at this moment, beside whoever writes in it.</summary>
    /// <exception cref="BookException">No sound copy could be made; what was there is still there.</exception>
    public static void Make(BookFile file, string to)
    {
        var beside = $"{to}.{Path.GetRandomFileName()}.unfinished";
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(to))!);
            using (var copy = BookFile.Connect(beside, SqliteOpenMode.ReadWriteCreate))
            {
                file.Use(open =>
                {
                    open.BackupDatabase(copy);
                    return 0;
                });
                if (Verifier.Verify(copy) is { Count: > 0 } wrong)
                {
                    throw new BookException(BookTrouble.Damaged, file.Path, string.Join("; ", wrong));
                }
            }

            using (var written = new FileStream(beside, FileMode.Open, FileAccess.ReadWrite))
            {
                written.Flush(flushToDisk: true);
            }

            File.Move(beside, to, overwrite: true);
        }
        catch (SqliteException problem) when (BookException.Of(problem, to) is { } told)
        {
            throw told;
        }
        catch (UnauthorizedAccessException problem)
        {
            throw new BookException(BookTrouble.ReadOnly, to, problem.Message, problem);
        }
        catch (IOException problem)
        {
            throw new BookException(BookTrouble.Disk, to, problem.Message, problem);
        }
        finally
        {
            foreach (var rest in new[] { "", "-wal", "-shm", "-journal" })
            {
                File.Delete(beside + rest);
            }
        }
    }

    public static string BeforeMigration(BookFile file, int form, DateTimeOffset now)
    {
        var to = Path.Join(RoomOf(file.Path), string.Create(CultureInfo.InvariantCulture, $"before-form-{form + 1}-{now.UtcDateTime:yyyyMMdd'T'HHmmss}{Ending}"));
        Make(file, to);
        return to;
    }

    public static string? OfTheDay(BookFile file, DateTimeOffset now)
    {
        var to = Path.Join(RoomOf(file.Path), now.UtcDateTime.ToString(Days, CultureInfo.InvariantCulture) + Ending);
        if (File.Exists(to))
        {
            return null;
        }

        Make(file, to);
        foreach (var old in TooOld(Directory.EnumerateFiles(RoomOf(file.Path), "*" + Ending)))
        {
            File.Delete(old);
        }

        return to;
    }

    /// <summary>Of files named by their day, those that are neither among the last days nor the latest of one of the last weeks. Others are never let go.</summary>
    internal static IEnumerable<string> TooOld(IEnumerable<string> files)
    {
        var dated = files
            .Select(file => (File: file, IsDay: DateOnly.TryParseExact(Path.GetFileNameWithoutExtension(file), Days, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day), Day: day))
            .Where(file => file.IsDay)
            .OrderByDescending(file => file.Day)
            .ToArray();
        var weeks = dated
            .GroupBy(file => (ISOWeek.GetYear(file.Day.ToDateTime(default)), ISOWeek.GetWeekOfYear(file.Day.ToDateTime(default))))
            .Take(WeeksKept)
            .Select(week => week.First().File);
        return dated.Select(file => file.File).Except(dated.Take(DaysKept).Select(file => file.File).Concat(weeks));
    }
}
