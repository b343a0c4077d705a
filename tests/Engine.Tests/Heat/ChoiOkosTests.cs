using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat;

/// <summary>
/// Component values of the thermal reference sheet, table 1.6, marked computed from the printed polynomials: they test that these are typed
/// and evaluated right. That the polynomials themselves are the published ones was read in several independent reprints (sheet 1.1 to 1.3).
/// </summary>
public class ChoiOkosTests
{
    [Theory]
    [InlineData(0, 0, 2.00820, 0.178810, 1329.90)]
    [InlineData(0, 20, 2.03185, 0.201639, 1319.53)]
    [InlineData(0, 60, 2.07601, 0.240774, 1298.80)]
    [InlineData(0, 100, 2.11596, 0.271212, 1278.06)]
    [InlineData(1, 0, 1.98420, 0.180710, 925.59)]
    [InlineData(1, 20, 2.01175, 0.175118, 917.24)]
    [InlineData(1, 60, 2.05532, 0.163509, 900.54)]
    [InlineData(1, 100, 2.08352, 0.151331, 883.83)]
    [InlineData(2, 0, 1.54880, 0.201410, 1599.10)]
    [InlineData(2, 20, 1.58567, 0.227426, 1592.89)]
    [InlineData(2, 60, 1.64517, 0.269062, 1580.47)]
    [InlineData(2, 100, 1.68565, 0.296838, 1568.05)]
    [InlineData(3, 0, 1.84590, 0.183310, 1311.50)]
    [InlineData(3, 20, 1.88065, 0.207037, 1304.18)]
    [InlineData(3, 60, 1.93899, 0.246886, 1289.55)]
    [InlineData(3, 100, 1.98245, 0.276597, 1274.91)]
    [InlineData(4, 0, 1.09260, 0.329620, 2423.80)]
    [InlineData(4, 20, 1.12892, 0.356479, 2418.19)]
    [InlineData(4, 60, 1.19272, 0.403221, 2406.96)]
    [InlineData(4, 100, 1.24474, 0.440661, 2395.74)]
    [InlineData(5, 0, 4.17620, 0.571090, 997.18)]
    [InlineData(5, 20, 4.17657, 0.603659, 995.74)]
    [InlineData(5, 60, 4.19045, 0.652707, 983.84)]
    [InlineData(5, 100, 4.22184, 0.680304, 959.92)]
    public void Constituent_AtTabledTemperatures_HasTheTabledValues(
        int constituent, double celsius, double specificHeat, double conductivity, double density)
    {
        var temperature = Temperature.FromCelsius(celsius);
        var which = (FoodConstituent)constituent;
        Near(specificHeat, ChoiOkos.SpecificHeatOf(which, temperature).JoulesPerGramKelvin);
        Near(conductivity, ChoiOkos.ConductivityOf(which, temperature).WattsPerMetreKelvin);
        Near(density, ChoiOkos.DensityOf(which, temperature).KilogramsPerCubicMetre);
    }

    [Fact]
    public void ColdWater_HasItsOwnPolynomial() =>
        Near(4.234278, ChoiOkos.SpecificHeatOf(FoodConstituent.Water, Temperature.FromCelsius(-10)).JoulesPerGramKelvin);

    /// <summary>
    /// Steam-table water at 20 °C is 4.18 kJ/(kg K) and 998.2 kg/m³ (sheet 1.1 and 1.3): the misprinted 4.1289 would fail here.
    /// </summary>
    [Fact]
    public void Water_AtTwentyDegrees_IsCloseToSteamTables()
    {
        Assert.Equal(4.18, ChoiOkos.SpecificHeatOf(FoodConstituent.Water, Temperature.FromCelsius(20)).JoulesPerGramKelvin, 0.005);
        Assert.Equal(998.2, ChoiOkos.DensityOf(FoodConstituent.Water, Temperature.FromCelsius(20)).KilogramsPerCubicMetre, 998.2 * 0.003);
    }

    [Theory]
    [InlineData(-41)]
    [InlineData(151)]
    public void Constituent_OutsideTheTable_IsRefused(double celsius) => Assert.Throws<ArgumentOutOfRangeException>(
        () => ChoiOkos.SpecificHeatOf(FoodConstituent.Fat, Temperature.FromCelsius(celsius)));

    private static void Near(double expected, double actual) => Assert.Equal(expected, actual, 1e-4 * expected);
}
