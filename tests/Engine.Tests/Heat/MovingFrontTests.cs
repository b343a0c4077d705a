using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

/// <summary>
/// Melting with a sharp front: thermal reference sheet 5.6, one-phase Stefan problem, s = 2λ√(αt), marked computed. The enthalpy method smears the
/// front over a narrow range; the heat that it took says where it stands.
/// </summary>
public class MovingFrontTests(ITestOutputHelper output)
{
    /// <summary>A thousandth of the way from melting to the surface.</summary>
    private const double Range = 0.001;

    [Theory]
    [InlineData(0.1, .220016)]
    [InlineData(0.2, .306424)]
    [InlineData(0.5, .464786)]
    [InlineData(1, .620063)]
    public void Front_WithTwoHundredCells_StandsWhereStefanHasIt(double stefan, double lambda)
    {
        var melting = 1 / stefan;
        // Long enough for the front to be half way through, in a body of k = ρc = size = 1.
        var seconds = 0.25 / (4 * lambda * lambda);
        const int Steps = 20_000;
        var run = ConductionRun.Start(
            new(BodyShape.Slab, Length.FromMetres(1), 200),
            new()
            {
                Conductivity = [1],
                HeatCapacity = [1],
                Coefficient = [1e6],
                StartCelsius = [0],
                MeltingHeat = [melting],
                MeltsFromCelsius = 0,
                MeltsToCelsius = Range,
            },
            Duration.FromSeconds(seconds / Steps));
        var mean = new double[Steps];
        run.Advance([.. Enumerable.Repeat(1.0, Steps)], mean);
        var front = (run.HeatContent(0) - mean[^1]) / melting;
        output.WriteLine($"Ste {stefan}: front at {front:F5} against 0.5");
        Assert.Equal(0.5, front, 0.005);
    }

    /// <summary>What came in through the surface is what the body holds more, to a billionth of all that was exchanged.</summary>
    [Theory]
    [InlineData(1, 0.0, 0.0)]
    [InlineData(2.4, 2e7, 3000)]
    [InlineData(3, 5e7, 0.0)]
    [InlineData(4.8, 0.0, 8000)]
    public void Residual_IsBelowABillionthOfTheHeatExchanged(double dimensions, double melting, double wall)
    {
        var run = ConductionRun.Start(
            new(dimensions, Length.FromMillimetres(50), 50),
            new() { Conductivity = [0.4], HeatCapacity = [3e6], Coefficient = [15], StartCelsius = [28], MeltingHeat = [melting], WallCapacity = [wall] },
            Duration.FromMinutes(2));
        var start = run.HeatContent(0);
        // Into the fridge, on the table and into the fridge again.
        double[] air = [.. Enumerable.Range(0, 400).Select(step => step is > 150 and < 250 ? 24.0 : 4.0)];
        var exchanged = 0.0;
        for (var step = 0; step < air.Length; step++)
        {
            var before = run.HeatReceived(0);
            run.Advance(air.AsSpan(step, 1), []);
            exchanged += Math.Abs(run.HeatReceived(0) - before);
        }

        var residual = Math.Abs(run.HeatContent(0) - start - run.HeatReceived(0)) / exchanged;
        output.WriteLine($"{dimensions} dimensions: residual {residual:E1} of the heat exchanged");
        Assert.InRange(residual, 0, 1e-9);
    }

    /// <summary>No step is too long: it stays between start and air.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(60)]
    [InlineData(60_000)]
    public void AStepOfAnyLength_StaysBetweenStartAndAir(double minutes)
    {
        var run = ConductionRun.Start(
            new(3.5, Length.FromMillimetres(60), 20),
            new() { Conductivity = [0.4], HeatCapacity = [3e6], Coefficient = [200], StartCelsius = [90] },
            Duration.FromMinutes(minutes));
        double[] mean = new double[50], centre = new double[50];
        run.Advance([.. Enumerable.Repeat(10.0, 50)], mean, centre);
        Assert.All(mean, celsius => Assert.InRange(celsius, 10 - 1.5, 90));
        Assert.All(centre, celsius => Assert.InRange(celsius, 10 - 4, 90 + 4));
        Assert.True(minutes < 60 || Math.Abs(mean[^1] - 10) < 1e-3);
    }
}
