using Doughwright.Engine.Baking;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Baking;

public class DialPairsTests
{
    private static Dial Of(double celsius, OvenMode written, OvenMode here) => DialPairs.Of(Temperature.FromCelsius(celsius), written, here);

    /// <summary>Customary pairs of print (units sheet, 3: a cooker manual, a school leaflet and a travel table, read).</summary>
    [Theory]
    [InlineData(110, 225, 90)]
    [InlineData(130, 250, 110)]
    [InlineData(140, 275, 120)]
    [InlineData(150, 300, 130)]
    [InlineData(160, 325, 140)]
    [InlineData(180, 350, 160)]
    [InlineData(190, 375, 170)]
    [InlineData(200, 400, 180)]
    [InlineData(220, 425, 200)]
    [InlineData(230, 450, 210)]
    [InlineData(240, 475, 220)]
    [InlineData(250, 500, 230)]
    public void StaticPairs_AreThoseOfPrint(int celsius, int fahrenheit, int fan)
    {
        var dial = Of(celsius, OvenMode.Static, OvenMode.Static);
        Assert.Equal(new(OvenMode.Static, celsius, fahrenheit), dial.Here);
        Assert.Equal((OvenMode.Fan, fan), (Assert.Single(dial.Others).Mode, dial.Others[0].Celsius));
    }

    /// <summary>Corrections sheet, 13: 170 fan is 190 static is 375 °F; 160 fan is 180 static is 350 °F.</summary>
    [Theory]
    [InlineData(170, 190, 375)]
    [InlineData(160, 180, 350)]
    public void FanDial_InAStaticOven(int fan, int still, int fahrenheit)
    {
        Assert.Equal(new(OvenMode.Static, still, fahrenheit), Of(fan, OvenMode.Fan, OvenMode.Static).Here);
        Assert.Equal(new(OvenMode.Static, still, fahrenheit), Of(fan, OvenMode.Fan, OvenMode.Fan).Others[0]);
        Assert.Equal(fan, Of(fan, OvenMode.Fan, OvenMode.Fan).Here.Celsius);
    }

    /// <summary>The same pairs, from the other dial: who writes 375 °F has 190 °C on another oven, not 191.</summary>
    [Theory]
    [InlineData(225, 110)]
    [InlineData(325, 160)]
    [InlineData(350, 180)]
    [InlineData(375, 190)]
    [InlineData(425, 220)]
    [InlineData(450, 230)]
    public void WrittenInFahrenheit_StaysAsWritten_BesideItsPair(int fahrenheit, int celsius)
    {
        var dial = DialPairs.Of(Temperature.FromFahrenheit(fahrenheit), OvenMode.Static, OvenMode.Static);
        Assert.Equal(new(OvenMode.Static, celsius, fahrenheit), dial.Here);
        Assert.Equal(celsius - 20, dial.Others[0].Celsius);
        Assert.Equal(new(OvenMode.Fan, celsius, fahrenheit), DialPairs.Of(Temperature.FromFahrenheit(fahrenheit), OvenMode.Fan, OvenMode.Fan).Here);
    }

    [Fact]
    public void AnOddFahrenheitDial_IsToTheNearestStepInCelsius() =>
        Assert.Equal(new(OvenMode.Static, 170, 340), DialPairs.Of(Temperature.FromFahrenheit(340), OvenMode.Static, OvenMode.Static).Here);

    /// <summary>A dial goes one way. The pairs are roundings (units sheet, 3: 250 °C is printed beside 500 °F, which is 260 °C), so figures between them keep between them.</summary>
    [Theory]
    [InlineData(OvenMode.Static)]
    [InlineData(OvenMode.Fan)]
    public void AHotterDial_IsNeverACoolerOneInTheOtherUnit(OvenMode mode)
    {
        for (var celsius = 90; celsius < 330; celsius++)
        {
            Assert.True(Of(celsius, mode, mode).Here.Fahrenheit <= Of(celsius + 1, mode, mode).Here.Fahrenheit, $"{celsius} C");
        }

        int InCelsius(int fahrenheit) => DialPairs.Of(Temperature.FromFahrenheit(fahrenheit), mode, mode).Here.Celsius;
        for (var fahrenheit = 200; fahrenheit < 620; fahrenheit += 5)
        {
            Assert.True(InCelsius(fahrenheit) <= InCelsius(fahrenheit + 5), $"{fahrenheit} F");
        }
    }

    /// <summary>Between the pairs and above them a figure stays within half a pair of the true one: 500 °F is 260 °C.</summary>
    [Theory]
    [InlineData(235, 455)]
    [InlineData(245, 475)]
    [InlineData(255, 500)]
    [InlineData(260, 500)]
    [InlineData(265, 510)]
    [InlineData(280, 535)]
    public void HotDials_GoOnFromTheirPairs(int celsius, int fahrenheit) =>
        Assert.Equal(fahrenheit, Of(celsius, OvenMode.Static, OvenMode.Static).Here.Fahrenheit);

    [Fact]
    public void ThereAndBack_IsTheSameDial()
    {
        for (var celsius = 80; celsius <= 330; celsius += 5)
        {
            var still = Of(celsius, OvenMode.Fan, OvenMode.Static).Here;
            Assert.Equal(celsius, Of(still.Celsius, OvenMode.Static, OvenMode.Fan).Here.Celsius);
            Assert.Equal(0, still.Fahrenheit % 5);
        }
    }
}
