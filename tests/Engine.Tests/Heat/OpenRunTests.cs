using CsCheck;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

/// <summary>A layer with a face of its own above and below, and evaporation from the upper one.</summary>
public class OpenRunTests
{
    private const double Conductivity = 0.5;
    private const double HeatCapacity = 3.6e6;
    private const double Thick = 0.02;
    private const double Constant = HeatCapacity * Thick * Thick / Conductivity;

    private static readonly OpenFaces Dry = new(0, 0.45, 0.5, HasBack: true);

    /// <summary>
    /// A slab cooled on both faces is one of half its thickness with a mirror in the middle: means over Bi 1 at Fo 0.1, 0.2, 0.5 and 1, full series,
    /// thermal reference sheet 5.2.
    /// </summary>
    [Theory]
    [InlineData(0.1, .919597)]
    [InlineData(0.2, .851595)]
    [InlineData(0.5, .681105)]
    [InlineData(1, .470397)]
    public void Mean_OfALayerWithTwoLikeFaces_FollowsTheSeriesOfHalfOfIt(double fourier, double left) =>
        Assert.Equal(left, Left(Dry, 2 * Conductivity / Thick, fourier / 4, 100), 1e-3);

    /// <summary>Insulated below by a wall that takes no heat and meets no air: the series of its whole thickness, same sheet.</summary>
    [Theory]
    [InlineData(0.1, .919597)]
    [InlineData(1, .470397)]
    public void Mean_OfALayerThatIsOpenAboveAlone_FollowsTheSeries(double fourier, double left) =>
        Assert.Equal(left, Left(Dry with { HasBack = false }, Conductivity / Thick, fourier, 100), 1e-3);

    /// <summary>
    /// A tray of capacity C below, seen from above as a lump once it has evened out: (ρ c d + C) dT/dt = -2 h (T - T_air) for a layer so thin that it has
    /// one temperature. Exponential, textbook form.
    /// </summary>
    [Fact]
    public void ThinLayer_OnATray_CoolsAsALump()
    {
        const double Thin = 1e-4;
        const double Wall = 2000;
        const double Gives = 10;
        var lanes = Lanes(Gives, Dry) with { WallCapacity = [Wall / 2] };
        var run = ConductionRun.Start(new(1, Length.FromMetres(Thin), 8), lanes, Duration.FromSeconds(1));
        var mean = new double[200];
        run.Advance(Enumerable.Repeat(0.0, 200).ToArray(), mean);
        Assert.Equal(Math.Exp(-200 * 2 * Gives / ((HeatCapacity * Thin) + Wall)), mean[^1] / 100, 1e-3);
    }

    /// <summary>
    /// What is wet and does not shine comes to the wet bulb: 14.9 °C in a room of 22 °C and 50 %, thermal reference sheet 6.2, computed by convection alone.
    /// </summary>
    [Fact]
    public void WetLayer_ComesToTheWetBulb()
    {
        var lanes = Lanes(8, new(1, 1, 0.5, HasBack: false)) with { StartCelsius = [60] };
        var run = ConductionRun.Start(new(1, Length.FromMetres(0.005), 16), lanes, Duration.FromMinutes(5));
        var (mean, surface) = (new double[300], new double[300]);
        run.Advance(Enumerable.Repeat(22.0, 300).ToArray(), mean, surface: surface);
        Assert.Equal(14.9, mean[^1], 0.1);
        Assert.Equal(mean[^1], surface[^1], 1e-6);
    }

    /// <summary>With a back at the same coefficient it comes to rest where what evaporates above is what both faces take in from the air.</summary>
    [Fact]
    public void WetLayer_OnATray_RestsWhereItsFlowsAreEven()
    {
        const double Gives = 9;
        var lanes = Lanes(Gives, new(1, 0.5, 0.5, HasBack: true)) with { StartCelsius = [40] };
        var run = ConductionRun.Start(new(1, Length.FromMetres(Thick), 32), lanes, Duration.FromMinutes(10));
        var (mean, surface) = (new double[600], new double[600]);
        run.Advance(Enumerable.Repeat(22.0, 600).ToArray(), mean, surface: surface);
        var dries = Evaporation.HeatFlux(0.5 * Gives, Temperature.FromCelsius(surface[^1]), Temperature.FromCelsius(22), 0.5, 1);
        // Below: air, half of it through the layer: 1/h + d/k.
        var below = (22 - surface[^1]) / ((1 / Gives) + (Thick / Conductivity));
        Assert.Equal(dries, (Gives * (22 - surface[^1])) + below, 1e-6);
    }

