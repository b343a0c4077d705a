using Dapper;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Book.Schema;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Safety;

/// <summary>Looks whether a book agrees with itself: the file by the library's own checks, its tables by its form, texts and photos by their hashes.</summary>
internal static class Verifier
{
    private const string InstantForm = "[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]T[0-2][0-9]:[0-5][0-9]:[0-5][0-9].[0-9][0-9][0-9]Z";

    /// <summary>Tables and the column of instants in each.</summary>
    private static readonly (string Table, string Column)[] Instants = [("state", "at"), ("kept", "at"), ("said", "at"), ("correction", "at"), ("photo_of", "at"), ("paper", "taken_away")];

    /// <returns>What is wrong; nothing for a sound book.</returns>
    public static IReadOnlyList<Flaw> Verify(BookFile file) => file.Read(open => Verify(open, file.Forms));

    public static IReadOnlyList<Flaw> Verify(SqliteConnection open, Forms forms)
    {
        List<Flaw> flaws = [.. Of(FlawKind.File, () => open.Query<string>("PRAGMA integrity_check").Where(line => line != "ok"))];
        flaws.AddRange(Of(FlawKind.Shape, () => Shape.Differences(open, forms)));
        if (flaws.Any(flaw => flaw.Kind == FlawKind.Shape))
        {
            return flaws;
        }

        flaws.AddRange(Of(FlawKind.Link, () => open.Query<string>("SELECT \"table\" || ' ' || ifnull(rowid, '') FROM pragma_foreign_key_check")));
        flaws.AddRange(Of(FlawKind.Text, () => Bodies.Spoiled(open)));
        flaws.AddRange(Of(FlawKind.Photo, () => Photos.Spoiled(open)));
        flaws.AddRange(Of(FlawKind.Paper, () => Numbers(
            open, "SELECT paper.id FROM paper LEFT JOIN state ON state.id = paper.now AND state.paper = paper.id WHERE state.id IS NULL")));
        flaws.AddRange(Of(FlawKind.Chain, () => Numbers(
            open, "SELECT state.id FROM state JOIN state AS earlier ON earlier.id = state.before WHERE earlier.paper <> state.paper OR earlier.id >= state.id")));
        flaws.AddRange(Of(FlawKind.Chain, () => Numbers(
            open,
            """
            SELECT step_back.state FROM step_back JOIN state AS back ON back.id = step_back.state JOIN state AS onward ON onward.id = step_back.onward
            WHERE back.paper <> step_back.paper OR onward.before IS NOT back.id
            """)));
        foreach (var (table, column) in Instants)
        {
            flaws.AddRange(Of(FlawKind.Instant, () => open
                .Query<string>($"SELECT {column} FROM {table} WHERE {column} IS NOT NULL AND {column} NOT GLOB @form", new { form = InstantForm })
                .Select(instant => $"{table} {instant}")));
        }

        return flaws;
    }

    /// <summary>A page that cannot be read is a flaw like another, and the rest is looked at all the same.</summary>
    private static List<Flaw> Of(FlawKind kind, Func<IEnumerable<string>> look)
    {
        List<Flaw> found = [];
        try
        {
            foreach (var what in look())
            {
                found.Add(new(kind, what));
            }
        }
        catch (SqliteException problem) when (BookException.Of(problem, "") is { Trouble: BookTrouble.Damaged })
        {
            found.Add(new(FlawKind.File, problem.Message));
        }

        return found;
    }

    private static IEnumerable<string> Numbers(SqliteConnection open, string query) => open.Query<string>(query);
}
