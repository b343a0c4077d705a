using System.Text;

namespace Doughwright.Engine.TextForm;

/// <summary>Writes a tree as text: two spaces a level, one blank line at most, quotes only where they are needed.</summary>
internal static class TreeWriter
{
    public static string Write(TextDocument document)
    {
        var text = new StringBuilder();
        WriteMapping(text, document.Root, 0);
        WriteComments(text, document.Closing, 0);
        return text.ToString();
    }

    /// <summary>The lines of one entry.</summary>
    public static IEnumerable<string> Lines(TextEntry entry, int indent)
    {
        var text = new StringBuilder();
        WriteMapping(text, new([entry], Recipes.Position.None), indent);
        return text.ToString().TrimEnd('\n').Split('\n');
    }

    private static void WriteMapping(StringBuilder text, TextMapping mapping, int indent)
    {
        foreach (var entry in mapping.Entries)
        {
            WriteComments(text, entry.Comments, indent);
            var remark = entry.Remark is { } words ? " " + words : "";
            text.Append(' ', indent).Append(Key(entry.Key)).Append(':');
            switch (entry.Value)
            {
                case TextScalar { Style: ScalarStyle.Block } block:
                    text.Append(" |").Append(remark).Append('\n');
                    WriteBlock(text, block.Text, indent + 2);
                    break;
                case TextScalar scalar:
                    text.Append(' ').Append(Words(scalar.Text)).Append(remark).Append('\n');
                    break;
                case TextList list:
                    text.Append(remark).Append('\n');
                    WriteList(text, list, indent + 2);
                    break;
                case TextMapping under:
                    text.Append(remark).Append('\n');
                    WriteMapping(text, under, indent + 2);
                    break;
            }
        }
    }

    private static void WriteList(StringBuilder text, TextList list, int indent)
    {
        foreach (var item in list.Items)
        {
            WriteComments(text, item.Comments, indent);
            var remark = item.Remark is { } words ? " " + words : "";
            text.Append(' ', indent).Append("- ").Append(Words(item.Value.Text)).Append(remark).Append('\n');
        }
    }

    private static void WriteBlock(StringBuilder text, string words, int indent)
    {
        foreach (var line in words.TrimEnd('\n').Split('\n'))
        {
            text.Append(' ', line.Length == 0 ? 0 : indent).Append(line).Append('\n');
        }
    }

    private static void WriteComments(StringBuilder text, IReadOnlyList<string> comments, int indent)
    {
        foreach (var comment in comments)
        {
            text.Append(' ', comment.Length == 0 ? 0 : indent).Append(comment).Append('\n');
        }
    }

    public static string Key(string key) => KeyReader.StarIn(key) < 0 ? Words(key) : Quoted(key);

    public static string Words(string words) => ScalarReader.CanBePlain(words) ? words : Quoted(words);

    private static string Quoted(string words) => "\"" + words.Replace("\\", "\\\\").Replace("\"", "\\\"") + "\"";
}
