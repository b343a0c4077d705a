using Doughwright.Engine.Baking.Radial;

namespace Doughwright.Engine.Tests.Baking.Radial;

/// <summary>The solver with constant properties against exact solutions: no vapour, no boiling.</summary>
public class RadialSeriesTests
{
    private static readonly double[] Fourier = [0.05, 0.1, 0.2, 0.5, 1.0];

    /// <summary>Centre from the full series (40 terms), thermal reference sheet 5.2, marked computed: it tests the solver, not nature.</summary>
    [Theory]
    [InlineData(1, 0.5, new[] { .999871, .996321, .972600, .864114, .698383 })]
    [InlineData(1, 1, new[] { .999751, .993108, .950642, .772526, .533859 })]
    [InlineData(1, 5, new[] { .999046, .977309, .864881, .523109, .220721 })]
    [InlineData(1, 10, new[] { .998530, .968424, .829255, .454641, .163818 })]
    [InlineData(2, 0.5, new[] { .999426, .987538, .926659, .715749, .459846 })]
    [InlineData(2, 1, new[] { .998898, .976817, .870174, .548586, .249380 })]
    [InlineData(2, 5, new[] { .995845, .926486, .671418, .207554, .028668 })]
    [InlineData(2, 10, new[] { .993672, .900080, .600232, .145800, .013560 })]
    [InlineData(3, 0.5, new[] { .998364, .972531, .868713, .580044, .294078 })]
    [InlineData(3, 1, new[] { .996869, .949305, .772312, .370777, .107977 })]
    [InlineData(3, 5, new[] { .988399, .845873, .472248, .065675, .002414 })]
    [InlineData(3, 10, new[] { .982564, .795759, .382664, .034478, .000618 })]
    public void Core_FollowsTheSeries(double dimensions, double biot, double[] centre)
    {
        var trace = Conducts(dimensions, biot, 100, 2000);
        Assert.All(Fourier.Zip(centre), mark => Assert.Equal(mark.Second, Left(trace, mark.First), 1e-3));
    }

    /// <summary>Mean over the volume, same sheet.</summary>
    [Theory]
    [InlineData(1, 1, new[] { .919597, .851595, .681105, .470397 })]
    [InlineData(2, 5, new[] { .597397, .396197, .120455, .016636 })]
    [InlineData(3, 1, new[] { .771365, .601810, .287001, .083578 })]
    public void Mean_FollowsTheSeries(double dimensions, double biot, double[] mean)
    {
        var trace = Conducts(dimensions, biot, 100, 2000);
        Assert.All(Fourier.Skip(1).Zip(mean), mark => Assert.Equal(mark.Second, (trace.At(trace.Mean, 0, Seconds(mark.First)) - Hot) / (Cold - Hot), 1e-3));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2.6)]
    [InlineData(3)]
    public void Core_WithHalfTheCellSize_HasAQuarterOfTheError(double dimensions) =>
        AssertSecondOrder("space", cells => Left(Conducts(dimensions, 2, cells, 4000), 0.2), 10, 20, 40);

    [Theory]
    [InlineData(1)]
    [InlineData(2.6)]
    [InlineData(3)]
    public void Core_WithHalfTheStep_HasAQuarterOfTheError(double dimensions) =>
        AssertSecondOrder("time", steps => Left(Conducts(dimensions, 2, 20, steps), 1), 50, 100, 200);

    /// <summary>The forms themselves: first zeros of cosine, of the Bessel function of order nought and of the sine (thermal sheet 5.1).</summary>
    [Theory]
    [InlineData(1, 1.5707963)]
    [InlineData(2, 2.404826)]
    [InlineData(3, 3.1415927)]
    public void FirstZero_IsThatOfSlabCylinderAndSphere(double dimensions, double zero) =>
        Assert.Equal(zero, RadialForm.FirstZero(dimensions), 1e-6);

    private const double Cold = 20;
    private const double Hot = 60;
    private const double Reach = 0.04;
    private const double Solids = 120;
    private const double Capacity = Solids * (1700 + (0.5 * 4190));
    private const double Conductivity = 0.3;

    private static double Seconds(double fourier) => fourier * Reach * Reach * Capacity / Conductivity;

    private static double Left(BakeTrace trace, double fourier) => (trace.At(trace.Core, 0, Seconds(fourier)) - Hot) / (Cold - Hot);

    private static BakeTrace Conducts(double dimensions, double biot, int cells, int steps)
    {
        double[] Every(double value) => [.. Enumerable.Repeat(value, 8)];
        var lanes = new RadialLanes
        {
            Start = Every(Cold),
            Solids = Every(Solids),
            Reach = Every(Reach),
            Water = Every(0.5),
            Heat = Every(1700),
            HeatSlope = Every(0),
            Conductivity = Every(Conductivity),
            Gas = Every(0.8),
            Boil = Every(100),
            Pressure = Every(101325),
            Effectiveness = Every(0),
            Skin = Every(0),
            Open = Every(0),
            Convective = Every(biot * Conductivity / Reach),
            Radiative = Every(0),
            Oven = Every(Hot),
            DoorDrop = Every(0),
            Steam = Every(0),
            Transfer = Every(1),
        };
        var end = Seconds(1);
        return RadialBake.Until(new(dimensions, cells, 1.0 / cells), new(end, steps, steps), lanes, end);
    }

    private static void AssertSecondOrder(string what, Func<int, double> core, int coarse, int finer, int finest)
    {
        var order = Math.Log2((core(coarse) - core(finer)) / (core(finer) - core(finest)));
        TestContext.Current.TestOutputHelper?.WriteLine($"order in {what} {order:F3}");
        Assert.InRange(order, 1.8, 2.3);
    }
}
