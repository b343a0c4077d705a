using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Numerics;

public class DrawsTests
{
    [Fact]
    public void LaneZero_DrawsNothing() => Assert.Equal(0, Draws.Normal(17, 32)[0]);

    [Theory]
    [InlineData(32)]
    [InlineData(4096)]
    public void EveryDimension_WithAPowerOfTwoOfLanes_HasMeanZero(int lanes)
    {
        for (var dimension = 0; dimension < Draws.Dimensions; dimension++)
            Assert.Equal(0, Draws.Normal(dimension, lanes).Sum(), 1e-9);
    }

    /// <summary>Close to 1, short of it by the tails that few draws cannot reach.</summary>
    [Theory]
    [InlineData(32, 0.90)]
    [InlineData(4096, 1.00)]
    public void EveryDimension_HasTheStatedStandardDeviation(int lanes, double stated)
    {
        for (var dimension = 0; dimension < Draws.Dimensions; dimension++)
        {
            var draws = Draws.Normal(dimension, lanes)[1..];
            Assert.Equal(stated, Math.Sqrt(draws.Sum(z => z * z) / draws.Length), 0.005);
        }
    }

    [Theory]
    [InlineData(32, Draws.Independent, 0.2)]
    [InlineData(4096, 64, 0.03)]
    public void NoTwoDimensions_LeanOnEachOtherMoreThanStated(int lanes, int dimensions, double stated)
    {
        var draws = Enumerable.Range(0, dimensions).Select(d => Draws.Normal(d, lanes)).ToArray();
        for (var i = 0; i < dimensions; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var correlation = draws[i].Zip(draws[j], (x, y) => x * y).Sum() / draws[i].Sum(x => x * x);
                Assert.InRange(Math.Abs(correlation), 0, stated);
            }
        }
    }

    [Fact]
    public void EverySobolDimension_IsUsedOnce() =>
        Assert.Equal(64, Enumerable.Range(0, 64).Select(d => string.Join(' ', Draws.Normal(d, 4096))).Distinct().Count());

    [Fact]
    public void OutsideTheTable_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Draws.Normal(64, 32));
        Assert.Throws<ArgumentOutOfRangeException>(() => Draws.Normal(-1, 32));
        Assert.Throws<ArgumentOutOfRangeException>(() => Draws.Normal(0, 0));
    }

    [Fact]
    public void MoreLanes_BeginWithTheSameDraws() => Assert.Equal(Draws.Normal(9, 32), Draws.Normal(9, 4096)[..32]);
}
