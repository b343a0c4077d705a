using CsCheck;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Numerics;

public class RootsTests
{
    private static readonly RootTolerance Fine = new(1e-12);

    /// <summary>Roots known in closed form.</summary>
    [Fact]
    public void Between_KnownRoots_AreFound()
    {
        Assert.Equal(Math.Sqrt(2), Roots.Between(x => x * x - 2, 0, 2, Fine).X, 1e-12);
        Assert.Equal(Math.Log(3), Roots.Between(x => Math.Exp(x) - 3, -5, 5, Fine).X, 1e-12);
        Assert.Equal(Math.PI, Roots.Between(Math.Sin, 2, 4, Fine).X, 1e-12);
        Assert.Equal(0.1, Roots.Between(x => Math.Pow(x - 0.1, 9), -1, 3, Fine).X, 1e-6);
        Assert.Equal(-2, Roots.Between(x => 5 - x * x * x - 13, 7, -9, Fine).X, 1e-12);
    }

    /// <summary>The fixed point of the cosine, 0.739085133215160642 (from memory).</summary>
    [Fact]
    public void Between_CosineEqualsX_IsTheKnownConstant() =>
        Assert.Equal(0.73908513321516064, Roots.Between(x => Math.Cos(x) - x, 0, 1, Fine).X, 1e-12);

    [Fact]
    public void Between_SameSignAtBothEnds_SaysSo()
    {
        var root = Roots.Between(x => x * x + 1, -1, 2, Fine);
        Assert.Equal(RootStatus.NoSignChange, root.Status);
        Assert.False(root.IsFound);
        Assert.Equal(2, root.Evaluations);
    }

    [Fact]
    public void Between_TooFewEvaluations_SaysSo() =>
        Assert.Equal(RootStatus.NotConverged, Roots.Between(x => Math.Exp(x) - 3, -5, 5, Fine with { MaxEvaluations = 4 }).Status);

    [Fact]
    public void Between_NotANumber_SaysSo() =>
        Assert.Equal(RootStatus.NotANumber, Roots.Between(x => x > 0.3 ? double.NaN : x - 0.9, 0, 1, Fine).Status);

    [Fact]
    public void Between_RootAtAnEnd_IsThatEnd()
    {
        Assert.Equal(3, Roots.Between(x => x - 3, 3, 9, Fine).X);
        Assert.Equal(9, Roots.Between(x => x - 9, 3, 9, Fine).X);
    }

    /// <summary>A step that never ends on one side is an infinite function value: its sign is enough.</summary>
    [Fact]
    public void Between_InfiniteOnOneSide_StillFindsTheRoot()
    {
        var root = Roots.Between(x => x > 1 ? double.PositiveInfinity : x - 0.25, -3, 4, Fine);
        Assert.True(root.IsFound);
        Assert.Equal(0.25, root.X, 1e-12);
    }

    [Fact]
    public void Between_AJump_EndsWhereItJumps() =>
        Assert.Equal(1.0 / 3, Roots.Between(x => x < 1.0 / 3 ? -1 : 2, 0, 1, Fine).X, 1e-11);

    [Fact]
    public void From_AnyGuess_FindsTheRootOfARisingOrFallingFunction() =>
        Gen.Select(Gen.Double[-3, 3], Gen.Double[-3, 3], Gen.Double[0.3, 2], Gen.Bool).Sample((guess, answer, power, rising) =>
        {
            var sign = rising ? 1 : -1;
            var root = Roots.From(x => sign * (Math.Exp(power * x) - Math.Exp(power * answer)), guess, 0.25, rising, new(1e-10));
            return root.IsFound && Math.Abs(root.X - answer) < 1e-9;
        });

    [Fact]
    public void From_OutOfReach_StopsAfterItsExpansions()
    {
        var root = Roots.From(x => x - 1000, 0, 1, rising: true, Fine with { MaxExpansions = 3 });
        Assert.Equal(RootStatus.NoSignChange, root.Status);
        Assert.Equal(15, root.X);
        Assert.Equal(5, root.Evaluations);
    }

    /// <summary>The use this is made for: the logarithm of an unknown coefficient, from minutes, to a millionth.</summary>
    [Fact]
    public void From_TypicalAnchors_NeedsSixEvaluationsOnAverage()
    {
        var random = new Random(1);
        var evaluations = Enumerable.Range(0, 1000).Select(_ =>
        {
            var (answer, power) = (0.35 * (random.NextDouble() * 4 - 2), 0.3 + 1.7 * random.NextDouble());
            return Roots.From(x => Math.Log((1 + power * Math.Exp(-x)) / (1 + power * Math.Exp(-answer))), 0, 0.25, false, new(1e-6, 1e-6));
        }).ToArray();
        Assert.All(evaluations, root => Assert.True(root.IsFound));
        Assert.InRange(evaluations.Average(root => root.Evaluations), 2, 6);
    }
}
