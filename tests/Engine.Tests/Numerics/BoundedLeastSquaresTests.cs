using CsCheck;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Numerics;

public class BoundedLeastSquaresTests
{
    private const double Pull = 1e-12;

    /// <summary>The example of the function lsqnonneg, mathworks.com/help/matlab/ref/lsqnonneg.html: four equations in two unknowns.</summary>
    private static readonly double[][] Columns = [[0.0372, 0.6861, 0.6233, 0.6344], [0.2869, 0.7071, 0.6245, 0.6170]];

    private static readonly double[] Target = [0.8587, 0.1781, 0.0747, 0.8405];

    /// <summary>Published: x = 0 and 0.6929, norm of the residual 0.9118.</summary>
    [Fact]
    public void NonNegative_IsThePublishedAnswer()
    {
        var x = Solve(Columns, Target, [0, 0], [1e9, 1e9]);
        Assert.Equal(0, x[0]);
        Assert.Equal(0.6929, x[1], 5e-5);
        Assert.Equal(0.9118, Norm(Columns, Target, x), 5e-5);
    }

    /// <summary>Published: x = -2.5627 and 3.1108, norm of the residual 0.6674.</summary>
    [Fact]
    public void Unbounded_IsThePublishedAnswer()
    {
        var x = Solve(Columns, Target, [-1e9, -1e9], [1e9, 1e9]);
        Assert.Equal(-2.5627, x[0], 5e-5);
        Assert.Equal(3.1108, x[1], 5e-5);
        Assert.Equal(0.6674, Norm(Columns, Target, x), 5e-5);
    }

    /// <summary>With orthogonal columns every unknown stands alone: its own answer, cut at its own bounds.</summary>
    [Fact]
    public void OrthogonalColumns_AreCutAtTheirBounds() =>
        Assert.Equal([1, 0.5, -2], Solve([[2, 0, 0], [0, 1, 0], [0, 0, 4]], [10, 0.5, -80], [-1, 0, -2], [1, 2, 3]).Select(value => Math.Round(value, 9)));

    /// <summary>Two columns that are the same: the pull shares out between them, the nearer to the start the better.</summary>
    [Fact]
    public void AmongEquallyGoodAnswers_TheNearestToTheStartIsTaken()
    {
        var x = BoundedLeastSquares.Solve([[1.0], [1.0]], [10], [0, 0], [100, 100], [4, 2], 1e-8);
        Assert.Equal(6, x[0], 1e-6);
        Assert.Equal(4, x[1], 1e-6);
    }

    /// <summary>
    /// The conditions of Karush, Kuhn and Tucker, which only the minimum of a convex sum meets: no slope inside the bounds, and at a bound none that
    /// leads inwards.
    /// </summary>
    [Fact]
    public void EveryAnswer_IsTheMinimum() => Problem.Sample(problem =>
    {
        var (columns, target, low, high) = problem;
        var x = BoundedLeastSquares.Solve(columns, target, low, high, [.. low.Zip(high, (a, b) => (a + b) / 2)], 1e-9);
        for (var i = 0; i < x.Length; i++)
        {
            Assert.InRange(x[i], low[i], high[i]);
            var slope = columns[i].Select((value, row) => value * (columns.Select((column, j) => column[row] * x[j]).Sum() - target[row])).Sum();
            var slack = 1e-6 * (1 + target.Max(Math.Abs));
            Assert.True(x[i] >= high[i] || slope >= -slack, $"unknown {i} could be larger");
            Assert.True(x[i] <= low[i] || slope <= slack, $"unknown {i} could be smaller");
        }
    });

    private static readonly Gen<(double[][] Columns, double[] Target, double[] Low, double[] High)> Problem =
        Gen.Int[1, 6].SelectMany(count => Gen.Select(
            Gen.Double[-1, 1].Array[4].Array[count],
            Gen.Double[-50, 50].Array[4],
            Gen.Double[-20, 10].Array[count],
            Gen.Double[0.1, 40].Array[count]))
        .Select((columns, target, low, width) => (columns, target, low, low.Zip(width, (a, b) => a + b).ToArray()));

    private static double[] Solve(double[][] columns, double[] target, double[] low, double[] high) =>
        BoundedLeastSquares.Solve(columns, target, low, high, [.. low.Select(bound => Math.Max(bound, 0))], Pull);

    private static double Norm(double[][] columns, double[] target, double[] x) =>
        Math.Sqrt(target.Select((value, row) => columns.Select((column, j) => column[row] * x[j]).Sum() - value).Sum(value => value * value));
}
