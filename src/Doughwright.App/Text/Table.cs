namespace Doughwright.App.Text;

/// <summary>Where the words of a column stand.</summary>
internal enum Align
{
    Left,
    Right,
}

/// <summary>
/// Columns that line up. Figures stand right, words left; the last rows may carry notes under them. A column of words that would push the table past
/// the edge is wrapped.
/// </summary>
internal sealed class Table(params Table.Column[] columns)
{
    private const int Between = 2;
    private const int NarrowestWords = 12;

    private readonly List<Row> rows = [];

    internal sealed record Column(string Head, Align Align, string SubHead = "");

    private sealed record Row(string[] Cells, List<string> Notes, bool Ruled);

    public bool IsEmpty => rows.Count == 0;

    public void Add(params string[] cells) => rows.Add(new(cells, [], false));

    /// <summary>A row under a rule: the sum of those above.</summary>
    public void AddTotal(params string[] cells) => rows.Add(new(cells, [], true));

    /// <summary>Words under the row just added, from its first column of words on.</summary>
    public void Note(string words) => rows[^1].Notes.Add(words);

    public void WriteTo(Page page, int indent = 2)
    {
        var widths = Widths(indent);
        Write(page, indent, widths, [.. columns.Select(column => column.Head)]);
        if (columns.Any(column => column.SubHead.Length > 0))
        {
            Write(page, indent, widths, [.. columns.Select(column => column.SubHead)]);
        }

        var words = Array.FindIndex(columns, column => column.Align == Align.Left);
        var noteIndent = indent + widths.Take(words).Sum(width => width + Between) + 2;
        foreach (var row in rows)
        {
            if (row.Ruled)
            {
                Write(page, indent, widths, [.. widths.Select((width, i) => row.Cells[i].Length == 0 ? "" : new string('─', width))]);
            }

            Write(page, indent, widths, row.Cells);
            foreach (var note in row.Notes)
            {
                page.Paragraph(note, noteIndent, 2);
            }
        }
    }

    /// <summary>The natural widths, with the widest column of words cut back until all fit.</summary>
    private int[] Widths(int indent)
    {
        var widths = new int[columns.Length];
        for (var i = 0; i < columns.Length; i++)
        {
            widths[i] = Math.Max(Page.WidthOf(columns[i].Head), Page.WidthOf(columns[i].SubHead));
            foreach (var row in rows)
            {
                widths[i] = Math.Max(widths[i], Page.WidthOf(row.Cells[i]));
            }
        }

        var over = indent + widths.Sum() + (Between * (columns.Length - 1)) - Page.Width;
        while (over > 0)
        {
            var widest = Enumerable.Range(0, columns.Length).Where(i => columns[i].Align == Align.Left).MaxBy(i => widths[i]);
            if (widths[widest] <= NarrowestWords)
            {
                break;
            }

            var cut = Math.Min(over, widths[widest] - NarrowestWords);
            widths[widest] -= cut;
            over -= cut;
        }

        return widths;
    }

    private void Write(Page page, int indent, int[] widths, string[] cells)
    {
        var wrapped = cells.Select((cell, i) => Page.Wrap(cell, widths[i]).ToArray()).ToArray();
        for (var line = 0; line < wrapped.Max(cell => cell.Length); line++)
        {
            page.Line(new string(' ', indent) + string.Join(new string(' ', Between), wrapped.Select((cell, i) =>
            {
                var piece = line < cell.Length ? cell[line] : "";
                var padding = new string(' ', Math.Max(0, widths[i] - Page.WidthOf(piece)));
                return columns[i].Align == Align.Right ? padding + piece : piece + padding;
            })));
        }
    }
}
