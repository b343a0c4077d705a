using CsCheck;
using Doughwright.Engine.Baking.Sections;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Baking.Sections;

/// <summary>What must hold whatever is baked.</summary>
public class SectionLawTests
{
    private static readonly Gen<BakingPiece> AnyPiece =
        from radius in Gen.Double[0.02, 0.12]
        from height in Gen.Double[0.02, 0.2]
        from density in Gen.Double[150, 700]
        from water in Gen.Double[0.35, 0.9]
        from start in Gen.Double[4, 35]
        from oven in Gen.Double[120, 280]
        from coefficient in Gen.Double[6, 40]
        from pascals in Gen.Double[65_000, 103_000]
        select Pieces.Dough(radius, height, 1000 * density * Math.PI * radius * radius * height, water, start, coefficient, oven, pascals);

    /// <summary>Crumb with so little water per dry matter counts as crust.</summary>
    private const double CrustWater = 0.2;

    [Fact]
    public void Heat_InThePiece_IsWhatItReceived() => AnyPiece.Sample(
        piece =>
        {
            var march = Pieces.March(piece);
            var before = march.Heat;
            _ = SectionBake.Run(march, 600, 15).Last();
            Assert.InRange(Math.Abs(march.Heat - before - march.Received), 0, 1e-9 * march.Exchanged);
        },
        iter: 10);

    [Fact]
    public void Core_NeverRisesAboveBoiling_AndNeverFallsBack() => AnyPiece.Sample(
        piece =>
        {
            var march = Pieces.March(piece);
            var (grid, middle) = (SectionBake.WorkingGrid(piece), piece.Height.Metres / 2);
            var before = piece.Start.Celsius;
            foreach (var moment in SectionBake.Run(march, 900, 15))
            {
                // The axis is read off the cells beside it by a parabola, so a tenth either way, and only until the crust has come to those cells.
                if (Enumerable.Range(0, 3).Any(ring => march.State.Water[grid.At(ring, grid.Layers / 2)] < CrustWater))
                {
                    break;
                }

                var water = grid.OnAxis(march.State.Water, middle);
                // What boils falls back to where its vapour presses as the air does once less heat comes through the crust.
                Assert.InRange(moment.Core, Math.Min(before, BoilingPointOf(piece, water, 0)) - 0.1, Math.Max(before, BoilingPointOf(piece, water, MostPressing(piece)) + 0.1));
                before = moment.Core;
            }
        },
        iter: 10);

