using Doughwright.Engine.Heat.Warming;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Heat.Warming;

/// <summary>A warm place against what can be written down: exponentials, the two modes of two lumps, and the sum of all heat.</summary>
public class PlaceRunTests
{
    private const double Room = 18;

    private static readonly PlaceBodies Apart = new() { WaterJoulesPerKelvin = 8000, InsideJoulesPerKelvin = 5000, DoughJoulesPerKelvin = 2300 };

    private static PlaceTrace Follow(PlaceBodies bodies, double water, double dough, int minutes, int? renew = null, int lead = 0) =>
        Run(bodies, water, dough, renew, lead).Follow(minutes);

    private static PlaceRun Run(PlaceBodies bodies, double water, double dough, int? renew = null, int lead = 0) => new(
        bodies,
        new(water, Duration.FromMinutes(lead), renew is { } every ? Duration.FromMinutes(every) : null),
        AirProfile.Constant(Temperature.FromCelsius(Room)),
        dough);

    /// <summary>Newton: T = T_r + (T_0 - T_r) exp(-G t/C).</summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(5)]
    [InlineData(50)]
    public void WaterAlone_CoolsByNewtonsLaw(double wattsPerKelvin)
    {
        var trace = Follow(Apart with { WaterToRoom = wattsPerKelvin }, 80, Room, 90);
        for (var minute = 0; minute <= 90; minute += 10)
        {
            var expected = Room + (62 * Math.Exp(-wattsPerKelvin * 60 * minute / 8000));
            Assert.Equal(expected, trace[minute].Water, 1e-4);
        }

        Assert.Equal(Room, trace[90].Inside, 1e-12);
    }

    /// <summary>
    /// Two lumps that lose nothing: their difference goes as exp(-G (1/C_1 + 1/C_2) t), and their heat stays.
    /// </summary>
    [Fact]
    public void BathAndDoughWithoutLoss_MeetByOneExponential()
    {
        var trace = Follow(Apart with { WaterToDough = 2 }, 40, 20, 180);
        for (var minute = 0; minute <= 180; minute += 20)
        {
            var state = trace[minute];
            Assert.Equal(20 * Math.Exp(-2 * ((1 / 8000.0) + (1 / 2300.0)) * 60 * minute), state.Water - state.Dough, 1e-6);
            Assert.Equal((8000 * 40) + (2300 * 20.0), (8000 * state.Water) + (2300 * state.Dough), 1e-6);
        }
    }

    /// <summary>
    /// Bath and dough that both lose heat to the room, by the two eigenvalues of the system: with x and y the distances from the room,
    /// x' = -a x + b y, y' = c x - d y, so that λ = ((a + d) ± sqrt((a - d)² + 4 b c))/2.
    /// </summary>
    [Fact]
    public void BathAndDoughWithLoss_GoByTwoExponentials()
    {
        const double between = 2.0, ofWater = 0.7, ofDough = 0.3;
        var trace = Follow(Apart with { WaterToDough = between, WaterToRoom = ofWater, DoughToRoom = ofDough }, 45, 22, 240);
        var (a, b, c, d) = ((between + ofWater) / 8000, between / 8000, between / 2300, (between + ofDough) / 2300);
        var root = Math.Sqrt(((a - d) * (a - d)) + (4 * b * c));
        var (slow, quick) = ((a + d - root) / 2, (a + d + root) / 2);
        var (x0, y0) = (45 - Room, 22 - Room);
        // x = p exp(-slow t) + q exp(-quick t), y from the first equation.
        var p = (((quick - a) * x0) + (b * y0)) / (quick - slow);
        var q = x0 - p;
        for (var minute = 0; minute <= 240; minute += 15)
        {
            var (one, two) = (p * Math.Exp(-slow * 60 * minute), q * Math.Exp(-quick * 60 * minute));
            Assert.Equal(Room + one + two, trace[minute].Water, 1e-6);
            Assert.Equal(Room + (((a - slow) * one) + ((a - quick) * two)) / b, trace[minute].Dough, 1e-6);
        }
    }

    /// <summary>A lamp alone ends at P/UA above the room.</summary>
    [Fact]
    public void Lamp_SettlesAtItsPowerOverTheLoss()
    {
        var trace = Follow(Apart with { LampWatts = 20, InsideToRoom = 2.5 }, Room, Room, 600);
        Assert.Equal(Room + 8, trace[600].Inside, 1e-5);
    }

    [Fact]
    public void Dough_IsNotTouchedBeforeItGoesIn()
    {
        var trace = Follow(Apart with { WaterToInside = 2, InsideToDough = 1, InsideToRoom = 1 }, 70, 24, 30, lead: 20);
        Assert.Equal(24, trace[0].Dough);
        Assert.True(trace[0].Inside > Room + 3);
        Assert.NotEqual(24, trace[1].Dough);
    }

    /// <summary>What was brought in, less what left, is what is there more: to one part in 1e9 of all heat exchanged.</summary>
    [Theory]
    [InlineData(0, 0, null, 0)]
    [InlineData(15, 0, 40, 0)]
    [InlineData(15, 0.015, 40, 20)]
    [InlineData(0, 0.03, 30, 20)]
    public void Heat_IsNeitherLostNorMade(double lamp, double open, int? renew, int lead)
    {
        var bodies = Apart with
        {
            WaterToInside = 1.1,
            InsideToDough = 0.9,
            WaterToDough = 0.2,
            WaterToRoom = 0.1,
            InsideToRoom = 2.5,
            DoughToRoom = 0.05,
            AirJoulesPerKelvin = 72,
            LampWatts = lamp,
            OpenSquareMetres = open,
        };
        var run = Run(bodies, 85, 23, renew, lead);
        var trace = run.Follow(180);
        var (first, last) = (trace[-lead], trace[180]);
        var more = (8000 * (last.Water - first.Water)) + (5000 * (last.Inside - first.Inside)) + (2300 * (last.Dough - first.Dough));
        var exchanged = run.BroughtJoules + run.LostJoules;
        Assert.True(exchanged > 1e5);
        Assert.Equal(0, (run.BroughtJoules - run.LostJoules - more) / exchanged, 1e-9);
    }

    [Fact]
    public void FreshWater_ComesAtItsTimesOnly()
    {
        var trace = Follow(Apart with { WaterToRoom = 5 }, 60, Room, 100, renew: 40);
        Assert.Equal([0, 40, 80], Enumerable.Range(0, 100).Where(minute => trace[minute].Water == 60));
    }
}
