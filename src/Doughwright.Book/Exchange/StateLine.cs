using System.Text.Json;

namespace Doughwright.Book.Exchange;

/// <summary>One line of the states in an export.</summary>
internal sealed record StateLine(string Paper, int Number, int? Before, string At, string Did, string Hash, string? Text)
{
    /// <returns>Null when it is none.</returns>
    public static StateLine? Read(ReadOnlyMemory<byte> line)
    {
        try
        {
            using var json = JsonDocument.Parse(line, new JsonDocumentOptions { MaxDepth = 2 });
            var root = json.RootElement;
            string Word(string name) => root.GetProperty(name).GetString() ?? throw new FormatException();
            return new(
                Word("paper"),
                root.GetProperty("state").GetInt32(),
                root.TryGetProperty("before", out var before) ? before.GetInt32() : null,
                Word("at"),
                Word("did"),
                Word("hash"),
                root.TryGetProperty("text", out var text) ? text.GetString() ?? throw new FormatException() : null);
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException or KeyNotFoundException or FormatException)
        {
            return null;
        }
    }
}
