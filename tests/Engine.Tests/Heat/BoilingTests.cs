using CsCheck;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

public class BoilingTests
{
    /// <summary>Thermal reference sheet, table 3.3, marked computed: pressure ± 0.001 kPa, boiling point ± 0.005 °C.</summary>
    [Theory]
    [InlineData(-400, 106.223, 101.302)]
    [InlineData(0, 101.325, 99.974)]
    [InlineData(250, 98.358, 99.144)]
    [InlineData(500, 95.461, 98.312)]
    [InlineData(750, 92.634, 97.481)]
    [InlineData(1000, 89.875, 96.649)]
    [InlineData(1500, 84.556, 94.983)]
    [InlineData(1609.344, 83.428, 94.618)]
    [InlineData(2000, 79.495, 93.315)]
    [InlineData(2240, 77.155, 92.514)]
    [InlineData(2500, 74.683, 91.645)]
    [InlineData(3000, 70.109, 89.972)]
    [InlineData(4000, 61.640, 86.619)]
    public void BoilingPoint_AtAltitude_IsTheTabledOne(double metres, double kilopascals, double celsius)
    {
        var altitude = Length.FromMetres(metres);
        Assert.Equal(kilopascals, StandardAtmosphere.PressureAt(altitude).Kilopascals, 0.001);
        Assert.Equal(celsius, SaturatedWater.BoilingPoint(altitude).Celsius, 0.005);
    }

    /// <summary>The mountain and the home kitchen of the product's own scenarios, ± 0.02.</summary>
    [Theory]
    [InlineData(1200, 87.72, 95.98)]
    [InlineData(5, 101.26, 99.96)]
    public void BoilingPoint_OfTheScenarioKitchens_IsAsPromised(double metres, double kilopascals, double celsius)
    {
        Assert.Equal(kilopascals, StandardAtmosphere.PressureAt(Length.FromMetres(metres)).Kilopascals, 0.02);
        Assert.Equal(celsius, SaturatedWater.BoilingPoint(Length.FromMetres(metres)).Celsius, 0.02);
    }

    /// <summary>Official verification values of IAPWS-IF97, tables 35 and 36 (read in the tests of several libraries).</summary>
    [Fact]
    public void SaturatedWater_ReproducesTheOfficialVerificationValues()
    {
        (double Kelvins, double Megapascals)[] pressures = [(300, 0.00353658941), (500, 2.63889776), (600, 12.3443146)];
        foreach (var (kelvins, megapascals) in pressures)
        {
            Assert.Equal(megapascals, SaturatedWater.VapourPressure(Temperature.FromKelvins(kelvins)).Pascals / 1e6, 5e-9 * megapascals);
        }

        (double Megapascals, double Kelvins)[] temperatures = [(0.1, 372.755919), (1, 453.035632), (10, 584.149488)];
        foreach (var (megapascals, kelvins) in temperatures)
        {
            Assert.Equal(kelvins, SaturatedWater.BoilingPoint(Pressure.FromPascals(megapascals * 1e6)).Kelvins, 5e-7);
        }
    }

    [Fact]
    public void BoilingPoint_OfAVapourPressure_IsTheTemperatureItCameFrom() => Gen.Double[0.5, 370].Sample(celsius =>
        Assert.Equal(celsius, SaturatedWater.BoilingPoint(SaturatedWater.VapourPressure(Temperature.FromCelsius(celsius))).Celsius, 1e-6));

    [Fact]
    public void Pressure_OutsideTheAtmosphere_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StandardAtmosphere.PressureAt(Length.FromMetres(11001)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SaturatedWater.BoilingPoint(Pressure.FromPascals(500)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SaturatedWater.VapourPressure(Temperature.FromCelsius(-1)));
    }
}
