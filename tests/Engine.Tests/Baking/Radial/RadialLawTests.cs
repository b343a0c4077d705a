using CsCheck;
using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Baking.Radial;

/// <summary>What must hold whatever is baked.</summary>
public class RadialLawTests
{
    private static readonly Gen<RadialPiece> AnyPiece =
        from grams in Gen.Double[25, 1500]
        from volume in Gen.Double[1.6, 5]
        from water in Gen.Double[45, 85]
        from start in Gen.Double[4, 35]
        from oven in Gen.Double[140, 280]
        from convective in Gen.Double[3, 25]
        from radiative in Gen.Double[0, 0.9]
        from shut in Gen.Double[0, 0.75]
        from metres in Gen.Double[0, 3000]
        from effectiveness in Gen.Double[0.3, 0.9]
        from skin in Gen.Double[900, 3000]
        select Pieces.SmallLoaf with
        {
            Dough = Pieces.Lean(water),
            Mass = Mass.FromGrams(grams),
            CubicMetres = grams * volume * 1e-6,
            Form = RadialForm.Ball,
            Start = Temperature.FromCelsius(start),
            Pressure = StandardAtmosphere.PressureAt(Length.FromMetres(metres)),
            Effectiveness = effectiveness,
            Skin = skin,
            Oven = new(oven, convective, radiative) { DoorDrop = 30 },
            Shut = shut,
        };

    [Fact]
    public void EveryColumn_AtEveryWidth_HasTheSameDigits() => AnyPiece.Array[1, 20].Sample(
        pieces =>
        {
            BakeTrace At(int width) => Lanes.AtWidth(width, () => Pieces.Bake(pieces, 20));
            var plain = At(1);
            foreach (var width in (int[])[2, 4, 8])
            {
                var packed = At(width);
                Assert.Equal(plain.Core, packed.Core);
                Assert.Equal(plain.Surface, packed.Surface);
                Assert.Equal(plain.Loss, packed.Loss);
                Assert.Equal(plain.Browning, packed.Browning);
            }
        },
        iter: 8,
        threads: 1);

    /// <summary>What the oven gave is in the piece and in the steam that left it, to one part in a thousand million.</summary>
    [Fact]
    public void Heat_IsKept() => Gen.Select(AnyPiece, Gen.Bool).Sample(
        (piece, steamed) =>
        {
            var lanes = RadialPiece.Lanes([steamed ? piece with { Oven = piece.Oven with { Steam = 60000, SteamSeconds = 300 } } : piece]);
            var run = new RadialRun<Lane1>(RadialBake.WorkingGrid(3), new(1800, 400, 400));
            run.Begin(lanes, 0);
            var before = run.Heat.Held.Value;
            for (var step = 1; step <= 400; step++)
            {
                run.Advance(step);
            }

            var (held, given) = (run.Heat.Held.Value, run.Heat.Given.Value);
            Assert.InRange(Math.Abs(held - given) / Math.Abs(held - before), 0, 1e-9);
        },
        iter: 60);

    /// <summary>
    /// In ovens up to twenty times too strong or too weak, in steps far too long, on the grid of a rehearsal and on that on which an answer is looked
    /// for. A lane that is lost is told to be open, so that one in some thousands is no fault; many would leave ranges without an end.
    /// </summary>
    [Fact]
    public void Pieces_ComeToRest_ButForOneInAThousand()
    {
        var (lost, all) = (0, 0);
        Gen.Select(AnyPiece.Array[8], Gen.Double[-3, 3].Array[8], Gen.Double[0.5, 3]).Sample(
            (pieces, logs, hours) =>
            {
                var lanes = RadialPiece.Lanes([.. pieces.Zip(logs, (piece, log) => piece with { Transfer = Elementary.Exp(log) })]);
                foreach (var (grid, steps) in new[] { (RadialBake.RoughGrid(2.3), 40), (RadialBake.WorkingGrid(3), 60), (RadialBake.WorkingGrid(1.6), 100) })
                {
                    var trace = RadialBake.Until(grid, new(3600 * hours, steps, steps), lanes, 3600 * hours);
                    Interlocked.Add(ref lost, Enumerable.Range(0, lanes.Count).Count(trace.IsLost));
                    Interlocked.Add(ref all, lanes.Count);
                }
            },
            iter: 250);
        TestContext.Current.TestOutputHelper?.WriteLine($"{lost} of {all} lanes are lost");
        Assert.InRange(lost, 0, all / 1000);
    }