    [Fact]
    public void Heat_IsKept() => Gen.Select(Gen.Double[1, 60], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Bool, Gen.Double[0, 5000], Gen.Double[5, 95], Gen.Double[0, 40], Gen.Double[5, 600])
        .Sample((gives, wet, convective, back, wall, start, air, step) =>
        {
            var lanes = Lanes(gives, new(wet, convective, 0.5, back)) with { WallCapacity = [wall], StartCelsius = [start] };
            var run = ConductionRun.Start(new(1, Length.FromMetres(Thick), 16), lanes, Duration.FromSeconds(step));
            var before = run.HeatContent(0);
            run.Advance(Enumerable.Range(0, 60).Select(moment => air + (moment % 7)).ToArray(), new double[60]);
            var changed = run.HeatContent(0) - before;
            Assert.InRange(Math.Abs(changed - run.HeatReceived(0)) / Math.Max(1, Math.Abs(changed)), 0, 1e-9);
        }, iter: 200);

    [Fact]
    public void Mean_WithHalfTheStep_HasAQuarterOfTheError() => AssertSecondOrder(steps => Wet(32, steps), 400);

    [Fact]
    public void Mean_WithHalfTheCells_HasAQuarterOfTheError() => AssertSecondOrder(cells => Wet(cells, 4000), 8);

    /// <summary>At home it takes the author's minutes to the last digit, covered or open; open it cools faster, as it does in a kitchen.</summary>
    [Fact]
    public void Minutes_OfAnOpenLayer_AreTheAuthorsAndFewerThanCovered()
    {
        var puree = new ThermalProperties(SpecificHeat.FromJoulesPerGramKelvin(3.5), Density.FromKilogramsPerCubicMetre(1050), Engine.Quantities.Conductivity.FromWattsPerMetreKelvin(0.5));
        var covered = Body.Spread(Mass.FromGrams(300), puree, Length.FromMillimetres(10), 300);
        var open = covered with { Faces = new(1, OpenFaces.StillAir, OpenFaces.Room, HasBack: true) };
        Cooling Of(Body body) => new(
            body, new(CoolingDirection.Cool, Temperature.FromCelsius(30)), AirProfile.Constant(Temperature.FromCelsius(21)), Temperature.FromCelsius(90), 10);
        double Minutes(Body body, double coefficient) => Of(body).TimeToReach(new([90], [coefficient])).Minutes[0];
        var fit = Of(open).SolveCoefficient(new([90], [10]), [18]);
        Assert.Equal(18, Minutes(open, fit.WattsPerSquareMetreKelvin[0]), 1e-9);
        Assert.InRange(Minutes(open, 10) / Minutes(covered, 10), 0.2, 0.7);
        // Twice the cells and a quarter of the steps' length, within half a per cent.
        var fine = new ConductionMarch(open, Of(open).Target, Of(open).Air, Cooling.GridOf(open, 64), Duration.FromMinutes(Of(open).Step.Minutes / 8));
        Assert.Equal(1, fine.TimeToReach(new([90], [10]), null).Minutes[0] / Minutes(open, 10), 5e-3);
    }

    private static double Wet(int cells, int steps)
    {
        var lanes = Lanes(9, new(1, 0.45, 0.5, HasBack: true)) with { StartCelsius = [90], WallCapacity = [1500] };
        var run = ConductionRun.Start(new(1, Length.FromMetres(Thick), cells), lanes, Duration.FromSeconds(1800.0 / steps));
        var mean = new double[steps];
        run.Advance(Enumerable.Repeat(20.0, steps).ToArray(), mean);
        return mean[^1];
    }

    private static void AssertSecondOrder(Func<int, double> value, int coarse)
    {
        var order = Math.Log2((value(coarse) - value(2 * coarse)) / (value(2 * coarse) - value(4 * coarse)));
        TestContext.Current.TestOutputHelper?.WriteLine($"order {order:0.00}");
        Assert.InRange(order, 1.7, 2.4);
    }

    private static double Left(OpenFaces faces, double coefficient, double fourier, int cells)
    {
        const int Steps = 1000;
        var run = ConductionRun.Start(new(1, Length.FromMetres(Thick), cells), Lanes(coefficient, faces), Duration.FromSeconds(fourier * Constant / Steps));
        var mean = new double[Steps];
        run.Advance(new double[Steps], mean);
        return mean[^1] / 100;
    }

    private static ConductionLanes Lanes(double coefficient, OpenFaces faces) => new()
    {
        Conductivity = [Conductivity],
        HeatCapacity = [HeatCapacity],
        Coefficient = [coefficient],
        StartCelsius = [100],
        Faces = faces,
    };
}
