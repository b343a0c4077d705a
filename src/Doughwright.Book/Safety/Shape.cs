using Dapper;
using Doughwright.Book.Opening;
using Doughwright.Book.Schema;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Safety;

/// <summary>Whether the tables of a book are those that its form has: a file made by hand may hold others, or triggers.</summary>
internal static class Shape
{
    public static IEnumerable<string> Differences(SqliteConnection open, Forms forms)
    {
        using var pattern = new SqliteConnection("Data Source=:memory:");
        pattern.Open();
        foreach (var step in forms.Steps.Take(open.ExecuteScalar<int>("PRAGMA user_version")))
        {
            Script.Run(pattern, step);
        }

        var (wanted, there) = (Of(pattern), Of(open));
        return wanted.Except(there).Concat(there.Except(wanted)).Select(one => $"{one.Type} {one.Name}").Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
    }

    private static Entry[] Of(SqliteConnection open) => [.. open.Query<Entry>("SELECT type AS Type, name AS Name, sql AS Sql FROM sqlite_schema")];

    private sealed record Entry(string Type, string Name, string? Sql);
}
