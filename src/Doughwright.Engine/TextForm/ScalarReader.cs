using System.Text;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Reads what stands on one line: words, plain or quoted, and the comment behind them. Refuses the rest of YAML by name.</summary>
internal static class ScalarReader
{
    /// <summary>What stands behind a key or a dash.</summary>
    /// <param name="Scalar">The words; null when nothing is written, or when a block or deeper lines follow.</param>
    /// <param name="Block">A | stands here.</param>
    /// <param name="Faulty">The block begins with a mark of another kind, and that has been told.</param>
    public readonly record struct Rest(TextScalar? Scalar, bool Block, string? Remark, bool Faulty = false);

    /// <summary>Reads from a column to the end of a line.</summary>
    public static Rest Read(SourceLine line, int start, string place, FindingLog log)
    {
        start = SkipSpaces(line.Text, start);
        start = SkipProperties(line, start, place, log, out var faulty);
        var text = line.Text[start..];
        var position = new Position(line.Number, start + 1);
        if (text.Length == 0)
        {
            return default;
        }

        switch (text[0])
        {
            case '#':
                return new(null, false, text.TrimEnd());
            case '|' or '>':
                return ReadBlockMark(text, position, place, log);
            case '"' or '\'':
                return ReadQuoted(line, start, place, log, faulty);
            case '*':
                log.Fault(TextFaults.Anchor, place, position, ("mark", Word(text)));
                return new(new(text.Trim(), ScalarStyle.Plain, position, true), false, null);
            case '{' or '[' or '}' or ']':
                log.Fault(TextFaults.Brackets, place, position, ("mark", text[..1]));
                return new(new(text.Trim(), ScalarStyle.Plain, position, true), false, null);
        }

        var (words, remark) = SplitRemark(text);
        if (MayNotStart(words))
        {
            log.Fault(TextFaults.FirstMark, place, position, ("mark", words[..1]), ("words", words));
            faulty = true;
        }
        else if (ColonIn(words) is var colon and >= 0)
        {
            log.Fault(TextFaults.ColonInWords, place, position with { Column = position.Column + colon }, ("words", words));
            faulty = true;
        }

        return new(new(words, ScalarStyle.Plain, position, faulty || line.Faulty && words.Contains('\ufffd')), false, remark);
    }

    /// <summary>Whether words can stand without quotes and still be YAML.</summary>
    public static bool CanBePlain(string words) =>
        words.Length > 0 && words.Trim() == words && !MayNotStart(words) && !"\"'*&!|>{}[]#".Contains(words[0])
        && ColonIn(words) < 0 && !words.Contains(" #", StringComparison.Ordinal)
        && !words.StartsWith("---", StringComparison.Ordinal) && !words.StartsWith("...", StringComparison.Ordinal);

    /// <summary>A quoted text from its opening mark; End is the index behind the closing one, or -1 when there is none.</summary>
    public static (string Text, int End, int BadEscape) Unquote(string line, int start)
    {
        var quote = line[start];
        var text = new StringBuilder();
        var badEscape = -1;
        for (var i = start + 1; i < line.Length; i++)
        {
            var c = line[i];
            var next = i + 1 < line.Length ? line[i + 1] : '\0';
            if (c == '\\' && quote == '"')
            {
                badEscape = next is '"' or '\\' || badEscape >= 0 ? badEscape : i;
                text.Append(next);
                i++;
            }
            else if (c == quote && quote == '\'' && next == '\'')
            {
                text.Append(c);
                i++;
            }
            else if (c == quote)
            {
                return (text.ToString(), i + 1, badEscape);
            }
            else
            {
                text.Append(c);
            }
        }

        return (text.ToString(), -1, badEscape);
    }

    public static int SkipSpaces(string text, int start)
    {
        while (start < text.Length && text[start] == ' ')
        {
            start++;
        }

        return start;
    }

    /// <summary>Anchors and tags: told, then passed over, so that what stands behind them is still read.</summary>
    private static int SkipProperties(SourceLine line, int start, string place, FindingLog log, out bool faulty)
    {
        faulty = false;
        while (start < line.Text.Length && line.Text[start] is '&' or '!')
        {
            var mark = Word(line.Text[start..]);
            log.Fault(mark[0] == '&' ? TextFaults.Anchor : TextFaults.Tag, place, new(line.Number, start + 1), ("mark", mark));
            start = SkipSpaces(line.Text, start + mark.Length);
        }

        return start;
    }

    private static Rest ReadBlockMark(string text, Position position, string place, FindingLog log)
    {
        var (mark, remark) = SplitRemark(text);
        if (mark[0] == '>')
        {
            log.Fault(TextFaults.FoldedBlock, place, position, ("mark", mark));
        }
        else if (mark.Length > 1)
        {
            log.Fault(TextFaults.BlockMark, place, position, ("mark", mark));
        }

        return new(null, true, remark, mark.Length > 1 || mark[0] == '>');
    }

    private static Rest ReadQuoted(SourceLine line, int start, string place, FindingLog log, bool faulty)
    {
        var position = new Position(line.Number, start + 1);
        var (text, end, badEscape) = Unquote(line.Text, start);
        if (end < 0)
        {
            log.Fault(TextFaults.QuoteOpen, place, position, ("mark", line.Text[start].ToString()));
            return new(new(text, ScalarStyle.Quoted, position, true), false, null);
        }

        if (badEscape >= 0)
        {
            log.Fault(TextFaults.Escape, place, position with { Column = badEscape + 1 }, ("mark", line.Text.Substring(badEscape, 2)));
            faulty = true;
        }

        var behind = line.Text[end..].Trim();
        var isRemark = behind.StartsWith('#') && line.Text[end] == ' ';
        if (behind.Length > 0 && !isRemark)
        {
            log.Fault(TextFaults.AfterQuote, place, position with { Column = SkipSpaces(line.Text, end) + 1 }, ("words", behind));
            faulty = true;
        }

        var scalar = new TextScalar(text, ScalarStyle.Quoted, position, faulty || (line.Faulty && text.Contains('\ufffd')));
        return new(scalar, false, isRemark ? behind : null);
    }

    private static (string Words, string? Remark) SplitRemark(string text)
    {
        var hash = text.IndexOf(" #", StringComparison.Ordinal);
        return hash < 0 ? (text.TrimEnd(), null) : (text[..hash].TrimEnd(), text[(hash + 1)..].TrimEnd());
    }

    private static bool MayNotStart(string words) =>
        words[0] is ',' or '%' or '@' or '`' || (words[0] is '-' or '?' or ':' && (words.Length == 1 || words[1] == ' '));

    private static int ColonIn(string words)
    {
        var colon = words.IndexOf(": ", StringComparison.Ordinal);
        return colon >= 0 || !words.EndsWith(':') ? colon : words.Length - 1;
    }

    private static string Word(string text) => text.IndexOf(' ') is var space and >= 0 ? text[..space] : text;
}
