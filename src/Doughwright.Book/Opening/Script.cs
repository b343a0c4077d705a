using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Opening;

/// <summary>Several statements in one text.</summary>
internal static class Script
{
    /// <summary>
    /// Carries out all of them, or throws. The library's own way to do so stops at the first statement that has columns, ALTER TABLE among them, does the rest when
    /// its reader is closed, and keeps silent about what failed there.
    /// </summary>
    public static void Run(SqliteConnection open, string statements)
    {
        using var command = open.CreateCommand();
        command.CommandText = statements;
        using var reader = command.ExecuteReader();
        while (reader.NextResult())
        {
            // To come to the next is to carry it out.
        }
    }
}
