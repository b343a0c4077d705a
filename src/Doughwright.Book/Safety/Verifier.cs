using Dapper;
using Doughwright.Book.Opening;
using Doughwright.Engine.TextForm;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Safety;

/// <summary>Looks whether a book agrees with itself: the file by the library's own checks, the texts by their hashes.</summary>
internal static class Verifier
{
    /// <returns>What is wrong, line by line.</returns>
    public static IReadOnlyList<string> Verify(BookFile file) => file.Use(Verify);

    public static IReadOnlyList<string> Verify(SqliteConnection open) =>
    [
        .. open.Query<string>("PRAGMA integrity_check").Where(line => line != "ok"),
        .. open.Query<Broken>("SELECT \"table\" AS [Table], rowid AS Row FROM pragma_foreign_key_check").Select(broken => $"{broken.Table} {broken.Row}"),
        .. open.Query<(string Hash, string Text)>("SELECT hash, text FROM body", buffered: false).Where(body => StateId.OfText(body.Text) != body.Hash).Select(body => $"body {body.Hash}"),
        .. open.Query<long>("SELECT paper.id FROM paper LEFT JOIN state ON state.id = paper.now AND state.paper = paper.id WHERE state.id IS NULL").Select(paper => $"paper {paper}"),
    ];

    private sealed record Broken(string Table, long? Row);
}
