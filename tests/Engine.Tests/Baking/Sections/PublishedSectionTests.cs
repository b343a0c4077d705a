using Doughwright.Engine.Baking.Sections;

namespace Doughwright.Engine.Tests.Baking.Sections;

/// <summary>
/// A small dome loaf at 190 °C: centre, surface and moisture. Zhang and others 2005 (AIChE Journal, DOI 10.1002/aic.10518), curves digitised
/// in an open data set, thermal reference sheet 8.1, marked read. Not in the publication: mass 51 g, a risen cylinder of radius 45 mm and
/// height 50 mm, 10 W/(m² K) on all faces, inferred from its energy balance (bake structure sheet).
/// </summary>
public class PublishedSectionTests
{
    private static readonly double[] Centre = [23.68, 24.57, 28.31, 35.92, 45.77, 57.93, 68.80, 79.81, 88.02, 93.09, 95.41, 96.39, 96.95, 97.34];
    private static readonly double[] Surface = [26.4, 63.4, 71.5, 79.1, 86.2, 90.8, 93.8, 96.1, 99.0, 102.1, 105.5, 108.8, 111.5, 114.1];
    private static readonly (double Minute, double Water)[] Moisture =
        [(2, 0.527), (5.09, 0.509), (7.07, 0.498), (9.08, 0.482), (11.10, 0.461), (13.26, 0.427), (14.99, 0.398)];

    private static readonly Lazy<SectionMoment[]> Bake = new(() => [.. SectionBake.Run(Pieces.March(Loaf(190)), 900, 5)]);

    /// <summary>Aimed at: 4 K at every minute; admitted: 6 K.</summary>
    [Fact]
    public void Core_OfTheLoaf_IsWithinFourKelvinsAtEveryMinute() => Assert.All(
        Centre.Index(), measured => Assert.InRange(At(measured.Index, moment => moment.Core) - measured.Item, -4, 4));

    [Fact]
    public void Surface_OfTheLoaf_IsWithinTenKelvinsFromTheFirstMinute() => Assert.All(
        Surface.Index().Skip(1), measured => Assert.InRange(At(measured.Index, moment => moment.Side) - measured.Item, -10, 10));

    [Fact]
    public void Core_OfTheLoaf_IsAt93After9Minutes() => Assert.InRange(MinutesTo(93, Bake.Value), 8.5, 9.5);

    [Fact]
    public void Moisture_OfTheLoaf_IsWithinItsCurve() => Assert.All(
        Moisture, measured => Assert.InRange(At(measured.Minute, moment => moment.Water) - measured.Water, -0.015, 0.015));

    [Fact]
    public void Loss_OfTheLoaf_Is9PerCent() => Assert.InRange(100 * Bake.Value[^1].Loss, 8.6, 9.6);

    /// <summary>The finer trial model of the bake structure sheet has 16 % for so small a loaf; no measurement.</summary>
    [Fact]
    public void Time_To93InAHotterOven_IsShorterByAboutASixth()
    {
        var hotter = SectionBake.Run(Pieces.March(Loaf(210)), 900, 5, TestContext.Current.CancellationToken).ToArray();
        Assert.InRange(1 - (MinutesTo(93, hotter) / MinutesTo(93, Bake.Value)), 0.08, 0.2);
    }

    /// <summary>
    /// A 500 g white loaf of 60 % water in a tin at 218 °C: 93 °C in the middle after 20.4 to 25.5 min (thermal sheet 8.7; the oven's coefficient is not told, 10 to
    /// 15 is what tin loaves were fitted with). A trial model in two dimensions gave 24.0 at 12 W/(m² K) (bake structure sheet; no measurement).
    /// </summary>
    [Fact]
    public void TinLoaf_IsSetWhenItsTradeSaysSo()
    {
        var tin = OvenFace.Steady(12, 218, open: 0);
        var radius = Math.Pow(500 * 4.0e-6 / Math.PI * 56 / 200, 1.0 / 3);
        var loaf = Pieces.Dough(radius, radius * 200 / 56, 500, 0.913, 27, 12, 218);
        double[] minutes = [.. new[] { loaf with { Top = tin, Bottom = tin, Side = tin with { Open = 0.25 } }, loaf with { Bottom = tin, Side = tin } }
            .Select(piece => MinutesTo(93, [.. SectionBake.Run(Pieces.March(piece), 3600, 20, TestContext.Current.CancellationToken)]))];
        TestContext.Current.TestOutputHelper?.WriteLine($"93 °C after {minutes[0]:0.0} min lying, {minutes[1]:0.0} standing");
        Assert.All(minutes, each => Assert.InRange(each, 20.4, 25.5));
    }

    private static BakingPiece Loaf(double oven) => Pieces.Dough(0.045, 0.050, 51, 0.537, 23.7, 10, oven);

    private static double MinutesTo(double celsius, SectionMoment[] bake)
    {
        var after = Array.FindIndex(bake, moment => moment.Core >= celsius);
        var (one, other) = (bake[after - 1], bake[after]);
        return (one.Seconds + ((other.Seconds - one.Seconds) * (celsius - one.Core) / (other.Core - one.Core))) / 60;
    }

    private static double At(double minute, Func<SectionMoment, double> value)
    {
        var after = Math.Max(1, Array.FindIndex(Bake.Value, moment => moment.Seconds >= (60 * minute) - 1e-9));
        var (one, other) = (Bake.Value[after - 1], Bake.Value[after]);
        return value(one) + ((value(other) - value(one)) * ((60 * minute) - one.Seconds) / (other.Seconds - one.Seconds));
    }
}
