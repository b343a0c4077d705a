using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Builds a mapping without comments; what is null or empty is left out.</summary>
internal sealed class TreeBuilder
{
    private readonly List<TextEntry> entries = [];

    public TextMapping Mapping => new(entries, Position.None);

    public TreeBuilder Words(string key, string? words) => words is null ? this : Add(key, Scalar(OneLine(words)));

    /// <summary>Prose: on one line where it fits there, else a block, so that no quotes stand around what a person reads.</summary>
    public TreeBuilder Prose(string key, string? words)
    {
        var tidy = words is null ? "" : string.Join('\n', words.Split('\n').Select(line => line.TrimEnd())).Trim();
        return tidy.Length == 0 ? this
            : ScalarReader.CanBePlain(tidy) && !tidy.Contains('\n') ? Add(key, Scalar(tidy))
            : Add(key, new TextScalar(tidy + "\n", ScalarStyle.Block, Position.None));
    }

    /// <summary>Items behind each other on one line, or a list when one of them has a comma in it.</summary>
    public TreeBuilder Items(string key, IReadOnlyList<string> items) => items.Count == 0 ? this
        : items.Any(item => item.Contains(',')) ? List(key, items)
        : Words(key, string.Join(", ", items));

    public TreeBuilder List(string key, IReadOnlyList<string>? items) => items is null or { Count: 0 }
        ? this
        : Add(key, new TextList([.. items.Select(item => new TextItem(Scalar(OneLine(item)), [], null))], Position.None));

    public TreeBuilder Keys(string key, TextMapping mapping) => mapping.Entries.Count == 0 ? this : Add(key, mapping);

    private TreeBuilder Add(string key, TextNode value)
    {
        entries.Add(new(key, Position.None, value, [], null));
        return this;
    }

    private static string OneLine(string words) => words.ReplaceLineEndings(" ").Trim();

    private static TextScalar Scalar(string words) => new(words, ScalarStyle.Plain, Position.None);
}
