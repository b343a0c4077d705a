using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

public class EvaporationTests
{
    /// <summary>Thermal reference sheet 6.2, room 22 °C at 50 %, marked computed (1 %): tests the formula, not a kitchen.</summary>
    [Theory]
    [InlineData(4, 25, 4.98e-5, 121.7)]
    [InlineData(4, 22, 3.63e-5, 88.9)]
    [InlineData(8, 60, 8.97e-4, 2117)]
    [InlineData(8, 90, 3.06e-3, 6999)]
    public void HeatFlux_OfAWetSurface_IsTheTabledOne(double convective, double celsius, double flux, double heat)
    {
        var (surface, air) = (Temperature.FromCelsius(celsius), Temperature.FromCelsius(22));
        Assert.Equal(flux, Evaporation.Flux(convective, surface, air, 0.5, 1), 0.01 * flux);
        Assert.Equal(heat, Evaporation.HeatFlux(convective, surface, air, 0.5, 1), 0.01 * heat);
    }

    [Fact]
    public void Open_CoolsFasterThanCovered_AndTheHotterTheMore()
    {
        var (air, target) = (Temperature.FromCelsius(21), Temperature.FromCelsius(28));
        double At(double start) => ExchangeCoefficient.Open(Temperature.FromCelsius(start), target, air, 1.0 / 3).WattsPerSquareMetreKelvin;
        Assert.True(At(40) > ExchangeCoefficient.Covered.WattsPerSquareMetreKelvin);
        Assert.True(At(90) > At(40));
        Assert.Equal(
            ExchangeCoefficient.Covered.WattsPerSquareMetreKelvin,
            ExchangeCoefficient.Open(Temperature.FromCelsius(5), air, air, 1).WattsPerSquareMetreKelvin);
    }
}
