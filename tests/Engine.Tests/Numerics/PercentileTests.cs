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
        Assert.Equal(new Spread(16, 4, 28), Spread.OfLanes([16, .. draws]));
        Assert.Equal(new Spread(2, 2, 28), Spread.OfLanes([2, .. draws]));
        Assert.Equal(new Spread(30, 4, 30), Spread.OfLanes([30, .. draws]));
        Assert.Equal(new Spread(7, 7, 7), Spread.OfLanes([7]));
    }

    /// <summary>A tenth of 32 lanes is 3.2: three endless lanes leave the range closed, four open it.</summary>
    [Theory]
    [InlineData(3, false)]
    [InlineData(4, true)]
    public void OfLanes_MoreThanATenthEndless_IsOpen(int endless, bool open)
    {
        double[] lanes = [.. Enumerable.Range(0, 32).Select(i => i == 0 ? 16 : i < 32 - endless ? i : Never)];
        Assert.Equal(open, Spread.OfLanes(lanes).IsOpenHigh);
        Assert.Equal(4, Spread.OfLanes(lanes).Low);
    }

    [Fact]
    public void OfLanes_LaneZeroEndless_IsOpenAndKeepsItsLow()
    {
        var spread = Spread.OfLanes([Never, .. Enumerable.Range(1, 31).Select(i => (double)i)]);
        Assert.Equal(new Spread(Never, 4, Never), spread);
    }
}
