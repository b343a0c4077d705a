using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Fermentation;

public class CardinalRateTests
{
    private static readonly CardinalTemperatures Published = Cardinal(5, 20, 30);

    // macrogrow reference, T_lim, worked example [read].
    [Theory]
    [InlineData(22, 0.9633333)]
    [InlineData(10, 0.3333333)]
    [InlineData(15, 0.8000000)]
    [InlineData(28, 0.3712271)]
    public void Rate_OfThePublishedExample_IsAsPrinted(double celsius, double printed) =>
        Assert.Equal(printed, At(celsius, Published), 1e-6);

    // The same example [read].
    [Theory]
    [InlineData(5)]
    [InlineData(30)]
    [InlineData(31)]
    [InlineData(-40)]
    public void Rate_OutsideItsEnds_IsExactlyZero(double celsius) => Assert.Equal(0, At(celsius, Published));

    [Fact]
    public void Rate_AtOptimum_IsOne()
    {
        Assert.Equal(1, At(20, Published), 1e-15);
        Assert.Equal(1, At(37, CardinalTemperatures.BreadYeastGas), 1e-15);
    }

    // fermentation sheet 1.4 [computed from the formula: tests the formula only].
    [Theory]
    [InlineData(2, .0087)]
    [InlineData(4, .0342)]
    [InlineData(6, .0756)]
    [InlineData(8, .1318)]
    [InlineData(10, .2017)]
    [InlineData(12, .2840)]
    [InlineData(15, .4273)]
    [InlineData(18, .5895)]
    [InlineData(20, .7048)]
    [InlineData(22, .8230)]
    [InlineData(24, .9416)]
    [InlineData(26, 1.0573)]
    [InlineData(27, 1.1130)]
    [InlineData(28, 1.1667)]
    [InlineData(30, 1.2655)]
    [InlineData(32, 1.3491)]
    [InlineData(35, 1.4332)]
    [InlineData(37, 1.4516)]
    [InlineData(40, 1.4011)]
    [InlineData(45, 1.0107)]
    public void Rate_OfBreadYeastAgainst25Degrees_IsAsTabulated(double celsius, double tabulated) =>
        Assert.Equal(tabulated, Against25(celsius), 6e-5);

    /// <summary>
    /// A fridge of 8 °C against one of 5. No measurement of gas at both was found. What brackets the model's 2.6: rates that double every 7 °F
    /// between 40 and 75 °F (sourdough FAQ, read: 2^(5.4/7) = 1.7), and growth with its square root law from 2.84 °C on (Salvado 2011, from
    /// memory: ((8 - 2.84)/(5 - 2.84))² = 5.7).
    /// </summary>
    [Fact]
    public void Rate_At8DegreesAgainst5_LiesBetweenWhatIsPublished() => Assert.InRange(Against25(8) / Against25(5), 1.7, 5.7);

    [Fact]
    public void Rate_OfBreadYeastAt25Degrees_IsAsTabulated() =>
        Assert.Equal(0.688903, At(25, CardinalTemperatures.BreadYeastGas), 1e-5); // fermentation sheet 1.4 [computed]

    // fermentation sheet 1.4, equivalent time [computed].
    [Fact]
    public void EquivalentTime_OfAnHourAt20AndAnHourAt30_IsAsComputed() =>
        Assert.Equal(118.22, 60 * Against25(20) + 60 * Against25(30), 0.05);

    [Theory]
    [InlineData(0, 25, 50)]
    [InlineData(0, 20, 50)]
    [InlineData(0, 50, 50)]
    [InlineData(40, 37, 50)]
    public void CardinalTemperatures_OutOfOrderOrWithALowOptimum_AreRefused(double minimum, double optimum, double maximum) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Cardinal(minimum, optimum, maximum));

    private static double At(double celsius, CardinalTemperatures cardinal) => CardinalRate.At(Temperature.FromCelsius(celsius), cardinal);

    private static double Against25(double celsius) =>
        At(celsius, CardinalTemperatures.BreadYeastGas) / At(25, CardinalTemperatures.BreadYeastGas);

    private static CardinalTemperatures Cardinal(double minimum, double optimum, double maximum) =>
        new(Temperature.FromCelsius(minimum), Temperature.FromCelsius(optimum), Temperature.FromCelsius(maximum));
}
