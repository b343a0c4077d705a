using CsCheck;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Numerics;

public class TridiagonalTests
{
    private static readonly Gen<double> Coupling = Gen.Double[-1, 1];

    /// <summary>Steady conduction between 0 and 1: the straight line, in any number of cells.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(20)]
    [InlineData(101)]
    public void Solve_SteadySlab_IsAStraightLine(int count)
    {
        var off = Enumerable.Repeat(-1.0, count).ToArray();
        var diagonal = Enumerable.Repeat(2.0, count).ToArray();
        var right = new double[count];
        right[^1] = 1;
        var x = Solve(off, diagonal, off, right);
        for (var i = 0; i < count; i++)
            Assert.Equal((i + 1.0) / (count + 1), x[i], 1e-12);
    }

    [Fact]
    public void Solve_ThenMultiply_GivesTheRightSideBack() =>
        Gen.Int[1, 40].SelectMany(count => Gen.Select(Coupling.Array[count], Coupling.Array[count], Coupling.Array[count]))
            .Sample((lower, upper, right) =>
            {
                var count = right.Length;
                var diagonal = lower.Zip(upper, (l, u) => 0.1 + Math.Abs(l) + Math.Abs(u)).ToArray();
                var x = Solve(lower, diagonal, upper, right);
                for (var i = 0; i < count; i++)
                {
                    var row = diagonal[i] * x[i] + (i > 0 ? lower[i] * x[i - 1] : 0) + (i < count - 1 ? upper[i] * x[i + 1] : 0);
                    Assert.Equal(right[i], row, 1e-10);
                }
            });

    private static double[] Solve(double[] lower, double[] diagonal, double[] upper, double[] right)
    {
        var solution = Lanes(right);
        Tridiagonal.Solve<Lane1>(Lanes(lower), Lanes(diagonal), Lanes(upper), solution, new Lane1[right.Length]);
        return [.. solution.Select(lane => lane.Value)];

        static Lane1[] Lanes(double[] values) => [.. values.Select(Lane1.Of)];
    }
}
