using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Reads the key at the beginning of a line, or says why there is none.</summary>
internal static class KeyReader
{
    /// <summary>A key, and the index at which its value may begin.</summary>
    public sealed record Key(string Text, Position Position, int ValueStart);

    /// <param name="continued">The line is deeper than its neighbours, so that without a colon it is more of the line above.</param>
    public static Key? Read(SourceLine line, string place, bool continued, FindingLog log)
    {
        var content = line.Content;
        var position = new Position(line.Number, line.Start + 1);
        if (Refused(line) is { } kind)
        {
            log.Fault(kind, place, position, ("mark", content.Split(' ')[0]), ("words", content.TrimEnd()));
            return null;
        }

        if (content[0] is '"' or '\'')
        {
            return ReadQuoted(line, position, place, log);
        }

        var colon = FindColon(line.Text, line.Start);
        if (colon < 0 && !continued && TightColon(line) is var tight and >= 0)
        {
            log.Fault(TextFaults.SpaceAfterColon, place, position with { Column = tight + 1 }, ("key", line.Text[line.Start..tight]));
            colon = tight;
        }

        if (colon < 0)
        {
            log.Fault(continued ? TextFaults.ContinuedLine : TextFaults.ColonMissing, place, position, ("words", content.TrimEnd()));
            return null;
        }

        var key = line.Text[line.Start..colon].TrimEnd();
        if (key.Length is 0 or > TextCaps.KeyLength)
        {
            var broken = key.Length == 0 ? TextFaults.FirstMark : TextFaults.KeyTooLong;
            log.Fault(broken, place, position, ("most", TextCaps.KeyLength), ("mark", ":"));
            return null;
        }

        if (StarIn(key) is var star and >= 0)
        {
            log.Fault(TextFaults.Anchor, place, position with { Column = position.Column + star }, ("mark", key[star..].Split(' ')[0]));
        }

        return new(key, position, colon + 1);
    }

    /// <summary>
    /// Where a word of a key begins with a star, or -1. YAML allows it and parsers refuse it, so such a key stands in quotes.
    /// </summary>
    public static int StarIn(string key)
    {
        var star = key.IndexOf(" *", StringComparison.Ordinal);
        return star < 0 || (star + 2 < key.Length && key[star + 2] == ' ') ? -1 : star + 1;
    }

    /// <summary>
    /// The colon that ends a plain key: the first one with a space or nothing behind it, and no comment before. -1 when there is none.
    /// </summary>
    public static int FindColon(string text, int start)
    {
        for (var i = start; i < text.Length; i++)
        {
            if (text[i] == ':' && (i + 1 == text.Length || text[i + 1] == ' '))
            {
                return i;
            }

            if (text[i] == '#' && i > start && text[i - 1] == ' ')
            {
                return -1;
            }
        }

        return -1;
    }

    public static bool IsItem(string content) => content == "-" || content.StartsWith("- ", StringComparison.Ordinal);

    private static Key? ReadQuoted(SourceLine line, Position position, string place, FindingLog log)
    {
        var (text, end, badEscape) = ScalarReader.Unquote(line.Text, line.Start);
        if (end < 0 || badEscape >= 0)
        {
            var escape = badEscape >= 0 ? badEscape : line.Start;
            log.Fault(
                end < 0 ? TextFaults.QuoteOpen : TextFaults.Escape,
                place,
                end < 0 ? position : position with { Column = escape + 1 },
                ("mark", end < 0 ? line.Text[line.Start].ToString() : line.Text.Substring(escape, 2)));
            return null;
        }

        var colon = ScalarReader.SkipSpaces(line.Text, end);
        if (text.Length > 0 && FindColon(line.Text, colon) == colon)
        {
            return new(text, position, colon + 1);
        }

        log.Fault(TextFaults.ColonMissing, place, position, ("words", line.Content.TrimEnd()));
        return null;
    }

    private static string? Refused(SourceLine line)
    {
        var content = line.Content;
        var marksDocument = content is "---" or "..." || content.StartsWith("--- ", StringComparison.Ordinal)
            || content.StartsWith("... ", StringComparison.Ordinal);
        return content[0] switch
        {
            _ when marksDocument => TextFaults.SecondDocument,
            _ when IsItem(content) => TextFaults.ItemInMapping,
            '<' when content.StartsWith("<<:", StringComparison.Ordinal) => TextFaults.MergeKey,
            '&' or '*' => TextFaults.Anchor,
            '!' => TextFaults.Tag,
            '{' or '}' or '[' or ']' => TextFaults.Brackets,
            '|' or '>' or '@' or '`' or ',' or '%' => TextFaults.FirstMark,
            '?' when content.Length == 1 || content[1] == ' ' => TextFaults.FirstMark,
            _ => null,
        };
    }

    /// <summary>"salt:7 g": a colon behind a word with no space after it.</summary>
    private static int TightColon(SourceLine line)
    {
        var colon = line.Text.IndexOf(':', line.Start);
        return colon > line.Start && char.IsLetter(line.Text[colon - 1]) ? colon : -1;
    }
}