    /// <summary>
    /// Where the vapour over this crumb presses harder than the air by so many pascals: a little above the boiling point of water, because crumb
    /// holds on to its water, more so the less it has left.
    /// </summary>
    /// <param name="water">Of the core, kg per kg of dry matter.</param>
    private static double BoilingPointOf(BakingPiece piece, double water, double pressing)
    {
        var (low, high) = (60.0, 200.0);
        while (high - low > 1e-6)
        {
            var middle = (low + high) / 2;
            (low, high) = CrumbLaws.Vapour(middle, water).Pascals < piece.Pressure.Pascals + pressing ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Water boils off only as fast as its vapour presses harder than the air: so much harder, in Pa, for all the heat that the oven can give.</summary>
    private static double MostPressing(BakingPiece piece)
    {
        var air = SaturatedWater.BoilingPoint(piece.Pressure).Celsius;
        var wattsPerCubicMetre = piece.Top.HeatAt(0, air).Coefficient * (piece.Top.Air(0) - air) * ((2 / piece.Radius.Metres) + (2 / piece.Height.Metres));
        return wattsPerCubicMetre / (CrumbLaws.VapourContent(air) - (CrumbLaws.WaterHeat * air)) / piece.Laws.BoilRate;
    }

    /// <summary>In the first minute a cold dough takes up water, as a cold window does.</summary>
    [Fact]
    public void Loss_NeverFalls_AndIsNeverMoreThanTheWater() => AnyPiece.Sample(
        piece =>
        {
            var before = 0.0;
            foreach (var moment in SectionBake.Run(Pieces.March(piece), 900, 15))
            {
                Assert.InRange(moment.Loss, before - (moment.Seconds < 60 ? 1e-4 : 1e-9), piece.Water / (1 + piece.Water));
                before = moment.Loss;
            }
        },
        iter: 10);

    /// <summary>A loaf is symmetric where its faces are.</summary>
    [Fact]
    public void Piece_WithEqualFaces_IsEqualAboveAndBelow()
    {
        var piece = Pieces.Dough(0.05, 0.06, 90, 0.6, 26, 15, 200);
        var (grid, march) = (SectionBake.WorkingGrid(piece), Pieces.March(piece));
        _ = SectionBake.Run(march, 600, 10, TestContext.Current.CancellationToken).Last();
        for (var layer = 0; layer < grid.Layers / 2; layer++)
        {
            Assert.Equal(march.State.Celsius[grid.At(0, layer)], march.State.Celsius[grid.At(0, grid.Layers - 1 - layer)], 1e-6);
        }
    }

    /// <summary>What a bake is computed on against a grid twice as fine in both directions with steps a quarter as long: 0.5 K in the core.</summary>
    [Theory]
    [InlineData(0.045, 0.050, 51, 190, 15)]
    [InlineData(0.056, 0.200, 500, 218, 25)]
    [InlineData(0.100, 0.111, 1000, 220, 40)]
    [Trait("Category", "Slow")]
    public void Core_OnTheWorkingGrid_IsWithinHalfAKelvinOfAFineOne(double radius, double height, double grams, double oven, double minutes)
    {
        var piece = Pieces.Dough(radius, height, grams, 0.6, 25, 12, oven);
        SectionMoment[] Bake(CylinderGrid grid, double step) => [.. SectionBake.Run(new(piece, grid), 60 * minutes, step)];
        var working = Bake(SectionBake.WorkingGrid(piece), SectionBake.WorkingStep(piece, 60 * minutes));
        var fine = Bake(new(radius, height, 32, 48, Math.Min(radius, height / 2) / 60), 5);
        Assert.All(working.Where(moment => moment.Seconds > 60), moment =>
        {
            var after = Array.FindIndex(fine, other => other.Seconds >= moment.Seconds - 1e-9);
            var (one, other) = (fine[Math.Max(0, after - 1)], fine[after]);
            var core = after == 0 ? other.Core : one.Core + ((other.Core - one.Core) * (moment.Seconds - one.Seconds) / (other.Seconds - one.Seconds));
            Assert.InRange(moment.Core - core, -0.5, 0.5);
        });
    }

    /// <summary>
    /// In a static oven as hot as any that bread is baked in: 14 W/(m² K) altogether and 250 °C. Once the crust is one cell thick it grows evenly, so
    /// its surface climbs evenly. Told by the cell it stood still at 0.15 K a minute and leapt at 5 K a minute by turns.
    /// </summary>
    [Theory]
    [InlineData(0.056, 0.200, 500, 0.65, 10, 30)]
    [InlineData(0.090, 0.090, 900, 0.75, 20, 40)]
    public void Surface_InAStrongOven_ClimbsEvenly(double radius, double height, double grams, double water, double from, double minutes) => Assert.All(
        Climbs(radius, height, grams, water, from, minutes), kelvinsPerMinute => Assert.InRange(kelvinsPerMinute, 0.5, 3.2));

    /// <summary>The first cell under it dries in one go, which is the one leap there is.</summary>
    [Theory]
    [InlineData(0.040, 0.045, 60, 0.6, 20)]
    [InlineData(0.056, 0.200, 500, 0.65, 30)]
    [InlineData(0.090, 0.090, 900, 0.75, 40)]
    public void Surface_InAStrongOven_NeverFalls_NorLeapsByTenKelvinsAMinute(double radius, double height, double grams, double water, double minutes) => Assert.All(
        Climbs(radius, height, grams, water, 5, minutes), kelvinsPerMinute => Assert.InRange(kelvinsPerMinute, 0, 10));

    private static IEnumerable<double> Climbs(double radius, double height, double grams, double water, double from, double minutes)
    {
        var piece = Pieces.Dough(radius, height, grams, water, 25, 14, 250);
        var bake = SectionBake.Run(Pieces.March(piece), 60 * minutes, SectionBake.WorkingStep(piece, 60 * minutes), TestContext.Current.CancellationToken)
            .Where(moment => moment.Seconds >= 60 * from).ToArray();
        return bake.Zip(bake.Skip(1)).SelectMany(pair => ((Func<SectionMoment, double>[])[moment => moment.Side, moment => moment.Top, moment => moment.Bottom])
            .Select(of => 60 * (of(pair.Second) - of(pair.First)) / (pair.Second.Seconds - pair.First.Seconds)));
    }

    [Fact]
    public void Pressure_OfVapour_RisesAsItsSlopeSays()
    {
        foreach (var celsius in (double[])[5, 25, 60, 95, 100, 130, 200])
        {
            var difference = SaturatedWater.VapourPressure(Temperature.FromCelsius(celsius + 1e-3)).Pascals
                - SaturatedWater.VapourPressure(Temperature.FromCelsius(celsius - 1e-3)).Pascals;
            Assert.Equal(difference / 2e-3, SaturatedWater.VapourPressureAndSlope(celsius).PascalsPerKelvin, 1e-4 * difference / 2e-3);
        }
    }

    /// <summary>Oswin's curve as the thermal reference sheet computes it in 8.4 for b = 4.5: a fresh dough at 25 °C, and drier crumb at 100 °C.</summary>
    [Theory]
    [InlineData(24.85, 0.65, 0.972)]
    [InlineData(99.85, 0.20, 0.824)]
    [InlineData(99.85, 0.05, 0.108)]
    public void Activity_OfWater_FollowsOswin(double celsius, double water, double activity) => Assert.Equal(
        activity, CrumbLaws.Vapour(celsius, water).Pascals / SaturatedWater.VapourPressure(Temperature.FromCelsius(celsius)).Pascals, 1e-3);
}
