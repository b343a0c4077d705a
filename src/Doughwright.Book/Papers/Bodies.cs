using System.Text;
using Dapper;
using Doughwright.Book.Opening;
using Doughwright.Engine.TextForm;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Papers;

/// <summary>Texts as they stand in the file. None leaves it that is not the one its hash names.</summary>
internal static class Bodies
{
    /// <summary>As bytes: the library's own way to a text stops at a zero in it.</summary>
    private const string Selecting = "SELECT body.hash AS Hash, CAST(body.text AS BLOB) AS Bytes FROM";

    /// <summary>A text; null when there is none.</summary>
    /// <param name="from">What stands behind FROM.</param>
    /// <exception cref="BookException">What stands there is not what was written.</exception>
    public static string? Read(SqliteConnection open, string path, string from, object given)
    {
        if (open.QuerySingleOrDefault<Row>($"{Selecting} {from}", given) is not { } row)
        {
            return null;
        }

        var text = Encoding.UTF8.GetString(row.Bytes);
        return StateId.OfText(text) == row.Hash ? text : throw new BookException(BookTrouble.Damaged, path, $"text {row.Hash}");
    }

    /// <summary>Stores a text once.</summary>
    /// <returns>Its hash.</returns>
    public static string Store(SqliteConnection open, string text)
    {
        var hash = StateId.OfText(text);
        open.Execute("INSERT INTO body (hash, text) VALUES (@hash, @text) ON CONFLICT DO NOTHING", new { hash, text });
        return hash;
    }

    /// <summary>Hashes whose texts are others.</summary>
    public static IEnumerable<string> Spoiled(SqliteConnection open) =>
        open.Query<Row>($"{Selecting} body", buffered: false).Where(row => StateId.OfText(Encoding.UTF8.GetString(row.Bytes)) != row.Hash).Select(row => row.Hash);

    private sealed record Row(string Hash, byte[] Bytes);
}
