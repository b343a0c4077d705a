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

    /// <summary>No two dimensions go together; a wrong table would make some.</summary>
    [Fact]
    public void NoTwoDimensions_AreTheSameDraws()
    {
        var draws = Enumerable.Range(0, Draws.Dimensions).Select(d => Draws.Normal(d, 4096)).ToArray();
        for (var i = 0; i < draws.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var together = draws[i].Zip(draws[j], (x, y) => x * y).Sum() / draws[i].Sum(x => x * x);
                Assert.InRange(Math.Abs(together), 0, 0.1);
            }
        }
    }

    [Fact]
    public void MoreLanes_BeginWithTheSameDraws() => Assert.Equal(Draws.Normal(9, 32), Draws.Normal(9, 4096)[..32]);
}
