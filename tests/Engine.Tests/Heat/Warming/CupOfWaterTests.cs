using System.Text.Json;
using Doughwright.Engine.Heat.Warming;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Tests.TextForm;

namespace Doughwright.Engine.Tests.Heat.Warming;

/// <summary>
/// The jug against a measured cup of hot water: tests/data/published/cup-of-water-2017. How much the cup held is not told; so the amount is
/// solved from the reading at half an hour, and the other eight readings are predicted.
/// </summary>
public class CupOfWaterTests
{
    private static readonly JsonElement Case = JsonDocument.Parse(Texts.Read("tests/data/published/cup-of-water-2017/case.json")).RootElement;

    private static double Celsius(JsonElement fahrenheit) => Temperature.FromFahrenheit(fahrenheit.GetDouble()).Celsius;

    private static readonly double Room = Celsius(Case.GetProperty("roomFahrenheit"));
    private static readonly double[] Measured = [.. Case.GetProperty("fahrenheit").EnumerateArray().Select(Celsius)];

    /// <summary>The cup stands in the room: an inside that nothing warms.</summary>
    private static PlaceTrace Follow(double kilograms, bool open) => new PlaceRun(
        new()
        {
            WaterJoulesPerKelvin = WaterVessel.JoulesPerKelvin(kilograms),
            InsideJoulesPerKelvin = 1e9,
            DoughJoulesPerKelvin = 1,
            WaterToInside = WaterVessel.Exchange.Likely * WaterVessel.OuterSquareMetres(kilograms),
            OpenSquareMetres = open ? WaterVessel.OpenSquareMetres(kilograms) : 0,
        },
        new(Measured[0], Duration.Zero, null),
        AirProfile.Constant(Temperature.FromCelsius(Room)),
        Room).Follow(90);

    private static (double Kilograms, double Worst) Fit(bool open)
    {
        var root = Roots.Between(kilograms => Follow(kilograms, open)[30].Water - Measured[3], 0.005, 2, new(X: 1e-5));
        Assert.True(root.IsFound);
        var trace = Follow(root.X, open);
        return (root.X, Enumerable.Range(0, Measured.Length).Max(i => Math.Abs(trace[10 * i].Water - Measured[i])));
    }

    [Fact]
    public void OpenCup_IsMetWithin2AndAHalfKelvins_ByACupful()
    {
        var (kilograms, worst) = Fit(open: true);
        Assert.InRange(kilograms, 0.12, 0.35);
        Assert.True(worst < 2.5, $"{kilograms:F3} kg, {worst:F2} K");
    }

    /// <summary>The test can fail: without evaporation no cup is small enough.</summary>
    [Fact]
    public void WithoutEvaporation_ItWouldHaveToBeAnEggcup() => Assert.True(Fit(open: false).Kilograms < 0.06);
}
