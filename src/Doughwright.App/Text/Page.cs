using System.Globalization;
using System.Text;

namespace Doughwright.App.Text;

/// <summary>Collects lines for a terminal: wraps at <see cref="Width"/>, never breaks at a no-break space, lets no control character through.</summary>
internal sealed class Page
{
    public const int Width = 100;

    private readonly StringBuilder text = new();
    private bool blank = true;

    public override string ToString() => text.ToString();

    /// <summary>One line as it is. Only for what was laid out to fit.</summary>
    public void Line(string line)
    {
        text.Append(Clean(line).TrimEnd(' ')).Append('\n');
        blank = false;
    }

    /// <summary>An empty line between two blocks; never two, and none at the top.</summary>
    public void Gap()
    {
        if (!blank)
        {
            text.Append('\n');
            blank = true;
        }
    }

    public void Heading(string words)
    {
        Gap();
        Paragraph(words);
    }

    /// <summary>Wrapped words.</summary>
    /// <param name="indent">Spaces before every line.</param>
    /// <param name="hang">More spaces before all lines but the first.</param>
    public void Paragraph(string words, int indent = 0, int hang = 0)
    {
        foreach (var line in Wrap(Clean(words), Width - indent, hang))
        {
            Line(new string(' ', indent) + line);
        }
    }

    /// <summary>Breaks words at spaces. A word longer than a line is cut, so that nothing runs past the edge.</summary>
    public static IEnumerable<string> Wrap(string words, int width, int hang = 0)
    {
        var line = new StringBuilder();
        var used = 0;
        var empty = true;
        foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            foreach (var piece in Pieces(word, width - hang))
            {
                var length = WidthOf(piece);
                if (!empty && used + 1 + length > width)
                {
                    yield return line.ToString();
                    line.Clear().Append(' ', hang);
                    used = hang;
                    empty = true;
                }

                if (!empty)
                {
                    line.Append(' ');
                    used++;
                }

                line.Append(piece);
                used += length;
                empty = false;
            }
        }

        yield return line.ToString();
    }

    /// <summary>Columns that a text takes on a terminal.</summary>
    public static int WidthOf(string text)
    {
        var width = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            width += WidthOf(rune);
        }

        return width;
    }

    private static int WidthOf(Rune rune) => rune.Value < 0x300
        ? 1
        : Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format
            ? 0
            : IsWide(rune.Value) ? 2 : 1;

    /// <summary>Letters and signs of East Asia, and pictures, take two columns.</summary>
    private static bool IsWide(int code) => code is (>= 0x1100 and <= 0x115f) or (>= 0x2e80 and <= 0xa4cf) or (>= 0xac00 and <= 0xd7a3)
        or (>= 0xf900 and <= 0xfaff) or (>= 0xfe30 and <= 0xfe6f) or (>= 0xff00 and <= 0xff60) or (>= 0xffe0 and <= 0xffe6)
        or (>= 0x1f300 and <= 0x1faff) or (>= 0x20000 and <= 0x3fffd);

    private static IEnumerable<string> Pieces(string word, int width)
    {
        if (WidthOf(word) <= width)
        {
            yield return word;
            yield break;
        }

        var piece = new StringBuilder();
        var used = 0;
        foreach (var rune in word.EnumerateRunes())
        {
            if (used + WidthOf(rune) > width)
            {
                yield return piece.ToString();
                piece.Clear();
                used = 0;
            }

            piece.Append(rune.ToString());
            used += WidthOf(rune);
        }

        yield return piece.ToString();
    }

    /// <summary>What a name or a file brings along must not steer the terminal.</summary>
    internal static string Clean(string text)
    {
        if (!text.Any(Steers))
        {
            return text;
        }

        return string.Concat(text.Select(letter => letter is '\t' or '\n' or '\r' ? ' ' : Steers(letter) ? '\ufffd' : letter));
    }

    private static bool Steers(char letter) => char.IsControl(letter)
        || letter is '\u061c' or '\u200e' or '\u200f' or (>= '\u2028' and <= '\u202e') or (>= '\u2066' and <= '\u2069');
}
