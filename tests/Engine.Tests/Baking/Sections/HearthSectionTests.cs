using Doughwright.Engine.Baking;
using Doughwright.Engine.Baking.Sections;
using Doughwright.Engine.Numerics;
using RadialPieces = Doughwright.Engine.Tests.Baking.Radial.Pieces;

namespace Doughwright.Engine.Tests.Baking.Sections;

/// <summary>A piece on a hot slab, over a section.</summary>
public class HearthSectionTests
{
    private static readonly OvenHearth Stone = new(0.3, 150, 0.015, 1.5, 2300.0 * 880, 20);

    /// <summary>
    /// Dough of 25 °C on stone of 250 and on steel comes to 158.36 and 232.68 °C where they touch: two half spaces, thermal reference sheet 5.4, computed.
    /// </summary>
    [Theory]
    [InlineData(1.5, 2300.0 * 880, 0.04, 158.36)]
    [InlineData(60.5, 7854.0 * 434, 0.15, 232.68)]
    public void UnderSide_ComesToTheContactTemperature(double conductivity, double heatCapacity, double thick, double celsius)
    {
        var solid = Pieces.Solid(0.1, 0.08, 0, 0.45, 0.45 / (1150 * 2770.0), 25, 250) with
        {
            Hearth = new(new(1, 1e6, thick, conductivity, heatCapacity, 0), _ => 250),
        };
        var march = Pieces.March(solid, 4, 120, 5e-5, 1e-6);
        var end = SectionBake.Run(march, 20, 0.05, TestContext.Current.CancellationToken).Last();
        Assert.Equal(celsius, end.Bottom, 3e-3 * (250 - 25));
    }

    /// <summary>
    /// What the stone gives is told from the under face alone; a bake on it is quicker than on a tray that keeps the heat of its face away, and slower than on
    /// a face held at the oven's heat.
    /// </summary>
    [Fact]
    public void Bake_OnAStone_LiesBetweenNoHeatAndAllOfIt()
    {
        var on = Dough(250) with { Hearth = new(Stone, _ => 250) };
        var none = Dough(250) with { Bottom = OvenFace.Steady(0.5, 250, open: 0) };
        var held = Dough(250) with { Bottom = OvenFace.Steady(150, 250, open: 0) };
        var (stone, tray, all) = (Minutes(on), Minutes(none), Minutes(held));
        TestContext.Current.TestOutputHelper?.WriteLine($"to 93 °C: on a tray {tray:0.0}, on a stone {stone:0.0}, on a face held at 250 °C {all:0.0} min");
        Assert.InRange(stone, all + 0.2, tray - 1);
    }

    /// <summary>Half the step, a quarter of the error, though piece and slab are solved in turns.</summary>
    [Fact]
    public void Core_OnAStone_WithHalfTheStep_HasAQuarterOfTheError()
    {
        // Short steps first, as every bake has: what touches a hot stone starts with a jump.
        double Core(int steps)
        {
            var solid = Pieces.Solid(0.06, 0.08, 20, 0.45, 1.3e-7, 25, 200) with { Hearth = new(Stone, _ => 200) };
            var march = Pieces.March(solid, 6, 16, 2e-3, 1e-9);
            for (var step = 1.0; step <= steps; step++)
            {
                Assert.True(march.Step(1800 * ((step * step) - ((step - 1) * (step - 1))) / steps / steps));
            }

            return march.CoreCelsius(0.04);
        }

        var order = Math.Log2((Core(50) - Core(100)) / (Core(100) - Core(200)));
        TestContext.Current.TestOutputHelper?.WriteLine($"order in time {order:0.00}");
        Assert.InRange(order, 1.7, 2.4);
    }

    /// <summary>
    /// One radius has one surface, of which the stone takes its share; a section knows the under face itself, which crusts and then takes less. So along a
    /// radius a loaf on a stone is done a sixth sooner: held here as it is known, and told in decision note 21.
    /// </summary>
    [Fact]
    public void Minutes_OnAStone_AlongARadius_AreWithinAQuarterOfTheSections()
    {
        const double Flat = 0.8;
        var under = 1 / (2 * (1 + Flat));
        var loaf = RadialPieces.Cylinder(RadialPieces.Lean(65), 500, 3.2, Flat, 220, 12, under);
        var trace = RadialPieces.Bake(loaf with { Oven = loaf.Oven with { Hearth = Stone with { Share = under } } }, 60);
        var radius = Elementary.Pow(500 * 3.2e-6 / Math.PI / Flat, 1.0 / 3);
        var section = Minutes(Pieces.Dough(radius, Flat * radius, 500, 0.93, 27, 12, 220) with { Hearth = new(Stone, _ => 220) });
        var ratio = trace.When(trace.Core, 0, 93) / 60 / section;
        TestContext.Current.TestOutputHelper?.WriteLine($"radius over section {ratio:0.00}");
        Assert.InRange(ratio, 0.75, 1.1);
    }

    private static BakingPiece Dough(double celsius) => Pieces.Dough(0.09, 0.08, 600, 0.93, 27, 12, celsius);

    private static double Minutes(BakingPiece piece)
    {
        var before = (Seconds: 0.0, Core: 0.0);
        foreach (var moment in SectionBake.Run(Pieces.March(piece, 12, 20, 1e-3), 5400, 20, TestContext.Current.CancellationToken))
        {
            if (moment.Core >= 93)
            {
                return (before.Seconds + ((moment.Seconds - before.Seconds) * (93 - before.Core) / (moment.Core - before.Core))) / 60;
            }

            before = (moment.Seconds, moment.Core);
        }

        return double.PositiveInfinity;
    }
}
