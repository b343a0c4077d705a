using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>A text cut into lines, its size and its characters looked at first.</summary>
internal sealed class SourceText
{
    private const char Replacement = '\ufffd';
    private const int LongestQuote = 160;

    private SourceText(string[] raw) => Raw = raw;

    private string[] Raw { get; }

    /// <summary>
    /// The lines to read, and the findings for what cannot stand in a line. A text that is too large gives no lines and one finding.
    /// </summary>
    public static (IReadOnlyList<SourceLine> Lines, FindingLog Log) Of(string text)
    {
        if (text.Length > TextCaps.Characters)
        {
            var refused = new FindingLog(new([]));
            refused.Fault(TextFaults.TextTooLarge, "", new(1, 1), ("characters", text.Length), ("most", TextCaps.Characters));
            return ([], refused);
        }

        // A byte order mark is how some editors begin a file; it is no part of the text.
        var raw = text.TrimStart('\ufeff') is var bare && text.Length - bare.Length <= 1 ? bare.Split('\n') : text.Split('\n');
        for (var i = 0; i < raw.Length; i++)
        {
            raw[i] = raw[i].EndsWith('\r') ? raw[i][..^1] : raw[i];
        }

        var source = new SourceText(raw);
        var log = new FindingLog(source);
        var lines = new SourceLine[raw.Length];
        var level = 0;
        for (var i = 0; i < raw.Length; i++)
        {
            lines[i] = source.Clean(raw[i], i + 1, level, log);
            if (!lines[i].IsBlank && !lines[i].IsComment)
            {
                level = lines[i].Indent + (lines[i].Text.TrimEnd() is [.., ':' or '|'] ? 2 : 0);
            }
        }

        return (lines, log);
    }

    /// <summary>The line as it stands, for a person to see: nothing in it can move a cursor or turn the writing round.</summary>
    public string? Quote(int line)
    {
        if (line < 1 || line > Raw.Length)
        {
            return null;
        }

        var raw = Raw[line - 1];
        var shown = raw.Length > LongestQuote ? raw[..LongestQuote] : raw;
        var quoted = string.Concat(shown.Select((c, i) => c == '\t' ? '\u2192' : Forbidden(shown, i) is null ? c : Replacement));
        return raw.Length > LongestQuote ? quoted + "\u2026" : quoted;
    }

    /// <param name="level">Where the line would stand if it went on from the one before: a tab in front of it says nothing about
    /// that.</param>
    private SourceLine Clean(string raw, int number, int level, FindingLog log)
    {
        var faulty = raw.Length > TextCaps.LineLength;
        if (faulty)
        {
            var cut = new Position(number, TextCaps.LineLength + 1);
            log.Fault(TextFaults.LineTooLong, "", cut, ("characters", raw.Length), ("most", TextCaps.LineLength));
            raw = raw[..TextCaps.LineLength];
        }

        char[]? cleaned = null;
        var told = new HashSet<string>();
        for (var i = 0; i < raw.Length; i++)
        {
            if (Forbidden(raw, i) is { } kind)
            {
                cleaned ??= raw.ToCharArray();
                cleaned[i] = kind == TextFaults.Tab ? ' ' : Replacement;
                if (told.Add(kind))
                {
                    log.Fault(kind, "", new(number, i + 1), ("code", FormattableString.Invariant($"U+{(int)raw[i]:X4}")));
                }
            }
        }

        var text = cleaned is null ? raw : new string(cleaned);
        var start = text.Length - text.TrimStart(' ').Length;
        return new(number, text, start, raw.AsSpan(0, start).Contains('\t') ? level : start, faulty || cleaned is not null);
    }

    /// <summary>The fault of a character that cannot stand in a text, or null.</summary>
    private static string? Forbidden(string text, int i) => text[i] switch
    {
        '\t' => TextFaults.Tab,
        >= ' ' and <= '~' => null,
        < ' ' or (>= '\u007f' and <= '\u009f') or '\ufffe' or '\uffff' or '\u2028' or '\u2029' => TextFaults.ControlCharacter,
        // Marks that turn the direction of writing can make a line read otherwise than it is.
        '\u061c' or '\u200e' or '\u200f' or (>= '\u202a' and <= '\u202e') or (>= '\u2066' and <= '\u2069') => TextFaults.DirectionMark,
        '\ufeff' => TextFaults.ControlCharacter,
        >= '\ud800' and <= '\udbff' => i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]) ? null : TextFaults.BrokenCharacter,
        >= '\udc00' and <= '\udfff' => i > 0 && char.IsHighSurrogate(text[i - 1]) ? null : TextFaults.BrokenCharacter,
        _ => null,
    };
}
