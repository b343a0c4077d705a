using System.Globalization;
using Dapper;
using Doughwright.Book.Opening;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Schema;

/// <summary>The forms that a book has had. Each is reached from the one before it in one step that is done whole or not at all.</summary>
/// <param name="steps">From nothing to form 1, from 1 to 2 and so on.</param>
internal sealed class Forms(IReadOnlyList<string> steps)
{
    /// <summary>"Dghw" in letters: by it a book is told from any other file of the library.</summary>
    public const int Mark = 0x44676877;

    /// <summary>The forms of this program.</summary>
    public static Forms Shipped { get; } = new([.. Enumerable.Range(1, int.MaxValue).Select(Step).TakeWhile(step => step is not null).Select(step => step!)]);

    public IReadOnlyList<string> Steps => steps;

    /// <summary>The form that is written.</summary>
    public int Now => steps.Count;

    /// <summary>The form of a book that is to be read.</summary>
    /// <exception cref="BookException">It is no book, newer, or of an older form that nobody may change now.</exception>
    public int CheckReadable(SqliteConnection open, string path)
    {
        var form = CheckNotEmpty(open, path);
        return form == Now ? form : throw new BookException(BookTrouble.Older, path, Words(form));
    }

    /// <exception cref="BookException">It is no book, newer, or there is nothing in it.</exception>
    public int CheckNotEmpty(SqliteConnection open, string path) =>
        CheckWritable(open, path) is > 0 and var form ? form : throw new BookException(BookTrouble.NotABook, path, Words(0));

    /// <returns>0 for a file with nothing in it.</returns>
    /// <exception cref="BookException">It is no book, or newer.</exception>
    public int CheckWritable(SqliteConnection open, string path)
    {
        var (mark, form) = (open.ExecuteScalar<int>("PRAGMA application_id"), open.ExecuteScalar<int>("PRAGMA user_version"));
        var isEmpty = open.ExecuteScalar<int>("SELECT count(*) FROM sqlite_schema") == 0;
        if ((mark, form, isEmpty) is (0, 0, true))
        {
            return 0;
        }

        CheckForm(form, path);
        return mark == Mark && form > 0 ? form : throw new BookException(BookTrouble.NotABook, path, "");
    }

    /// <exception cref="BookException">A newer program has written it.</exception>
    public void CheckForm(int form, string path)
    {
        if (form > Now)
        {
            throw new BookException(BookTrouble.Newer, path, Words(form));
        }
    }

    /// <exception cref="BookException">The book does not agree with itself afterwards; it is left as it was.</exception>
    public void BringForward(SqliteConnection open, string path, int form)
    {
        for (var next = form + 1; next <= Now; next++)
        {
            using var all = open.BeginTransaction(deferred: false);
            Script.Run(open, steps[next - 1]);
            Script.Run(open, string.Create(CultureInfo.InvariantCulture, $"PRAGMA application_id = {Mark}; PRAGMA user_version = {next};"));
            if (open.Query<string>("PRAGMA integrity_check").FirstOrDefault() != "ok" || open.Query("PRAGMA foreign_key_check").Any())
            {
                throw new BookException(BookTrouble.Damaged, path, Words(next));
            }

            all.Commit();
        }
    }

    private static string? Step(int form)
    {
        using var stream = typeof(Forms).Assembly.GetManifestResourceStream(string.Create(CultureInfo.InvariantCulture, $"schema/{form}.sql"));
        if (stream is null)
        {
            return null;
        }

        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private static string Words(int form) => form.ToString(CultureInfo.InvariantCulture);
}
