namespace Doughwright.Engine.Tests.Baking;

/// <summary>The kernel against exact solutions of its own equation.</summary>
public class BakeSeriesTests
{
    private static readonly double[] Fourier = [0.05, 0.1, 0.2, 0.5, 1.0];

    /// <summary>
    /// Centre of a sphere with convection from the full series (40 terms), thermal reference sheet 5.2, marked computed: it tests the
    /// solver, not nature. The boiling point is put out of reach.
    /// </summary>
    [Theory]
    [InlineData(0.5, new[] { .998364, .972531, .868713, .580044, .294078 })]
    [InlineData(1, new[] { .996869, .949305, .772312, .370777, .107977 })]
    [InlineData(5, new[] { .988399, .845873, .472248, .065675, .002414 })]
    [InlineData(10, new[] { .982564, .795759, .382664, .034478, .000618 })]
    public void Core_WithBoilingOutOfReach_FollowsTheSeriesWithConvection(double biot, double[] centre)
    {
        var lanes = Bakes.One(start: 1, oven: 0, Bakes.Never, biot);
        Assert.All(Fourier.Zip(centre), mark => Assert.Equal(mark.Second, Bakes.CoreAt(new(100, 0.001), lanes, mark.First), 1e-3));
    }

    /// <summary>
    /// Centre of a sphere whose surface is held, thermal reference sheet 5.2, marked computed: an oven so fierce that the surface boils at
    /// once and stays there.
    /// </summary>
    [Theory]
    [InlineData(1e4)]
    [InlineData(1e8)]
    public void Core_InAFierceOven_FollowsTheSeriesWithAFixedSurface(double biot)
    {
        double[] centre = [.965999, .707100, .277078, .014384];
        var lanes = Bakes.One(start: 0, oven: 5, boil: 1, biot);
        Assert.All(Fourier.Zip(centre), mark => Assert.Equal(1 - mark.Second, Bakes.CoreAt(new(100, 0.001), lanes, mark.First), 1e-3));
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(10.0)]
    public void Core_WithHalfTheCellSize_HasAQuarterOfTheError(double biot) =>
        AssertSecondOrder("space", cells => Bakes.CoreAt(new(cells, 0.0005), Bakes.One(0, 1, Bakes.Never, biot), 0.2), 10, 20, 40);

    [Theory]
    [InlineData(1.0)]
    [InlineData(10.0)]
    public void Core_WithHalfTheStep_HasAQuarterOfTheError(double biot) =>
        AssertSecondOrder("time", steps => Bakes.CoreAt(new(20, 0.2 / steps), Bakes.One(0, 1, Bakes.Never, biot), 0.2), 40, 80, 160);

    private static void AssertSecondOrder(string what, Func<int, double> core, int coarse, int finer, int finest)
    {
        var order = Math.Log2((core(coarse) - core(finer)) / (core(finer) - core(finest)));
        TestContext.Current.TestOutputHelper?.WriteLine($"order in {what} {order:F3}");
        Assert.InRange(order, 1.8, 2.2);
    }
}
