using System.Text;

namespace Doughwright.Book.Exchange;

/// <summary>
/// Tables as text (RFC 4180). A cell that a spreadsheet would take for a formula gets an apostrophe in front, and so does one that begins with an apostrophe: to
/// take one away always gives back what was there.
/// </summary>
internal static class Csv
{
    private const char Guard = '\'';
    private const string Formula = "=+-@\t\r\n";

    public static string Line(params IEnumerable<string?> cells) => string.Join(',', cells.Select(cell => Cell(cell ?? ""))) + "\n";

    /// <summary>Rows with the number of the line each begins in. One that cannot be read is told and left out.</summary>
    public static IEnumerable<(int Line, string[] Cells)> Read(string file, string text, ExchangeFaults faults)
    {
        var (at, line) = (0, 1);
        while (at < text.Length)
        {
            var begins = line;
            List<string> cells = [];
            var isSound = true;
            while (true)
            {
                isSound &= ReadCell(text, ref at, ref line, out var cell);
                cells.Add(cell);
                if (at >= text.Length || text[at] != ',')
                {
                    break;
                }

                at++;
            }

            isSound &= at < text.Length && text[at] == '\n';
            if (isSound)
            {
                (at, line) = (at + 1, line + 1);
                yield return (begins, [.. cells]);
                continue;
            }

            faults.Add("import-line-shape", ("file", file), ("line", begins));
            var end = at < text.Length ? text.IndexOf('\n', at) : -1;
            (at, line) = end < 0 ? (text.Length, line) : (end + 1, line + 1);
        }
    }

    private static string Cell(string cell)
    {
        var guarded = cell.Length > 0 && (cell[0] == Guard || Formula.Contains(cell[0], StringComparison.Ordinal)) ? Guard + cell : cell;
        return guarded.AsSpan().ContainsAny(",\"\r\n") ? $"\"{guarded.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : guarded;
    }

    private static bool ReadCell(string text, ref int at, ref int line, out string cell)
    {
        if (at >= text.Length || text[at] != '"')
        {
            var end = text.AsSpan(at).IndexOfAny(',', '\n');
            end = end < 0 ? text.Length : at + end;
            cell = Bare(text[at..end]);
            at = end;
            return !cell.AsSpan().ContainsAny('"', '\r');
        }

        var read = new StringBuilder();
        for (at++; at < text.Length; at++)
        {
            if (text[at] == '"')
            {
                if (at + 1 >= text.Length || text[at + 1] != '"')
                {
                    at++;
                    cell = Bare(read.ToString());
                    return true;
                }

                at++;
            }

            line += text[at] == '\n' ? 1 : 0;
            read.Append(text[at]);
        }

        cell = "";
        return false;
    }

    private static string Bare(string cell) => cell.StartsWith(Guard) ? cell[1..] : cell;
}
