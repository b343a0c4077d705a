namespace Doughwright.Engine.Numerics;

/// <summary>
/// Least squares with a lower and an upper bound for every unknown, for the few unknowns of a recipe. Minimises
/// |A x - b|² + pull |x - start|² over low ≤ x ≤ high. The pull makes the answer unique: among equally good ones the nearest to the start.
/// </summary>
/// <remarks>Active set: unknowns at a bound are held, the others are solved for; one that runs into a bound is held, one that a bound keeps
/// from a better answer is let go. The sum falls with every turn, so no set comes twice. Source: bounded-least-squares.</remarks>
internal static class BoundedLeastSquares
{
    private const double Slack = 1e-10;

    /// <param name="columns">The columns of A, all as long as <paramref name="target"/>.</param>
    /// <param name="low">Lower bounds, none above its upper one.</param>
    /// <param name="pull">Above zero, small against the squares of the columns.</param>
    public static double[] Solve(
        IReadOnlyList<double[]> columns, double[] target, double[] low, double[] high, double[] start, double pull)
    {
        var count = columns.Count;
        var normal = new double[count, count];
        var right = new double[count];
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < count; j++)
            {
                normal[i, j] = Dot(columns[i], columns[j]) + (i == j ? pull : 0);
            }

            right[i] = Dot(columns[i], target) + (pull * start[i]);
        }

        var x = start.Select((value, i) => Math.Clamp(value, low[i], high[i])).ToArray();
        var held = x.Select((value, i) => value <= low[i] || value >= high[i]).ToArray();
        for (var turn = 0; turn <= 100 * (count + 1); turn++)
        {
            if (StepWithin(normal, right, x, held, low, high) && !LetOneGo(normal, right, x, held, low, high))
            {
                return x;
            }
        }

        throw new InvalidOperationException("The bounded least squares did not settle.");
    }

    /// <summary>Goes to the best point of the free unknowns, or to the first bound on the way, which is then held.</summary>
    /// <returns>Whether no bound was in the way.</returns>
    private static bool StepWithin(double[,] normal, double[] right, double[] x, bool[] held, double[] low, double[] high)
    {
        var free = Enumerable.Range(0, x.Length).Where(i => !held[i]).ToArray();
        var best = Cholesky(normal, right, x, held, free);
        var share = 1.0;
        var blocking = -1;
        for (var k = 0; k < free.Length; k++)
        {
            var i = free[k];
            var bound = best[k] < low[i] ? low[i] : best[k] > high[i] ? high[i] : double.NaN;
            if (!double.IsNaN(bound) && (bound - x[i]) / (best[k] - x[i]) is var way && way < share)
            {
                (share, blocking) = (way, i);
            }
        }

        for (var k = 0; k < free.Length; k++)
        {
            var i = free[k];
            x[i] = i == blocking ? (best[k] < low[i] ? low[i] : high[i]) : Math.Clamp(x[i] + (share * (best[k] - x[i])), low[i], high[i]);
        }

        if (blocking >= 0)
        {
            held[blocking] = true;
        }

        return blocking < 0;
    }

    /// <summary>Frees the held unknown whose bound costs most; false when no bound costs anything.</summary>
    private static bool LetOneGo(double[,] normal, double[] right, double[] x, bool[] held, double[] low, double[] high)
    {
        var (worst, most) = (-1, 0.0);
        for (var i = 0; i < x.Length; i++)
        {
            if (!held[i] || low[i] >= high[i])
            {
                continue;
            }

            var uphill = Slope(normal, right, x, i);
            var gain = x[i] <= low[i] ? -uphill : uphill;
            if (gain > most + (Slack * (1 + Math.Abs(right[i]))))
            {
                (worst, most) = (i, gain);
            }
        }

        if (worst < 0)
        {
            return false;
        }

        held[worst] = false;
        return true;
    }

    private static double Slope(double[,] normal, double[] right, double[] x, int i)
    {
        var slope = -right[i];
        for (var j = 0; j < x.Length; j++)
        {
            slope += normal[i, j] * x[j];
        }

        return slope;
    }

    /// <summary>The best values of the free unknowns while the others stay.</summary>
    private static double[] Cholesky(double[,] normal, double[] right, double[] x, bool[] held, int[] free)
    {
        var size = free.Length;
        var lower = new double[size, size];
        var solution = new double[size];
        for (var r = 0; r < size; r++)
        {
            var value = right[free[r]];
            for (var j = 0; j < x.Length; j++)
            {
                value -= held[j] ? normal[free[r], j] * x[j] : 0;
            }

            for (var c = 0; c <= r; c++)
            {
                var sum = normal[free[r], free[c]];
                for (var k = 0; k < c; k++)
                {
                    sum -= lower[r, k] * lower[c, k];
                }

                lower[r, c] = r == c ? Math.Sqrt(sum) : sum / lower[c, c];
            }

            for (var k = 0; k < r; k++)
            {
                value -= lower[r, k] * solution[k];
            }

            solution[r] = value / lower[r, r];
        }

        for (var r = size - 1; r >= 0; r--)
        {
            for (var k = r + 1; k < size; k++)
            {
                solution[r] -= lower[k, r] * solution[k];
            }

            solution[r] /= lower[r, r];
        }

        return solution;
    }

    private static double Dot(double[] a, double[] b) => a.Zip(b).Sum(pair => pair.First * pair.Second);
}
