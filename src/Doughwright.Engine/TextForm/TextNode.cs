using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>A piece of a text: a mapping, a list or a scalar. What it means is not known here.</summary>
/// <param name="Position">Where it begins.</param>
internal abstract record TextNode(Position Position);

/// <summary>Keys with their values, in the order of the text. The same key can stand twice: that is for the reader to say.</summary>
internal sealed record TextMapping(IReadOnlyList<TextEntry> Entries, Position Position) : TextNode(Position);

/// <summary>One key and its value.</summary>
/// <param name="Comments">The comment lines above it, each with its #; an empty string is a blank line.</param>
/// <param name="Remark">The comment behind it on the same line, or null.</param>
internal sealed record TextEntry(string Key, Position KeyPosition, TextNode Value, IReadOnlyList<string> Comments, string? Remark);

/// <summary>Items of a list, each of them words on one line.</summary>
internal sealed record TextList(IReadOnlyList<TextItem> Items, Position Position) : TextNode(Position);

/// <summary>One item of a list, with the comments above and behind it.</summary>
internal sealed record TextItem(TextScalar Value, IReadOnlyList<string> Comments, string? Remark);

/// <summary>Words. Always text: "no", "010" and "12:30" are three words to this layer.</summary>
/// <param name="Text">Without quotes. A block ends with a line end.</param>
/// <param name="Faulty">A finding has been written for it already, so that nobody complains twice.</param>
internal sealed record TextScalar(string Text, ScalarStyle Style, Position Position, bool Faulty = false) : TextNode(Position);

internal enum ScalarStyle
{
    Plain,
    Quoted,
    Block,
}
