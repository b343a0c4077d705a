using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pictures.Balance;

/// <summary>
/// A table of numbers rounded so that what is printed adds up along rows and along columns. Every number is cut off to its tenth; the tenths that are
/// then missing from rows and columns go to the cells that were cut, the largest remainders first, by exchange where the nearest are taken.
/// </summary>
internal sealed class RoundedTable
{
    private const double Tenths = 10;

    /// <summary>Less than this of a tenth is noise of the sums before.</summary>
    private const double Noise = 1e-6;

    private readonly long[][] cells;
    private readonly double[][] remainders;
    private readonly bool[][] raised;
    private readonly int columns;

    private RoundedTable(IReadOnlyList<IReadOnlyList<double>> values)
    {
        columns = values.Count == 0 ? 0 : values[0].Count;
        cells = [.. values.Select(row => row.Select(value => (long)Math.Floor(Math.Round(value * Tenths, 6))).ToArray())];
        remainders = [.. values.Select((row, i) => row.Select((value, j) => Math.Round(value * Tenths, 6) - cells[i][j]).ToArray())];
        raised = [.. values.Select(row => new bool[row.Count])];
        var missingInRows = Missing(values.Select(row => row.Sum()), cells.Select(row => row.Sum()));
        var missingInColumns = Missing(
            Enumerable.Range(0, columns).Select(column => values.Sum(row => row[column])),
            Enumerable.Range(0, columns).Select(column => cells.Sum(row => row[column])));
        for (var row = 0; row < cells.Length; row++)
        {
            for (var unit = 0; unit < missingInRows[row]; unit++)
            {
                if (!Raise(row, missingInColumns, new bool[cells.Length]))
                {
                    RaiseAnyhow(row);
                }
            }
        }
    }

    /// <summary>Rounds to tenths. No value is negative.</summary>
    public static RoundedTable Of(IReadOnlyList<IReadOnlyList<double>> values) => new(values);

    public double Cell(int row, int column) => Units(row, column) / Tenths;

    public double RowTotal(int row) => Enumerable.Range(0, columns).Sum(column => Units(row, column)) / Tenths;

    public double ColumnTotal(int column) => Enumerable.Range(0, cells.Length).Sum(row => Units(row, column)) / Tenths;

    public double Total => Enumerable.Range(0, columns).Sum(column => Enumerable.Range(0, cells.Length).Sum(row => Units(row, column))) / Tenths;

    private long Units(int row, int column) => cells[row][column] + (raised[row][column] ? 1 : 0);

    /// <summary>Tenths between the rounded sums, which share one total, and the sums of what was cut off.</summary>
    private static long[] Missing(IEnumerable<double> sums, IEnumerable<long> cut) =>
        [.. Show.ShareOut([.. sums], 1).Zip(cut, (sum, units) => (long)Math.Round(sum * Tenths) - units)];

    /// <summary>Finds a cell of the row to raise whose column wants it, or moves another row's unit out of the way.</summary>
    private bool Raise(int row, long[] wanted, bool[] visited)
    {
        visited[row] = true;
        var open = Enumerable.Range(0, columns).Where(column => !raised[row][column] && remainders[row][column] > Noise).OrderByDescending(column => remainders[row][column]).ToList();
        foreach (var column in open.Where(column => wanted[column] > 0))
        {
            raised[row][column] = true;
            wanted[column]--;
            return true;
        }

        foreach (var column in open)
        {
            for (var other = 0; other < cells.Length; other++)
            {
                if (raised[other][column] && !visited[other])
                {
                    raised[other][column] = false;
                    if (Raise(other, wanted, visited))
                    {
                        raised[row][column] = true;
                        return true;
                    }

                    raised[other][column] = true;
                }
            }
        }

        return false;
    }

    /// <summary>Where rows and columns cannot both have theirs, the row has it, and the column is printed as the sum it shows.</summary>
    private void RaiseAnyhow(int row)
    {
        var column = Enumerable.Range(0, columns).Where(column => !raised[row][column]).MaxBy(column => remainders[row][column]);
        raised[row][column] = true;
    }
}
