using Doughwright.Engine.Fermentation;

namespace Doughwright.Engine.Tests.Fermentation;

/// <summary>
/// The model against the tabulated results of the sheet it was proposed in (fermentation sheet 14.3 and 6) [computed there by another
/// program with Euler steps of 1 min]: these test the program, not the model.
/// </summary>
public class RiseModelTests
{
    private const double Anchored = 1.74657;

    [Theory]
    [InlineData(0.5, 1016, 585, 394, 298)]
    [InlineData(1, 527, 304, 204, 154)]
    [InlineData(2, 274, 158, 106, 80)]
    [InlineData(3, 187, 107, 72, 55)]
    public void Doubling_AtTheBooksRate_IsAsTabulated(double yeast, double at15, double at20, double at25, double at30)
    {
        double[] celsius = [15, 20, 25, 30];
        double[] tabulated = [at15, at20, at25, at30];
        for (var i = 0; i < celsius.Length; i++)
            IsTabulated(tabulated[i], Plain(yeast, celsius[i]).MinutesTo(2));
    }

    [Fact]
    public void Anchor_At120MinutesAnd25Degrees_IsAsTabulated() => IsTabulated(Anchored, Plain(1, 25).AnchoredAt(120), 1e-3);

    [Theory]
    [InlineData(4, 4430)]
    [InlineData(6, 1953)]
    [InlineData(10, 696)]
    [InlineData(13, 412)]
    [InlineData(15, 310)]
    [InlineData(18, 218)]
    [InlineData(20, 179)]
    [InlineData(22, 150)]
    [InlineData(24, 128.6)]
    [InlineData(26, 112.5)]
    [InlineData(28, 100.1)]
    [InlineData(30, 90.7)]
    [InlineData(32, 83.7)]
    [InlineData(35, 77.0)]
    [InlineData(38, 74.5)]
    public void Doubling_Anchored_IsAsTabulated(double celsius, double tabulated) =>
        IsTabulated(tabulated, (Plain(1, celsius) with { Scale = Anchored }).MinutesTo(2));

    [Theory]
    [InlineData(15, 1.042)]
    [InlineData(30, 1.117)]
    [InlineData(45, 1.230)]
    [InlineData(60, 1.368)]
    [InlineData(90, 1.677)]
    [InlineData(120, 2.000)]
    [InlineData(150, 2.324)]
    [InlineData(180, 2.640)]
    [InlineData(240, 3.199)]
    [InlineData(300, 3.595)]
    [InlineData(360, 3.819)]
    public void Growth_OverTime_IsAsTabulated(double minutes, double tabulated) =>
        IsTabulated(tabulated, (Plain(1, 25) with { Scale = Anchored }).GrowthAt(minutes));

    [Theory]
    [InlineData(60, 1.453)]
    [InlineData(120, 1.720)]
    [InlineData(180, 2.093)]
    [InlineData(240, 2.463)]
    public void Growth_OfADoughMovedToTheCool_IsAsTabulated(double minutes, double tabulated)
    {
        var moved = new RiseCase { Scale = Anchored, CelsiusAt = at => at <= 60 ? 27 : 18, StepMinutes = 1 };
        IsTabulated(tabulated, moved.GrowthAt(minutes));
    }

    [Theory]
    [InlineData(0, 99.5)]
    [InlineData(1, 108.9)]
    [InlineData(2, 120.0)]
    [InlineData(3, 133.8)]
    public void Doubling_BySalt_IsAsTabulated(double salt, double tabulated) =>
        IsTabulated(tabulated, (Plain(1, 25) with { Scale = Anchored, Salt = salt }).MinutesTo(2));

    [Theory]
    [InlineData(0, 113.8)]
    [InlineData(5, 113.5)]
    [InlineData(10, 129.2)]
    [InlineData(15, 153.6)]
    [InlineData(20, 192)]
    [InlineData(25, 260)]
    [InlineData(30, 410)]
    public void Doubling_BySugar_IsAsTabulated(double sugar, double tabulated) => IsTabulated(
        tabulated, (Plain(1, 25) with { Scale = Anchored, Salt = 1.8, Sugar = sugar, Water = 60 - 0.2 * sugar }).MinutesTo(2));

    [Theory]
    [InlineData(2.5, 123.8)]
    [InlineData(3, 120.9)]
    [InlineData(4, 120.0)]
    [InlineData(6, 119.8)]
    public void Doubling_ByHighestGrowth_IsAsTabulated(double ceiling, double tabulated)
    {
        var priors = RiseCase.WithoutGrowth with { Ceiling = new("highest growth", "1", ceiling, 0, PriorLaw.Normal, "") };
        IsTabulated(tabulated, (Plain(1, 25) with { Scale = Anchored, Priors = priors }).MinutesTo(2));
    }

    [Theory]
    [InlineData(0.04, 117.4)]
    [InlineData(0.12, 123.0)]
    public void Doubling_ByAirAtFirst_IsAsTabulated(double air, double tabulated)
    {
        var priors = RiseCase.WithoutGrowth with { Void = new("air", "1", air, 0, PriorLaw.Normal, "") };
        IsTabulated(tabulated, (Plain(1, 25) with { Scale = Anchored, Priors = priors }).MinutesTo(2));
    }

    [Theory]
    [InlineData(0.18, 2, 13.5)]
    [InlineData(0.18, 3, 18.7)]
    [InlineData(0.3, 2, 10.5)]
    [InlineData(0.3, 3, 15.0)]
    public void Poolish_WithGrowingYeast_IsAsTabulated(double yeast, double growth, double hours) =>
        IsTabulated(hours, Poolish(yeast).MinutesTo(growth) / 60);

    [Fact]
    public void Poolish_WithoutGrowingYeast_WouldTakeTwiceAsLong() =>
        IsTabulated(26, (Poolish(0.18) with { Priors = RiseCase.WithoutGrowth }).MinutesTo(2) / 60);

    // fermentation sheet 5.3 [computed]: 120 min at sea level.
    [Theory]
    [InlineData(84_310, 100.0)]
    [InlineData(78_190, 92.8)]
    public void Doubling_ByAltitude_IsAsTabulated(double pascals, double tabulated) =>
        IsTabulated(tabulated, (Plain(1, 25) with { Scale = Anchored, Pascals = pascals }).MinutesTo(2));

    // fermentation sheet 6 [computed]: 12 h in the fridge at 4 °C, cooling from 25 °C with a time constant.
    [Theory]
    [InlineData(60, 1.23)]
    [InlineData(120, 1.59)]
    [InlineData(180, 2.00)]
    public void Growth_OvernightInTheFridge_IsAsTabulated(double timeConstantMinutes, double tabulated)
    {
        var fridge = new RiseCase { Scale = Anchored, CelsiusAt = at => 4 + 21 * Math.Exp(-at / timeConstantMinutes) };
        IsTabulated(tabulated, fridge.GrowthAt(720));
    }

    internal static RiseCase Poolish(double yeast) =>
        new() { Yeast = yeast, Water = 100, Salt = 0, Priors = new(), CelsiusAt = _ => 21, StepMinutes = 3 };

    private static RiseCase Plain(double yeast, double celsius) => new() { Yeast = yeast, CelsiusAt = _ => celsius };

    private static void IsTabulated(double tabulated, double found, double relative = 0.01) =>
        Assert.Equal(tabulated, found, tabulated * relative);
}
