using Doughwright.Engine.Baking;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Baking;

public class BakeKernelTests
{
    private const double NeverBoils = 1e9;

    /// <summary>
    /// Centre of a ball from the full series (40 terms), thermal reference sheet 5.2, marked computed: tests the solver against the exact solution of
    /// the same equation, as long as nothing boils.
    /// </summary>
    [Theory]
    [InlineData(0.5, 0.580044, 0.294078)]
    [InlineData(1, 0.370777, 0.107977)]
    [InlineData(5, 0.065675, 0.002414)]
    [InlineData(10, 0.034478, 0.000618)]
    public void Core_FollowsTheFullSeries(double biot, double atHalf, double atOne)
    {
        var core = Cores(new BakeGrid(100, 0.0005), biot, NeverBoils, 2000);
        Assert.Equal(1 - atHalf, core[999], 1e-3);
        Assert.Equal(1 - atOne, core[1999], 1e-3);
    }

    /// <summary>
    /// A surface held at boiling from the start: 2 Σ (-1)ⁿ⁺¹ exp(-n²π²Fo), the textbook series, computed here term by term.
    /// </summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.3)]
    public void Core_UnderABoilingSurface_FollowsItsSeries(double fourier)
    {
        const double boils = 0.5;
        var steps = (int)Math.Round(fourier / 0.0005);
        var core = Cores(new BakeGrid(100, 0.0005), biot: 1e6, boils, steps);
        var left = 2 * Enumerable.Range(1, 20).Sum(n => (n % 2 == 0 ? -1 : 1) * Math.Exp(-n * n * Math.PI * Math.PI * fourier));
        Assert.Equal(boils * (1 - left), core[steps - 1], 1e-3);
    }

    [Fact]
    public void Core_NeverPassesBoiling_AndNeverFalls()
    {
        var core = Cores(new BakeGrid(20, 0.008), biot: 4, boils: 0.5, steps: 500);
        Assert.InRange(core[^1], 0.49, 0.5);
        Assert.All(core.Zip(core.Skip(1)), pair => Assert.True(pair.Second >= pair.First - 1e-12));
    }

    /// <summary>The grid that rehearsals run on, against one with five times the cells and a sixteenth of the step: half a per cent of the time.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void TimeToShare_OnTheWorkingGrid_IsCloseToAFineOne(double biot)
    {
        double[] All(double value) => [.. Enumerable.Repeat(value, Lanes.Padded(2))];
        var lanes = new BakeLanes(All(25), All(170), [100, 96, .. All(100)[2..]], All(biot));
        var working = BakeModel.TimeToShare(lanes, All(0.9));
        var fine = BakeModel.TimeToShare(new BakeGrid(100, 0.0005), lanes, All(0.9));
        Assert.All(working.Zip(fine), pair => Assert.Equal(1, pair.First / pair.Second, 5e-3));
    }

    /// <summary>Zanoni and others 1995 [formula read]: 60, 70 and 85 % of gas, values marked computed, so they test the formula only.</summary>
    [Theory]
    [InlineData(0.60, 4.341e-7)]
    [InlineData(0.70, 4.798e-7)]
    [InlineData(0.85, 5.574e-7)]
    public void Diffusivity_AtPorosity_IsThePrintedFormula(double porosity, double expected) =>
        Assert.Equal(expected, CrumbDiffusivity.AtPorosity(porosity), 5e-11);

    private static double[] Cores(BakeGrid grid, double biot, double boils, int steps)
    {
        var core = new double[steps];
        BakeKernel.Run<Lane1>(grid, new([0], [1], [boils], [biot]), core);
        return core;
    }
}
