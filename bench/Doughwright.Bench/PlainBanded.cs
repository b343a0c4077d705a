namespace Doughwright.Bench;

/// <summary>As many banded systems as a bake over a section solves, of the same size, by the textbook: no registers wider than one number.</summary>
internal static class PlainBanded
{
    public const int Solutions = 150;
    private const int Rows = 1008;
    private const int Reach = 37;

    public static void Solve()
    {
        var (entries, right) = (new double[Rows, (2 * Reach) + 1], new double[Rows]);
        for (var solution = 0; solution < Solutions; solution++)
        {
            Fill(entries, right, solution);
            Eliminate(entries, right);
        }
    }

    private static void Fill(double[,] entries, double[] right, int solution)
    {
        for (var row = 0; row < Rows; row++)
        {
            right[row] = row % 7;
            for (var at = 0; at <= 2 * Reach; at++)
            {
                entries[row, at] = at == Reach ? 100 + (solution % 3) : -1.0 / (1 + Math.Abs(at - Reach));
            }
        }
    }

    private static void Eliminate(double[,] entries, double[] right)
    {
        for (var pivot = 0; pivot < Rows; pivot++)
        {
            for (var row = pivot + 1; row <= Math.Min(Rows - 1, pivot + Reach); row++)
            {
                var factor = entries[row, Reach + pivot - row] / entries[pivot, Reach];
                for (var column = pivot; column <= Math.Min(Rows - 1, pivot + Reach); column++)
                {
                    entries[row, Reach + column - row] -= factor * entries[pivot, Reach + column - pivot];
                }

                right[row] -= factor * right[pivot];
            }
        }

        for (var row = Rows - 1; row >= 0; row--)
        {
            for (var column = row + 1; column <= Math.Min(Rows - 1, row + Reach); column++)
            {
                right[row] -= entries[row, Reach + column - row] * right[column];
            }

            right[row] /= entries[row, Reach];
        }
    }
}
