using CsCheck;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Numerics;

public class PercentileTests
{
    private const double Never = double.PositiveInfinity;

    /// <summary>Worked by hand: rank 0.1 x 4 = 0.4 and 0.9 x 4 = 3.6.</summary>
    [Fact]
    public void Of_FiveValues_IsLinearBetweenThem()
    {
        double[] values = [50, 10, 40, 20, 30];
        Assert.Equal(14, Percentile.Of(values, 0.1), 1e-12);
        Assert.Equal(46, Percentile.Of(values, 0.9), 1e-12);
        Assert.Equal(30, Percentile.Of(values, 0.5));
        Assert.Equal(10, Percentile.Of(values, 0));
        Assert.Equal(50, Percentile.Of(values, 1));
    }

    [Fact]
    public void Of_ThirtyOneDraws_IsTheFourthFromEitherEnd()
    {
        double[] values = [.. Enumerable.Range(1, 31).Select(i => (double)i)];
        Assert.Equal(4, Percentile.Of(values, 0.1));
        Assert.Equal(28, Percentile.Of(values, 0.9));
    }

    /// <summary>Hyndman and Fan 1996, definition 6: the k-th of n stands for k/(n + 1), here 3.2 and 28.8 of 32.</summary>
    [Fact]
    public void OfDraws_ThirtyOneOfThem_StandForThirtySeconds()
    {
        double[] values = [.. Enumerable.Range(1, 31).Select(i => (double)i)];
        Assert.Equal(3.2, Percentile.OfDraws(values, 0.1), 1e-12);
        Assert.Equal(28.8, Percentile.OfDraws(values, 0.9), 1e-12);
        Assert.Equal(16, Percentile.OfDraws(values, 0.5));
        Assert.Equal(1, Percentile.OfDraws(values, 0.01));
        Assert.Equal(5, Percentile.OfDraws([5], 0.9));
    }

    /// <summary>The 90th percentile of a normal law is 1.2816 standard deviations (any table of it).</summary>
    [Theory]
    [InlineData(32, 0.012)]
    [InlineData(1024, 0.001)]
    public void OfDraws_OfANormalLaw_IsThatOfTheLaw(int lanes, double within) =>
        Assert.Equal(1.2816, Percentile.OfDraws(Draws.Normal(0, lanes).AsSpan(1), 0.9), within);

    [Fact]
    public void Of_AnyValues_LiesAmongThemAndIgnoresTheirOrder() =>
        Gen.Select(Gen.Double[-1e6, 1e6].Array[1, 50], Gen.Double[0, 1]).Sample((values, fraction) =>
        {
            var at = Percentile.Of(values, fraction);
            return at >= values.Min() && at <= values.Max() && at == Percentile.Of([.. values.Reverse()], fraction);
        });

    [Fact]
    public void Of_NothingOrNotANumber_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Percentile.Of([], 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Percentile.Of([1, double.NaN], 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Percentile.Of([1, double.NegativeInfinity], 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Percentile.Of([1], 1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Spread.OfLanes([double.NaN, 1]));
    }

    [Fact]
    public void OfLanes_LaneZeroOutsideItsDraws_WidensTheRange()
    {
        double[] draws = [.. Enumerable.Range(1, 31).Select(i => (double)i)];
        AssertSpread(16, 3.2, 28.8, [16, .. draws]);
        AssertSpread(2, 2, 28.8, [2, .. draws]);
        AssertSpread(30, 3.2, 30, [30, .. draws]);
        AssertSpread(7, 7, 7, [7]);
    }

    /// <summary>The 90th percentile lies between the 28th and the 29th of 31 draws: two endless ones leave the range closed, three open it.</summary>
    [Theory]
    [InlineData(2, false)]
    [InlineData(3, true)]
    public void OfLanes_EndlessAtTheNinetieth_IsOpen(int endless, bool open)
    {
        double[] lanes = [.. Enumerable.Range(0, 32).Select(i => i == 0 ? 16 : i < 32 - endless ? i : Never)];
        Assert.Equal(open, Spread.OfLanes(lanes).IsOpenHigh);
        Assert.Equal(open, Spread.IsOpen(endless, lanes.Length));
        Assert.Equal(3.2, Spread.OfLanes(lanes).Low, 1e-12);
    }

    [Fact]
    public void OfLanes_LaneZeroEndless_IsOpenAndKeepsItsLow() => AssertSpread(Never, 3.2, Never, [Never, .. Enumerable.Range(1, 31).Select(i => (double)i)]);

    private static void AssertSpread(double central, double low, double high, double[] lanes)
    {
        var spread = Spread.OfLanes(lanes);
        Assert.Equal(central, spread.Central);
        Assert.Equal(low, spread.Low, 1e-12);
        Assert.Equal(high, spread.High, 1e-12);
    }
}
