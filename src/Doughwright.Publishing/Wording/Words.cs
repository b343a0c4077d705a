using System.Reflection;
using System.Text.Json;

namespace Doughwright.Publishing.Wording;

/// <summary>All words the program says, by key. They lie as JSON beside the program; code holds keys only.</summary>
/// <remarks>Two shapes of entry: "key": "words", and for findings and faults "key": { "message": "...", "wayOut": "..." }, kept as key.message and key.wayOut.</remarks>
internal sealed class Words
{
    private const string MessageSuffix = ".message";
    private static readonly Lazy<Words> TheShipped = new(() => new(ReadShipped()));

    private readonly Dictionary<string, string> entries;

    public Words(Dictionary<string, string> entries) => this.entries = entries;

    /// <summary>The words that come with the program, read once and only when needed.</summary>
    public static Words Shipped => TheShipped.Value;

    public IReadOnlyDictionary<string, string> Entries => entries;

    public string? Find(string key) => entries.GetValueOrDefault(key);

    /// <summary>The words of a key. A missing one shows its key, so that the rest can still be read; a test finds it before anybody sees it.</summary>
    public string this[string key] => Find(key) ?? key;

    public IEnumerable<string> Kinds => entries.Keys.Where(key => key.EndsWith(MessageSuffix, StringComparison.Ordinal)).Select(key => key[..^MessageSuffix.Length]);

    /// <summary>Reads one file of words into the dictionary.</summary>
    /// <exception cref="FormatException">The same key stands in it, or in a file before it, twice.</exception>
    internal static void Read(ReadOnlySpan<byte> json, Dictionary<string, string> into)
    {
        var reader = new Utf8JsonReader(json, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip });
        string? outer = null;
        var key = "";
        while (reader.Read())
        {
            switch (reader.TokenType)
            {
                case JsonTokenType.PropertyName:
                    key = reader.GetString()!;
                    break;
                case JsonTokenType.StartObject when reader.CurrentDepth == 1:
                    outer = key;
                    break;
                case JsonTokenType.EndObject:
                    outer = null;
                    break;
                case JsonTokenType.String:
                    var full = outer is null ? key : $"{outer}.{key}";
                    if (!into.TryAdd(full, reader.GetString()!))
                    {
                        throw new FormatException($"The words of '{full}' are given twice.");
                    }

                    break;
            }
        }
    }

    private static Dictionary<string, string> ReadShipped()
    {
        var into = new Dictionary<string, string>(StringComparer.Ordinal);
        var assembly = Assembly.GetExecutingAssembly();
        foreach (var name in assembly.GetManifestResourceNames())
        {
            if (name.EndsWith(".json", StringComparison.Ordinal))
            {
                Read(EmbeddedFile.Bytes(assembly, name), into);
            }
        }

        return into;
    }
}