    /// <summary>
    /// Until the middle itself dries out it is no hotter than its water boils, a little above the boiling point of pure water. Known fault: about one
    /// piece in some thousands, in for an hour in a cool oven, goes up to half a kelvin beyond.
    /// </summary>
    [Fact]
    public void Core_ClimbsToBoilingAndStaysThere()
    {
        var beyond = 0;
        AnyPiece.Sample(
            piece =>
            {
                var trace = Pieces.Bake(piece, 60);
                var boil = SaturatedWater.BoilingPoint(piece.Pressure).Celsius;
                var highest = boil;
                for (var step = 1; step <= trace.Clock.Count; step++)
                {
                    if (trace.At(trace.Loss, 0, trace.Clock.Seconds[step]) <= 0.2)
                    {
                        highest = Math.Max(highest, trace.Core[step * trace.Lanes]);
                    }

                    Assert.InRange(trace.Loss[step * trace.Lanes] - trace.Loss[(step - 1) * trace.Lanes], -1e-3, 0.2);
                }

                Assert.True(highest < boil + 2, $"{highest}, boils at {boil}: {piece}");
                Assert.False(trace.IsLost(0));
                Interlocked.Add(ref beyond, highest < boil + 1.5 ? 0 : 1);
            },
            iter: 100);
        Assert.InRange(beyond, 0, 1);
    }

    [Fact]
    public void Minutes_InAHotterOven_AreFewer() => AnyPiece.Sample(
        piece => Assert.True(Minutes(piece with { Oven = piece.Oven with { Celsius = piece.Oven.Celsius + 20 } }) <= Minutes(piece) * 1.002), iter: 60);

    [Fact]
    public void Minutes_InAnOvenThatGivesMore_AreFewer() => AnyPiece.Sample(
        piece => Assert.True(Minutes(piece with { Transfer = 1.15 }) <= Minutes(piece) * 1.002), iter: 60);

    [Fact]
    public void Minutes_OfABiggerPiece_AreMore() => AnyPiece.Sample(
        piece => Assert.True(Minutes(piece with { Mass = piece.Mass * 1.2, CubicMetres = piece.CubicMetres * 1.2 }) >= Minutes(piece)), iter: 60);

    /// <summary>The grid that rehearsals use against one so fine that it stands for the exact solution of the same equations.</summary>
    [Fact]
    public void WorkingGrid_HasTheCoreWithinThreeTenthsOfAKelvin()
    {
        (string, RadialPiece, double)[] bakes =
        [
            ("small loaf", Pieces.SmallLoaf, 15),
            ("90 g roll", Pieces.SmallLoaf with { Dough = Pieces.Enriched(50, 10, 10), Mass = Mass.FromGrams(90), CubicMetres = 90 * 3.2e-6, Form = RadialForm.Ball, Oven = new(170, 9, 0.45) }, 20),
            ("800 g loaf", Pieces.SmallLoaf with { Dough = Pieces.Lean(70), Mass = Mass.FromGrams(800), CubicMetres = 800 * 3.0e-6, Form = RadialForm.Ball, Oven = new(230, 5, 0.45) }, 45),
            ("tin loaf", Pieces.Cylinder(Pieces.Lean(60), 500, 4.0, 200.0 / 56, 180, 12, shut: 0.75), 40),
        ];
        foreach (var (name, piece, minutes) in bakes)
        {
            var (working, fine) = (Pieces.Bake(piece, minutes), Pieces.Finely([piece], minutes));
            var (worst, at) = (0.0, 0.0);
            for (var step = 1; step <= working.Clock.Count; step++)
            {
                var seconds = working.Clock.Seconds[step];
                var off = Math.Abs(working.Core[step * working.Lanes] - fine.At(fine.Core, 0, seconds));
                (worst, at) = off > worst ? (off, seconds / 60) : (worst, at);
            }

            TestContext.Current.TestOutputHelper?.WriteLine(
                $"{name}: core off by {worst:F3} K at {at:F1} min; 93 °C {working.When(working.Core, 0, 93) / 60:F3} and {fine.When(fine.Core, 0, 93) / 60:F3} min; loss {100 * working.At(working.Loss, 0, minutes * 60):F2} and {100 * fine.At(fine.Loss, 0, minutes * 60):F2} %");
            Assert.InRange(worst, 0, 0.3);
        }
    }

    /// <summary>On the clock of a rehearsal, gone on for as long as the slowest of these takes.</summary>
    private static double Minutes(RadialPiece piece)
    {
        var lanes = RadialPiece.Lanes([piece]);
        var core = new double[lanes.Count];
        Array.Fill(core, SaturatedWater.BoilingPoint(piece.Pressure).Celsius - 7);
        return RadialBake.TimesTo(RadialBake.WorkingGrid(piece.Form.Dimensions), RadialBake.ClockFor(Mass.FromGrams(200), 20), lanes, core)[0] / 60;
    }
}
