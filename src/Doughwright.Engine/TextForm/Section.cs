using Doughwright.Engine.Ingredients;
namespace Doughwright.Engine.TextForm;

/// <summary>
/// A mapping with a closed list of keys. Tells unknown keys and keys that stand twice when it is opened; the first of two is taken.
/// </summary>
internal sealed class Section
{
    private readonly Dictionary<string, TextEntry> entries = [];
    private readonly FindingLog log;

    public Section(TextMapping mapping, string place, FindingLog log, IReadOnlyList<string> known)
    {
        (Place, this.log) = (place, log);
        foreach (var entry in mapping.Entries)
        {
            if (!known.Contains(entry.Key))
            {
                // A key with a replaced character has been told already.
                if (!entry.Key.Contains('\ufffd'))
                {
                    (string, object)[] arguments = log.IsFull ? [] : [("key", entry.Key), .. Phrase.UnknownWord(entry.Key, known)];
                    log.Fault(FormFaults.UnknownKey, PlaceOf(entry.Key), entry.KeyPosition, arguments);
                }
            }
            else if (!entries.TryAdd(entry.Key, entry))
            {
                var first = entries[entry.Key].KeyPosition.Line;
                log.Fault(FormFaults.SameKeyTwice, PlaceOf(entry.Key), entry.KeyPosition, ("key", entry.Key), ("first", first));
            }
        }
    }

    public string Place { get; }

    public FindingLog Log => log;

    public bool Has(string key) => entries.ContainsKey(key);

    public TextEntry? Entry(string key) => entries.GetValueOrDefault(key);

    /// <summary>Words on one line, or null: not there, or told.</summary>
    public Phrase? Words(string key)
    {
        if (!entries.TryGetValue(key, out var entry))
        {
            return null;
        }

        return WordsOf(entry, PlaceOf(key), log);
    }

    /// <summary>Words on one line as the value of any entry.</summary>
    public static Phrase? WordsOf(TextEntry entry, string place, FindingLog log)
    {
        switch (entry.Value)
        {
            case TextScalar { Faulty: true }:
                return null;
            case TextScalar { Style: ScalarStyle.Block }:
                log.Fault(FormFaults.OneLineWanted, place, entry.KeyPosition, ("key", entry.Key));
                return null;
            case TextScalar scalar:
                return PhraseOf(scalar, place, log);
            default:
                log.Fault(FormFaults.WordsWanted, place, entry.KeyPosition, ("key", entry.Key));
                return null;
        }
    }

    /// <summary>Prose: one line or a block, without spaces at its ends.</summary>
    public string? Prose(string key) => Entry(key) is { } entry ? ProseOf(entry, PlaceOf(key), log) : null;

    /// <summary>Prose as the value of any entry.</summary>
    public static string? ProseOf(TextEntry entry, string place, FindingLog log) =>
        entry.Value is TextScalar { Style: ScalarStyle.Block } block ? Tidy(block.Text)
            : WordsOf(entry, place, log)?.Text is { Length: > 0 } words ? words : null;

    /// <summary>One line of words, or a list of such; commas do not part them.</summary>
    public IEnumerable<Phrase> Lines(string key) =>
        Entry(key)?.Value is TextList ? Items(key) ?? [] : Words(key) is { } words ? [words] : [];

    /// <summary>Words separated by commas, or a list.</summary>
    public IReadOnlyList<Phrase>? Items(string key) => entries.GetValueOrDefault(key)?.Value is TextList list
        ? [.. list.Items.Where(item => !item.Value.Faulty).Select(item => PhraseOf(item.Value, PlaceOf(key), log))]
        : Words(key)?.Split();

    /// <summary>Keys under a key.</summary>
    public TextMapping? Keys(string key)
    {
        var entry = entries.GetValueOrDefault(key);
        return entry is null ? null : KeysOf(entry, PlaceOf(key), log);
    }

    public static TextMapping? KeysOf(TextEntry entry, string place, FindingLog log)
    {
        if (entry.Value is TextMapping mapping)
        {
            return mapping;
        }

        if (entry.Value is not TextScalar { Faulty: true })
        {
            log.Fault(FormFaults.KeysWanted, place, entry.KeyPosition, ("key", entry.Key));
        }

        return null;
    }

    public string PlaceOf(string key) => Place.Length == 0 ? Slug.Of(key) : $"{Place}.{Slug.Of(key)}";

    private static string? Tidy(string block) =>
        string.Join('\n', block.Split('\n').Select(line => line.TrimEnd())).Trim() is { Length: > 0 } prose ? prose : null;

    private static Phrase PhraseOf(TextScalar scalar, string place, FindingLog log)
    {
        var position = scalar.Style == ScalarStyle.Quoted ? scalar.Position with { Column = scalar.Position.Column + 1 } : scalar.Position;
        var phrase = new Phrase(scalar.Text, position, place, log);
        return phrase.Part(0, scalar.Text.Length);
    }
}
