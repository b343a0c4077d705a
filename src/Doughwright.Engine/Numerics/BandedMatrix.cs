using System.Numerics;

namespace Doughwright.Engine.Numerics;

/// <summary>
/// A square matrix whose entries lie within a band about the diagonal, with a right-hand side. Solved by elimination without pivoting: the
/// diagonal must outweigh its row or column, as it does where something flows from cell to cell.
/// </summary>
/// <remarks>Rows are worked on entry by entry, each on its own, so the digits are the same at every width of the machine's registers.</remarks>
internal sealed class BandedMatrix(int rows, int reach)
{
    private readonly int width = (2 * reach) + 1;
    private readonly double[] entries = new double[rows * ((2 * reach) + 1)];

    /// <summary>The right-hand side; after <see cref="Solve"/> the solution.</summary>
    public double[] Right { get; } = new double[rows];

    /// <summary>Sets everything to nought.</summary>
    public void Clear()
    {
        Array.Clear(entries);
        Array.Clear(Right);
    }

    /// <summary>Adds to an entry. Row and column lie within the reach of each other.</summary>
    public void Add(int row, int column, double value) => entries[(row * width) + reach + column - row] += value;

    /// <summary>Puts the solution in the place of the right-hand side. The matrix is used up.</summary>
    public void Solve()
    {
        for (var pivot = 0; pivot < rows; pivot++)
        {
            var at = (pivot * width) + reach;
            var last = Math.Min(rows - 1, pivot + reach);
            for (var row = pivot + 1; row <= last; row++)
            {
                var below = (row * width) + reach + pivot - row;
                if (entries[below] is 0)
                {
                    continue;
                }

                var factor = entries[below] / entries[at];
                Subtract(entries.AsSpan(below + 1, last - pivot), entries.AsSpan(at + 1, last - pivot), factor);
                Right[row] -= factor * Right[pivot];
            }
        }

        for (var row = rows - 1; row >= 0; row--)
        {
            var at = (row * width) + reach;
            var sum = Right[row];
            for (var ahead = Math.Min(rows - 1 - row, reach); ahead > 0; ahead--)
            {
                sum -= entries[at + ahead] * Right[row + ahead];
            }

            Right[row] = sum / entries[at];
        }
    }

    private static void Subtract(Span<double> from, ReadOnlySpan<double> what, double factor)
    {
        var factors = new Vector<double>(factor);
        var entry = 0;
        for (; entry <= from.Length - Vector<double>.Count; entry += Vector<double>.Count)
        {
            (new Vector<double>(from[entry..]) - (factors * new Vector<double>(what[entry..]))).CopyTo(from[entry..]);
        }

        for (; entry < from.Length; entry++)
        {
            from[entry] -= factor * what[entry];
        }
    }
}
