using CsCheck;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Numerics;

public class NormalQuantileTests
{
    /// <summary>Printed tables of the normal distribution, ten decimals, from memory.</summary>
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.75, 0.6744897502)]
    [InlineData(0.9, 1.2815515655)]
    [InlineData(0.95, 1.6448536270)]
    [InlineData(0.975, 1.9599639845)]
    [InlineData(0.99, 2.3263478740)]
    [InlineData(0.995, 2.5758293035)]
    [InlineData(0.999, 3.0902323062)]
    [InlineData(0.9999, 3.7190164855)]
    [InlineData(1e-6, -4.7534243088)]
    [InlineData(1e-9, -5.9978070150)]
    public void At_TabulatedProbabilities_GivesThePrintedDigits(double p, double z) => Assert.Equal(z, NormalQuantile.At(p), 6e-11);

    /// <summary>The oracle is the probability itself, summed from its series: a check that shares nothing with the rational fit.</summary>
    [Fact]
    public void At_ThenBack_GivesTheProbability() =>
        Gen.Double[0.0005, 0.9995].Sample(p => Math.Abs(Probability(NormalQuantile.At(p)) / p - 1) < 1e-12);

    [Fact]
    public void At_OneHalfMore_IsOddAboutOneHalf() =>
        Gen.Int[1, (1 << 20) - 1].Select(i => (double)i / (1 << 20)).Sample(p => NormalQuantile.At(p) == -NormalQuantile.At(1 - p));

    [Fact]
    public void At_MoreProbability_IsFurtherUp() =>
        Gen.Double[1e-12, 0.999999].Sample(p => NormalQuantile.At(p) < NormalQuantile.At(p + 1e-9));

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void At_ImpossibleProbabilities_IsRefused(double p) => Assert.Throws<ArgumentOutOfRangeException>(() => NormalQuantile.At(p));

    private static double Probability(double z)
    {
        var (sum, term) = (0.0, z);
        for (var k = 1; Math.Abs(term) > 1e-20; k++)
        {
            sum += term;
            term *= z * z / (2 * k + 1);
        }
        return 0.5 + sum * Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);
    }
}
