using System.Globalization;

namespace Doughwright.Book.Exchange;

/// <summary>A table of an export, cell by cell. What is not understood is told, with its line, and the row left out.</summary>
internal sealed class Rows(Unpacked files, ExchangeFaults faults)
{
    public IEnumerable<Row> Of(string file, int width)
    {
        if (files.Text(file) is not { } text)
        {
            yield break;
        }

        foreach (var (line, cells) in Csv.Read(file, text, faults).Skip(1))
        {
            if (cells.Length == width)
            {
                yield return new(file, line, cells, faults);
            }
            else
            {
                faults.Add("import-line-shape", ("file", file), ("line", line));
            }
        }
    }
}

internal sealed class Row(string file, int line, string[] cells, ExchangeFaults faults)
{
    /// <summary>That it begins in.</summary>
    public int Line => line;

    public string this[int cell] => cells[cell];

    public string? OrNull(int cell) => cells[cell].Length == 0 ? null : cells[cell];

    /// <summary>A number from 1; null with a fault when it is none.</summary>
    public int? Number(int cell)
    {
        if (int.TryParse(cells[cell], NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0)
        {
            return number;
        }

        Wrong(cells[cell]);
        return null;
    }

    public bool? YesNo(int cell)
    {
        if (cells[cell] is "yes" or "no")
        {
            return cells[cell] == "yes";
        }

        Wrong(cells[cell]);
        return null;
    }

    public void Wrong(string value) => faults.Add("import-line-value", ("file", file), ("line", line), ("value", value));
}
