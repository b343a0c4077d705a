using System.Globalization;

namespace Doughwright.Engine.Ingredients;

/// <summary>
/// A table in a text file of our own: lines that begin with # are remarks, the first other line names the columns, one tab between cells.
/// Blank cells at the end of a line may be left out. A fault in such a file is a fault of ours and throws.
/// </summary>
internal sealed class Tsv
{
    private readonly Dictionary<string, int> columns;
    private readonly List<string[]> rows = [];

    private Tsv(string[] header)
    {
        columns = header.Select((name, index) => (name, index)).ToDictionary(pair => pair.name, pair => pair.index);
    }

    public IEnumerable<Row> Rows => rows.Select(cells => new Row(this, cells));

    public static Tsv Read(string text)
    {
        Tsv? table = null;
        foreach (var line in text.Split('\n').Select(line => line.TrimEnd('\r')).Where(line => line.Length > 0 && line[0] != '#'))
        {
            var cells = line.Split('\t');
            if (table is null)
            {
                table = new(cells);
            }
            else if (cells.Length > table.columns.Count)
            {
                throw new FormatException($"More cells than columns: {line}");
            }
            else
            {
                table.rows.Add(cells);
            }
        }

        return table ?? throw new FormatException("A table needs a line that names its columns.");
    }

    /// <summary>The text of a table that is part of the engine.</summary>
    public static string Embedded(string name)
    {
        using var stream = typeof(Tsv).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The table {name} is missing from the engine.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    internal readonly struct Row(Tsv table, string[] cells)
    {
        /// <summary>The cell; empty when it is blank.</summary>
        public string this[string column]
        {
            get
            {
                var index = table.columns[column];
                return index < cells.Length ? cells[index] : "";
            }
        }

        /// <summary>The cell; empty when it is blank or the table has no such column.</summary>
        public string Optional(string column) => table.columns.ContainsKey(column) ? this[column] : "";

        public string? TextOrNull(string column) => this[column] is { Length: > 0 } text ? text : null;

        public double? NumberOrNull(string column) =>
            TextOrNull(column) is { } text ? double.Parse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture) : null;

        public string[] List(string column, char separator) =>
            this[column].Split(separator, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }
}
