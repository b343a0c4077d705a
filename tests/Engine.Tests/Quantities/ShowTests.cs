using CsCheck;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Quantities;

/// <summary>How figures are printed: the rules of the house for words and numbers.</summary>
public class ShowTests
{
    [Theory]
    [InlineData(801, "801 g")]
    [InlineData(7, "7 g")]
    [InlineData(4.84, "4.8 g")]
    [InlineData(9.96, "10 g")]
    [InlineData(12.1, "12 g")]
    [InlineData(1200, "1,200 g")]
    [InlineData(-3.04, "\u22123 g")]
    [InlineData(0, "0 g")]
    public void Mass_IsWholeFromTenGrams(double grams, string shown) => Same(shown, Show.Mass(Mass.FromGrams(grams)));

    /// <summary>reference/units.md section 2 (computed there from the definitions).</summary>
    [Theory]
    [InlineData(25, "⅞ oz")]
    [InlineData(50, "1¾ oz")]
    [InlineData(100, "3½ oz")]
    [InlineData(250, "8¾ oz")]
    [InlineData(1000, "2 lb 3¼ oz")]
    [InlineData(453.59237, "1 lb")]
    [InlineData(5, "5 g")]
    public void Ounces_ArePrintedWhereTheyAreNearEnough(double grams, string shown) =>
        Same(shown, Show.Mass(Mass.FromGrams(grams), MeasureSystem.Us));

    [Theory]
    [InlineData(26, "26.0 °C", "26 °C", "79 °F")]
    [InlineData(25, "25.0 °C", "25 °C", "77 °F")]
    [InlineData(23.44, "23.4 °C", "23 °C", "74 °F")]
    [InlineData(-5, "\u22125.0 °C", "\u22125 °C", "23 °F")]
    [InlineData(-0.01, "0.0 °C", "0 °C", "32 °F")]
    public void Temperature_HasOneDecimalComputedAndNoneAsked(double celsius, string computed, string asked, string us)
    {
        Same(computed, Show.Temperature(Temperature.FromCelsius(celsius)));
        Same(asked, Show.TemperatureAsked(Temperature.FromCelsius(celsius)));
        Same(us, Show.Temperature(Temperature.FromCelsius(celsius), MeasureSystem.Us));
    }

    [Theory]
    [InlineData(105, "1 h 45 min", "1:45")]
    [InlineData(45.4, "45 min", "0:45")]
    [InlineData(120, "2 h", "2:00")]
    [InlineData(59.6, "1 h", "1:00")]
    [InlineData(0, "0 min", "0:00")]
    [InlineData(1563, "26 h 3 min", "26:03")]
    [InlineData(20160, "14 days", "336:00")]
    [InlineData(-5, "\u22125 min", "\u22120:05")]
    public void Duration_IsWholeMinutes(double minutes, string prose, string column)
    {
        Same(prose, Show.Duration(Duration.FromMinutes(minutes)));
        Same(column, Show.DurationColumn(Duration.FromMinutes(minutes)));
    }

    [Fact]
    public void Range_HasTo() => Same("1:33 to 1:57", Show.DurationRange(Duration.FromMinutes(93), Duration.FromMinutes(117)));

    [Fact]
    public void OtherFigures_FollowTheHouse()
    {
        Same("67.8 %", Show.Percent(Percent.FromValue(67.75)));
        Same("25.0 %", Show.Percent(Percent.FromValue(25)));
        Same("1,200 m", Show.Altitude(Length.FromMetres(1200)));
        Same("3,937 ft", Show.Altitude(Length.FromMetres(1200), MeasureSystem.Us));
        Same("1 cm", Show.Depth(Length.FromMetres(0.01)));
        Same("6 mm", Show.Depth(Length.FromMetres(0.006)));
        Same("2 °C", Show.Difference(TemperatureDelta.FromKelvins(2)));
        Same("\u22121.6 °C", Show.Difference(TemperatureDelta.FromKelvins(-1.6)));
        Same("87.72 kPa", Show.Pressure(Pressure.FromPascals(87_718)));
    }

    /// <summary>The worked example of the house rules: on the final dough's own flour 250.3 %, so the yeast prints 1.2.</summary>
    [Fact]
    public void Parts_AddUpToTheTotalShown()
    {
        double[] percent = [100, 56.25, 50, 15.625, 15.625, 9.375, 2.1875, 1.25];
        var shown = Show.ShareOut(percent, 1);
        Assert.Equal(250.3, shown.Sum(), 1e-9);
        Assert.Equal(1.2, shown[^1], 1e-12);
    }

    [Fact]
    public void SharedOutParts_AreWithinOneUnitAndAddUp() => Gen.Double[0, 1000].Array[1, 20].Sample(parts =>
    {
        var shown = Show.ShareOut(parts, 1);
        Assert.All(parts.Zip(shown), pair => Assert.InRange(pair.Second - pair.First, -0.1000001, 0.1000001));
        Assert.InRange(shown.Sum() - parts.Sum(), -0.0500001, 0.0500001);
    });

    [Fact]
    public void SharingOutNothing_GivesNothing() => Assert.Empty(Show.ShareOut([], 0));

    [Fact]
    public void SharingOutANegativePart_IsOurFault() => Assert.Throws<ArgumentOutOfRangeException>(() => Show.ShareOut([-1], 0));

    private static void Same(string expected, string actual) => Assert.Equal(expected, actual.Replace('\u00a0', ' '));

    [Theory]
    [InlineData(26, "26\u00a0°C", "78.8\u00a0°F")]
    [InlineData(26.5, "26.5\u00a0°C", "79.7\u00a0°F")]
    [InlineData(25, "25\u00a0°C", "77\u00a0°F")]
    public void WrittenTemperature_KeepsItsTenth(double celsius, string metric, string us)
    {
        Assert.Equal(metric, Show.TemperatureWritten(Temperature.FromCelsius(celsius)));
        Assert.Equal(us, Show.TemperatureWritten(Temperature.FromCelsius(celsius), MeasureSystem.Us));
    }

    /// <summary>801 g on 400 g is 200.25 %: parts cut to their thousandths lose the half that rounds it up.</summary>
    [Fact]
    public void SharedOut_AddUpToWhatTheSumReadsAlone()
    {
        double[] parts = [100.0 / 3, 100.0 / 3, 100.0 / 3, 100 + (1.0 / 7), 0.25 - (1.0 / 7)];
        Assert.Equal(Show.Number(200.25, 1), Show.Number(Show.ShareOut(parts, 1).Sum(), 1));
    }
}
