using Doughwright.Engine.Baking;

namespace Doughwright.Engine.Tests.Baking;

/// <summary>The grid that rehearsals use against one so fine that it stands for the exact solution.</summary>
public class WorkingGridTests
{
    private static readonly BakeGrid Fine = new(200, 0.0005);

    /// <summary>Goal of the first bake: the core within 0.3 K at every moment of the bake.</summary>
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    [InlineData(1.0)]
    [InlineData(2.0)]
    [InlineData(4.0)]
    [InlineData(8.0)]
    [InlineData(12.0)]
    [InlineData(20.0)]
    public void Core_StaysWithinThreeTenthsOfAKelvin(double biot)
    {
        var bakes = (
            from start in (double[])[4, 15, 24, 35]
            from oven in (double[])[130, 170, 190, 230, 280]
            from boil in (double[])[88, 95, 100]
            select (start, oven, boil, biot)).ToList();
        var lanes = Bakes.Many(bakes);
        const double End = 2;
        var (working, fine) = (Bakes.Core(BakeModel.Working, lanes, End), Bakes.Core(Fine, lanes, End));
        var ratio = (int)Math.Round(BakeModel.Working.Step / Fine.Step);
        var (worst, at, where) = (0.0, 0.0, bakes[0]);
        for (var step = 0; step < working.Length / lanes.Count; step++)
        {
            for (var lane = 0; lane < bakes.Count; lane++)
            {
                var off = Math.Abs(working[(step * lanes.Count) + lane] - fine[((((step + 1) * ratio) - 1) * lanes.Count) + lane]);
                (worst, at, where) = off > worst ? (off, (step + 1) * BakeModel.Working.Step, bakes[lane]) : (worst, at, where);
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"Bi {biot}: at most {worst:F3} K, at Fo {at:F3} in {where}");
        Assert.InRange(worst, 0, 0.3);
    }

    /// <summary>What a rehearsal reads off: the time at which the core has come its share of the way.</summary>
    [Theory]
    [InlineData(0.3)]
    [InlineData(1.0)]
    [InlineData(4.0)]
    [InlineData(20.0)]
    public void TimeToShare_IsWithinHalfAPerCent(double biot)
    {
        var lanes = Bakes.Many([.. from oven in (double[])[130, 190, 280] from boil in (double[])[88, 96, 100] select (24.0, oven, boil, biot)]);
        foreach (var share in (double[])[0.8, 0.9, 0.97])
        {
            double[] shares = [.. Enumerable.Repeat(share, lanes.Count)];
            var working = BakeModel.TimeToShare(lanes, shares);
            var fine = BakeModel.TimeToShare(Fine, lanes, shares);
            Assert.All(working.Zip(fine), pair => Assert.Equal(1, pair.First / pair.Second, 5e-3));
        }
    }
}
