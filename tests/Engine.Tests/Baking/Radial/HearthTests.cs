using Doughwright.Engine.Baking;
using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Baking.Radial;

/// <summary>A hot slab under a piece against exact solutions: no vapour, no boiling.</summary>
public class HearthTests
{
    private const double Cold = 20;
    private const double Hot = 60;

    /// <summary>
    /// Two bodies that touch come at once to (e₁T₁ + e₂T₂)/(e₁ + e₂): dough of 25 °C on stone of 250 comes to 158.36 °C and on steel to 232.68,
    /// thermal reference sheet 5.4, computed; the share of the way does not hang on the temperatures.
    /// </summary>
    [Theory]
    [InlineData(1.5, 2300.0 * 880, 0.04, (158.36 - 25) / (250 - 25))]
    [InlineData(60.5, 7854.0 * 434, 0.15, (232.68 - 25) / (250 - 25))]
    public void Surface_OnAnotherBody_ComesToTheContactTemperature(double conductivity, double heatCapacity, double thick, double share)
    {
        var trace = On(new(1, 1e6, thick, conductivity, heatCapacity, 0), 120, 4000, 20);
        Assert.Equal(share, (trace.At(trace.Surface, 0, 20) - Cold) / (Hot - Cold), 3e-3);
    }

    /// <summary>Mean over a wall of Bi 1 that is insulated below, full series, thermal reference sheet 5.2; within what its twelve shells cost.</summary>
    [Fact]
    public void Heat_OfASlabThatCools_FollowsTheSeries()
    {
        var slab = new OvenHearth(1, 100, 0.015, 1.5, 2e6, 0);
        var constant = slab.HeatCapacity * slab.Thick * slab.Thick / slab.Conductivity;
        var run = new HearthRun<Lane1>();
        run.Begin(slab, Lane1.Of(Hot), Lane1.Of(1));
        var full = run.Heat.Value;
        var left = new List<double>();
        for (var step = 1; step <= 1000; step++)
        {
            run.Advance(Lane1.Of(0), Lane1.Of(0), constant / 1000, step == 1 ? 0 : 1);
            if (step is 100 or 200 or 500 or 1000)
            {
                left.Add(run.Heat.Value / full);
            }
        }

        Assert.All(left.Zip([.919597, .851595, .681105, .470397]), pair => Assert.Equal(pair.Second, pair.First, 2e-3));
        Assert.InRange(Math.Abs(full - run.Heat.Value - run.Flows.Given.Value) / run.Flows.Given.Value, 0, 1e-9);
    }

    /// <summary>A slab between two temperatures comes to rest with the heat that its resistances let through: series of contact, stone and air.</summary>
    [Fact]
    public void Flow_ThroughASlabAtRest_IsThatOfItsResistances()
    {
        var slab = new OvenHearth(1, 150, 0.015, 1.5, 2e6, 20);
        var run = new HearthRun<Lane1>();
        run.Begin(slab, Lane1.Of(200), Lane1.Of(1));
        for (var step = 1; step <= 4000; step++)
        {
            run.Advance(Lane1.Of(100), Lane1.Of(200), 20, step == 1 ? 0 : 1);
        }

        var resistance = (1 / 150.0) + (0.015 / 1.5) + (1 / 20.0);
        Assert.Equal(100 / resistance, run.Conducts.Value * (run.Top.Value - 100), 1e-6);
        Assert.InRange(Math.Abs(run.Flows.Taken.Value - run.Flows.Given.Value - run.Heat.Value + (slab.HeatCapacity * slab.Thick * 200)) / run.Flows.Given.Value, 0, 1e-9);
    }

    [Fact]
    public void Core_OnAStone_WithHalfTheStep_HasAQuarterOfTheError()
    {
        double Core(int steps)
        {
            var trace = On(new(0.4, 150, 0.015, 1.5, 2300.0 * 880, 20), 20, steps, 3000, convective: 10, reach: 0.03);
            return trace.At(trace.Core, 0, 3000);
        }

        var order = Math.Log2((Core(50) - Core(100)) / (Core(100) - Core(200)));
        TestContext.Current.TestOutputHelper?.WriteLine($"order in time {order:F3}");
        Assert.InRange(order, 1.7, 2.4);
    }

    private static BakeTrace On(OvenHearth hearth, int cells, int steps, double seconds, double convective = 0, double reach = 0.2)
    {
        double[] Every(double value) => [.. Enumerable.Repeat(value, 8)];
        var lanes = new RadialLanes
        {
            Start = Every(Cold),
            Solids = Every(1150.0 / 1.5),
            Reach = Every(reach),
            Water = Every(0.5),
            Heat = Every((2770 * 1.5) - (0.5 * 4190)),
            HeatSlope = Every(0),
            Conductivity = Every(0.45),
            Gas = Every(0.5),
            Boil = Every(100),
            Pressure = Every(101325),
            Effectiveness = Every(0),
            Skin = Every(0),
            Open = Every(0),
            Convective = Every(convective),
            Radiative = Every(0),
            Oven = Every(Hot),
            DoorDrop = Every(0),
            Steam = Every(0),
            Transfer = Every(1),
            Hearth = hearth,
        };
        return RadialBake.Until(new(1, cells, 0.1 / cells), new(seconds, steps, steps), lanes, seconds);
    }
}
