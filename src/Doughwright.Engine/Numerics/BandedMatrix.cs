using System.Numerics;
using System.Runtime.InteropServices;

namespace Doughwright.Engine.Numerics;

/// <summary>
/// A square matrix whose entries lie within a band about the diagonal, with a right-hand side. Solved by elimination without pivoting: the
/// diagonal must outweigh its row or column, as it does where something flows from cell to cell.
/// </summary>
/// <remarks>
/// Rows are worked on entry by entry, each on its own and by one pivot after the other, so the digits are the same at every width of the
/// machine's registers. Four pivots pass over a row in one go, which is what keeps it quick.
/// </remarks>
internal sealed class BandedMatrix
{
    /// <summary>Pivots that pass over a row at once.</summary>
    private const int Block = 4;

    /// <summary>Zeros behind each row: as far as a block of pivots and a register reach beyond the band.</summary>
    private static readonly int Margin = Block - 1 + Vector<double>.Count;

    private readonly int rows;
    private readonly int reach;
    private readonly int stride;
    private readonly double[] entries;

    /// <param name="rows">Above 0.</param>
    /// <param name="reach">Columns on either side of the diagonal; at least the pivots of a block.</param>
    public BandedMatrix(int rows, int reach)
    {
        (this.rows, this.reach, stride) = (rows, reach, (2 * reach) + 1 + Margin);
        entries = new double[rows * stride];
        Right = new double[rows];
    }

    /// <summary>The right-hand side; after <see cref="Solve"/> the solution.</summary>
    public double[] Right { get; }

    /// <summary>Sets everything to nought.</summary>
    public void Clear()
    {
        Array.Clear(entries);
        Array.Clear(Right);
    }

    /// <summary>Adds to an entry. Row and column lie within the reach of each other.</summary>
    public void Add(int row, int column, double value) => entries[At(row, column)] += value;

    /// <summary>Puts the solution in the place of the right-hand side. The matrix is used up.</summary>
    public void Solve()
    {
        for (var first = 0; first < rows; first += Block)
        {
            var end = Math.Min(first + Block, rows);
            for (var pivot = first; pivot < end; pivot++)
            {
                for (var row = pivot + 1; row < end; row++)
                {
                    Take(row, pivot);
                }
            }

            var last = Math.Min(rows - 1, end - 1 + reach);
            if (end <= last)
            {
                TakeBlock(first, last);
            }
        }

        for (var row = rows - 1; row >= 0; row--)
        {
            var at = At(row, row);
            var sum = Right[row];
            for (var ahead = Math.Min(rows - 1 - row, reach); ahead > 0; ahead--)
            {
                sum -= entries[at + ahead] * Right[row + ahead];
            }

            Right[row] = sum / entries[at];
        }
    }

    private int At(int row, int column) => (row * stride) + reach + column - row;

    /// <summary>Takes one pivot out of a row that it reaches.</summary>
    private void Take(int row, int pivot)
    {
        var factor = entries[At(row, pivot)] / entries[At(pivot, pivot)];
        for (var column = pivot + 1; column <= pivot + reach; column++)
        {
            entries[At(row, column)] -= factor * entries[At(pivot, column)];
        }

        Right[row] -= factor * Right[pivot];
    }

    /// <summary>Takes a whole block of pivots out of the rows below it.</summary>
    private void TakeBlock(int first, int last)
    {
        var (a, b, c, d) = (At(first, first), At(first + 1, first), At(first + 2, first), At(first + 3, first));
        var (perA, perB, perC, perD) = (1 / entries[a], 1 / entries[b + 1], 1 / entries[c + 2], 1 / entries[d + 3]);
        var (ab, ac, ad, bc, bd, cd) = (entries[a + 1], entries[a + 2], entries[a + 3], entries[b + 2], entries[b + 3], entries[c + 3]);
        for (var row = first + Block; row <= last; row++)
        {
            // A pivot that does not reach the row takes nothing out of it.
            var (at, above) = (At(row, first), row - reach - first);
            var one = above > 0 ? 0 : entries[at] * perA;
            var two = above > 1 ? 0 : (entries[at + 1] - (one * ab)) * perB;
            var three = above > 2 ? 0 : (entries[at + 2] - (one * ac) - (two * bc)) * perC;
            var four = (entries[at + 3] - (one * ad) - (two * bd) - (three * cd)) * perD;
            Right[row] = Right[row] - (one * Right[first]) - (two * Right[first + 1]) - (three * Right[first + 2]) - (four * Right[first + 3]);
            Subtract(at + Block, (a + Block, b + Block, c + Block, d + Block), (one, two, three, four));
        }
    }

    /// <summary>From the columns behind a block. Beyond the reach of a pivot stand zeros, which change nothing.</summary>
    private void Subtract(int at, (int A, int B, int C, int D) pivots, (double One, double Two, double Three, double Four) factors)
    {
        ref var start = ref MemoryMarshal.GetArrayDataReference(entries);
        var (one, two, three, four) = (new Vector<double>(factors.One), new Vector<double>(factors.Two), new Vector<double>(factors.Three), new Vector<double>(factors.Four));
        var (to, a, b, c, d) = ((nuint)at, (nuint)pivots.A, (nuint)pivots.B, (nuint)pivots.C, (nuint)pivots.D);
        for (var done = 0; done < reach; done += Vector<double>.Count)
        {
            var ahead = (nuint)done;
            var left = Vector.LoadUnsafe(ref start, to + ahead);
            left -= one * Vector.LoadUnsafe(ref start, a + ahead);
            left -= two * Vector.LoadUnsafe(ref start, b + ahead);
            left -= three * Vector.LoadUnsafe(ref start, c + ahead);
            left -= four * Vector.LoadUnsafe(ref start, d + ahead);
            left.StoreUnsafe(ref start, to + ahead);
        }
    }
}
