namespace Doughwright.Engine.TextForm;

/// <summary>A text as the fields of a form: what stands behind each key, and back.</summary>
internal static class FieldsOfText
{
    /// <summary>What is said behind each key of a text; keys below a key stand line by line, "the big bowl: steel bowl, 500 g".</summary>
    public static IReadOnlyDictionary<string, string> Of(TextDocument document)
    {
        var fields = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var entry in document.Root.Entries)
        {
            fields.TryAdd(entry.Key, Words(entry.Value));
        }

        return fields;
    }

    /// <summary>A text in which each key says what was typed; one that says nothing is left out. Comments of an older text stay where they stood.</summary>
    /// <param name="nested">Keys whose lines are keys of their own.</param>
    public static string Text(IEnumerable<(string Key, string Typed)> fields, IReadOnlyList<string> nested, TextDocument? older)
    {
        var builder = new TreeBuilder().Words(FormLine.Key, "1");
        foreach (var (key, typed) in fields.Where(field => field.Typed.Trim().Length > 0))
        {
            builder = nested.Contains(key) ? builder.Keys(key, Lines(typed)) : builder.Words(key, typed);
        }

        return Writing.Of(builder.Mapping, older).Text;
    }

    private static TextMapping Lines(string typed)
    {
        var lines = new TreeBuilder();
        foreach (var line in typed.ReplaceLineEndings("\n").Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0))
        {
            var colon = line.IndexOf(": ", StringComparison.Ordinal);
            // A line without a colon is a name that says nothing; the reader of the text tells it.
            lines = colon < 0 ? lines.Words(line.TrimEnd(':').Trim(), "") : lines.Words(line[..colon].Trim(), line[(colon + 1)..].Trim());
        }

        return lines.Mapping;
    }

    private static string Words(TextNode value) => value switch
    {
        TextScalar scalar => scalar.Text.Trim(),
        TextList list => string.Join(", ", list.Items.Select(item => item.Value.Text)),
        TextMapping mapping => string.Join('\n', mapping.Entries.Select(entry => $"{entry.Key}: {Words(entry.Value)}")),
        _ => "",
    };
}
