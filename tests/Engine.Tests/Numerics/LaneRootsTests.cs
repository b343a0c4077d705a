using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Numerics;

public class LaneRootsTests
{
    private static readonly RootTolerance Fine = new(1e-12);

    [Fact]
    public void From_EveryLane_HasTheDigitsItHasAlone()
    {
        double[] answers = [.. Enumerable.Range(0, 32).Select(i => -1.5 + i * 0.1)];
        var guess = new double[answers.Length];
        var together = LaneRoots.From((x, f) => Evaluate(answers, x, f), guess, 0.2, true, Fine);
        for (var lane = 0; lane < answers.Length; lane++)
        {
            var alone = LaneRoots.From((x, f) => Evaluate([answers[lane]], x, f), [0], 0.2, true, Fine);
            Assert.Equal(alone[0], together[lane]);
            Assert.Equal(answers[lane], together[lane].X, 1e-11);
        }

        static void Evaluate(double[] answers, double[] x, double[] f)
        {
            for (var lane = 0; lane < x.Length; lane++)
                f[lane] = Math.Exp(2 * x[lane]) - Math.Exp(2 * answers[lane]);
        }
    }

    [Fact]
    public void FromOpen_AsksOnlyForLanesThatGoOn_AndHasTheSameDigits()
    {
        double[] answers = [.. Enumerable.Range(0, 32).Select(i => -1.5 + i * 0.1)];
        var asked = new int[answers.Length];
        var calls = 0;
        double F(double x, int lane) => Math.Exp(2 * x) - Math.Exp(2 * answers[lane]);
        var open = LaneRoots.FromOpen(
            (lanes, x) =>
            {
                calls++;
                Assert.All(lanes, lane => asked[lane]++);
                return [.. lanes.Select((lane, at) => F(x[at], lane))];
            },
            new double[answers.Length], 0.2, true, Fine);
        var all = LaneRoots.From(
            (x, f) =>
            {
                for (var lane = 0; lane < x.Length; lane++)
                    f[lane] = F(x[lane], lane);
            },
            new double[answers.Length], 0.2, true, Fine);
        Assert.Equal(all, open);
        Assert.Equal(open.Select(root => root.Evaluations), asked);
        Assert.True(asked.Sum() < calls * answers.Length);
    }

    [Fact]
    public void ALaneWithoutARoot_SaysSoAndHoldsNobodyBack()
    {
        var calls = 0;
        var roots = LaneRoots.Between(
            (x, f) =>
            {
                calls++;
                for (var lane = 0; lane < x.Length; lane++)
                    f[lane] = lane == 1 ? 1 + x[lane] * x[lane] : x[lane] - 0.1 * lane;
            },
            [-1, -1, -1],
            [1, 1, 1],
            Fine);
        Assert.Equal([RootStatus.Found, RootStatus.NoSignChange, RootStatus.Found], roots.Select(root => root.Status));
        Assert.Equal(roots.Max(root => root.Evaluations), calls);
    }

    /// <summary>What is evaluated at a lane that has ended must not move it, not even not-a-number.</summary>
    [Fact]
    public void AFinishedLane_IsFrozen()
    {
        var calls = 0;
        var roots = LaneRoots.Between(
            (x, f) =>
            {
                calls++;
                f[0] = calls == 1 ? 0 : double.NaN;
                f[1] = Math.Exp(x[1]) - 2;
            },
            [0.5, -3],
            [1, 3],
            Fine);
        Assert.Equal(new Root(RootStatus.Found, 0.5, 0, 1), roots[0]);
        Assert.Equal(Math.Log(2), roots[1].X, 1e-12);
    }
}
