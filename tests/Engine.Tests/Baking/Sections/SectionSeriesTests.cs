using Doughwright.Engine.Baking.Sections;

namespace Doughwright.Engine.Tests.Baking.Sections;

/// <summary>Conduction alone against exact solutions.</summary>
public class SectionSeriesTests
{
    /// <summary>
    /// Centre of a finite cylinder, the product of the full series of slab and cylinder: radius 60 mm, height 80 mm, k 0.45 W/(m K),
    /// α 1.3e-7 m²/s, 25 °C into 200 °C. Thermal reference sheet 5.3, marked computed: it tests the solver, not nature.
    /// </summary>
    [Theory]
    [InlineData(10, 1800, 29.577)]
    [InlineData(10, 3600, 51.535)]
    [InlineData(25, 1800, 34.343)]
    [InlineData(25, 3600, 72.779)]
    public void Core_OfASolidCylinder_FollowsTheProductOfTheSeries(double coefficient, double seconds, double celsius)
    {
        var march = Pieces.March(Pieces.Solid(0.06, 0.08, coefficient, 0.45, 1.3e-7, 25, 200), 40, 60, 6e-4);
        var end = SectionBake.Run(march, seconds, 10, TestContext.Current.CancellationToken).Last();
        Assert.Equal(celsius, end.Core, 1e-3 * (200 - 25));
    }

    /// <summary>The error falls to a quarter when cells and steps are halved: second order in both, measured against the series.</summary>
    [Fact]
    public void Error_OfTheCore_FallsWithTheSquareOfCellsAndSteps()
    {
        double Error(int rings, int layers, double outermost, double step)
        {
            var march = Pieces.March(Pieces.Solid(0.06, 0.08, 25, 0.45, 1.3e-7, 25, 200), rings, layers, outermost, 1e-9);
            while (march.Seconds < 3600 - 1e-9)
            {
                Assert.True(march.Step(step));
            }

            return Math.Abs(march.CoreCelsius(0.04) - 72.779);
        }

        var coarse = Error(8, 12, 6e-3, 120);
        var fine = Error(16, 24, 3e-3, 60);
        TestContext.Current.TestOutputHelper?.WriteLine($"{coarse:0.0000} K, then {fine:0.0000} K");
        Assert.InRange(coarse / fine, 3, 6);
    }
}
