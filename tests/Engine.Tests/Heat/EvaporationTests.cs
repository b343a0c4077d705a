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

    /// <summary>Check value of the release on sublimation, read in an independent implementation of it. Source: iapws-r14-08.</summary>
    [Fact]
    public void VapourPressureOfIce_IsThePublishedOne() =>
        Assert.Equal(8.94735, SaturatedWater.VapourPressureOfIce(Temperature.FromKelvins(230)).Pascals, 5e-6);

    [Fact]
    public void VapourPressure_OfIceAndWater_AreOneWhereTheyMeet() => Assert.Equal(
        SaturatedWater.VapourPressure(Temperature.FromCelsius(0)).Pascals,
        SaturatedWater.VapourPressureOfIce(Temperature.FromCelsius(0)).Pascals,
        0.1);

    /// <summary>
    /// A surface at -2 °C in air of -5 °C, by hand from the pressures over ice of 517.7 and 401.8 Pa (any table of them, from memory): densities
    /// 4.137 and half of 3.247 g/m³, 9.40e-6 kg/(m² s), 26.6 W/m², 8.88 W/(m² K), of which half the area counts.
    /// </summary>
    [Fact]
    public void Open_InFrost_IsThatOfVapourOverIce()
    {
        double At(double start, double target, double air) =>
            ExchangeCoefficient.Open(Temperature.FromCelsius(start), Temperature.FromCelsius(target), Temperature.FromCelsius(air), 0.5).WattsPerSquareMetreKelvin;
        Assert.Equal(8 + 4.44, At(-1, -3, -5), 0.01);
        Assert.InRange(At(90, 26, -5), 8 + 4.44, At(90, 26, 1));
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
