using System.Globalization;
using Dapper;
using Doughwright.Book.Opening;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Schema;

/// <summary>The forms that a book has had. Each is reached from the one before it in one step that is done whole or not at all.</summary>
internal static class Forms
{
    /// <summary>"Dghw" in letters: by it a book is told from any other file of the library.</summary>
    public const int Mark = 0x44676877;

    /// <summary>The form that this program writes.</summary>
    public const int Now = 1;

    /// <summary>The form of a book that is to be read.</summary>
    /// <exception cref="BookException">It is no book, newer, or of an older form that nobody may change now.</exception>
    public static int CheckReadable(SqliteConnection open, string path)
    {
        var form = CheckWritable(open, path);
        return form == Now ? form : throw new BookException(form == 0 ? BookTrouble.NotABook : BookTrouble.Older, path, Words(form));
    }

    /// <returns>0 for a file with nothing in it.</returns>
    /// <exception cref="BookException">It is no book, or newer.</exception>
    public static int CheckWritable(SqliteConnection open, string path)
    {
        var (mark, form) = (open.ExecuteScalar<int>("PRAGMA application_id"), open.ExecuteScalar<int>("PRAGMA user_version"));
        var isEmpty = open.ExecuteScalar<int>("SELECT count(*) FROM sqlite_schema") == 0;
        return (mark, form, isEmpty) switch
        {
            (0, 0, true) => 0,
            (not Mark, _, _) => throw new BookException(BookTrouble.NotABook, path, ""),
            (_, > Now, _) => throw new BookException(BookTrouble.Newer, path, Words(form)),
            _ => form,
        };
    }

    /// <exception cref="BookException">The book does not agree with itself afterwards; it is left as it was.</exception>
    public static void BringForward(SqliteConnection open, string path, int form)
    {
        for (var next = form + 1; next <= Now; next++)
        {
            using var all = open.BeginTransaction(deferred: false);
            // Another program may have been quicker.
            if (open.ExecuteScalar<int>("PRAGMA user_version") >= next)
            {
                continue;
            }

            open.Execute(Step(next));
            open.Execute(string.Create(CultureInfo.InvariantCulture, $"PRAGMA application_id = {Mark}; PRAGMA user_version = {next};"));
            if (open.Query<string>("PRAGMA integrity_check").FirstOrDefault() != "ok" || open.Query("PRAGMA foreign_key_check").Any())
            {
                throw new BookException(BookTrouble.Damaged, path, Words(next));
            }

            all.Commit();
        }
    }

    private static string Step(int form)
    {
        using var stream = typeof(Forms).Assembly.GetManifestResourceStream(string.Create(CultureInfo.InvariantCulture, $"schema/{form}.sql"))!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private static string Words(int form) => form.ToString(CultureInfo.InvariantCulture);
}
