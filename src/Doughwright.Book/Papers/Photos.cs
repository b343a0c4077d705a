using System.Security.Cryptography;
using Dapper;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Papers;

/// <summary>Photos as they stand in the file.</summary>
internal static class Photos
{
    public static string HashOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Hashes whose photos are others.</summary>
    public static IEnumerable<string> Spoiled(SqliteConnection open) =>
        open.Query<Row>("SELECT hash AS Hash, bytes AS Bytes FROM photo", buffered: false).Where(row => HashOf(row.Bytes) != row.Hash).Select(row => row.Hash);

    private sealed record Row(string Hash, byte[] Bytes);
}
