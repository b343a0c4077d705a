namespace Doughwright.Engine.TextForm;

/// <summary>Lines of a text that belong to one entry, as indexes from 0.</summary>
/// <param name="From">First of the comments and blank lines above it.</param>
/// <param name="Start">The line of its key.</param>
/// <param name="End">Behind its last line.</param>
internal readonly record struct TextSpan(int From, int Start, int End)
{
    public static TextSpan Of(TextEntry entry, int from) => new(from, entry.KeyPosition.Line - 1, Math.Max(entry.KeyPosition.Line, EndOf(entry.Value)));

    /// <summary>Index behind the last line of a node.</summary>
    public static int EndOf(TextNode node) => node switch
    {
        TextMapping { Entries: [.., var last] } => Math.Max(last.KeyPosition.Line, EndOf(last.Value)),
        TextList { Items: [.., var last] } => last.Value.Position.Line,
        TextScalar { Style: ScalarStyle.Block } block => block.Position.Line + block.Text.TrimEnd('\n').Split('\n').Length,
        _ => node.Position.Line,
    };
}
