using CsCheck;
using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Fermentation;

public class GasTests
{
    private const double Atmosphere = 101325;

    // Saturation at 1 atm of pure carbon dioxide, mol/m³ and L of gas per L of water at T: fermentation sheet 5.2 [computed from Sander's
    // constants, which were read].
    [Theory]
    [InlineData(4, 61.5, 1.399)]
    [InlineData(20, 38.4, 0.923)]
    [InlineData(25, 33.4, 0.818)]
    [InlineData(30, 29.3, 0.728)]
    [InlineData(35, 25.8, 0.651)]
    public void Henry_AtOneAtmosphere_IsAsTabulated(double celsius, double molesPerCubicMetre, double litresPerLitre)
    {
        var temperature = Temperature.FromCelsius(celsius);
        var moles = Henry.At(temperature) * Atmosphere;
        Assert.Equal(molesPerCubicMetre, moles, molesPerCubicMetre * 5e-3);
        Assert.Equal(litresPerLitre, moles * 8.314462618 * temperature.Kelvins / Atmosphere, litresPerLitre * 5e-3);
    }

    // Handbook values of the Bunsen coefficient of carbon dioxide, mL (0 °C, 1 atm) per mL of water: 20 °C 0.878, 25 °C 0.759, 30 °C
    // 0.665 [memory].
    [Theory]
    [InlineData(20, 0.878)]
    [InlineData(25, 0.759)]
    [InlineData(30, 0.665)]
    public void Henry_KeepsWithin3PercentOfBunsensCoefficients(double celsius, double bunsen) =>
        Assert.Equal(bunsen, Henry.At(Temperature.FromCelsius(celsius)) * Atmosphere * 22.414e-3, bunsen * 0.03);

    // fermentation sheet 5.4 [computed from the closed form; air 0.482731 mmol, 65 mL of water, gas-free dough 135.8174 mL].
    [Theory]
    [InlineData(0, 11.8102, 1.0000)]
    [InlineData(1, 17.9967, 1.0419)]
    [InlineData(2, 29.1275, 1.1173)]
    [InlineData(4, 66.0115, 1.3671)]
    [InlineData(8, 158.326, 1.9925)]
    [InlineData(8.0466, 159.438, 2.0000)]
    public void GasVolume_IsAsTabulated(double millimoles, double millilitres, double ratio)
    {
        var volume = Volume(millimoles, Atmosphere);
        Assert.Equal(millilitres, volume, millilitres * 1e-3);
        Assert.Equal(ratio, (135.8174 + volume) / (135.8174 + 11.8102), 1e-3);
    }

    [Fact]
    public void GasVolume_SatisfiesDaltonsAndHenrysLaws() => Gen.Select(Gen.Double[0, 30], Gen.Double[70_000, 105_000]).Sample(
        (millimoles, pascals) =>
        {
            const double Kelvins = 298.15;
            var cubicMetres = Volume(millimoles, pascals) * 1e-6;
            var airPascals = 0.482731e-3 * 8.314462618 * Kelvins / cubicMetres;
            var inGas = (pascals - airPascals) * cubicMetres / (8.314462618 * Kelvins);
            var inWater = Henry.At(Temperature.FromCelsius(25)) * 65e-6 * (pascals - airPascals);
            Assert.Equal(millimoles * 1e-3, inGas + inWater, 1e-12);
        });

    private static double Volume(double millimoles, double pascals) => GasVolume.Of(
        millimoles * 1e-3, 0.482731e-3, 65, Temperature.FromCelsius(25), Pressure.FromPascals(pascals));
}
