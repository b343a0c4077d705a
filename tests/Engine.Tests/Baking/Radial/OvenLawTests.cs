using CsCheck;
using Doughwright.Engine.Baking;
using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Baking.Radial;

/// <summary>What must hold in any oven: set again, steamed, with a stone in it, under a lid.</summary>
public class OvenLawTests
{
    private static readonly Gen<OvenHearth?> AnyHearth =
        from share in Gen.Double[0, 0.6]
        from contact in Gen.Double[20, 400]
        from thick in Gen.Double[0.002, 0.1]
        from isSteel in Gen.Bool
        from below in Gen.Double[0, 80]
        from isThere in Gen.Bool
        select isThere ? new OvenHearth(share, contact, thick, isSteel ? 60.5 : 1.5, isSteel ? 7854.0 * 434 : 2300.0 * 880, below) : null;

    private static readonly Gen<RadialOven> AnyOven =
        from celsius in Gen.Double[150, 280]
        from convective in Gen.Double[3, 20]
        from radiative in Gen.Double[0.1, 0.9]
        from kelvins in Gen.Double[-60, 60]
        from after in Gen.Double[60, 1200]
        from steam in Gen.Double[20_000, 80_000]
        from steams in Gen.Double[0, 900]
        from lid in Gen.Double[0, 900]
        from flags in Gen.Int[0, 7]
        from hearth in AnyHearth
        select new RadialOven(celsius, convective, radiative)
        {
            DoorDrop = 35,
            DoorSeconds = 40,
            Change = (flags & 1) > 0 ? new(after, kelvins, 2200, 0.25) : null,
            Steam = (flags & 2) > 0 ? steam : 1000,
            SteamSeconds = (flags & 2) > 0 ? steams : 0,
            LidSeconds = (flags & 4) > 0 ? lid : 0,
            Hearth = hearth,
        };

    private static readonly Gen<RadialPiece> AnyPiece =
        from oven in AnyOven
        from grams in Gen.Double[100, 1200]
        from water in Gen.Double[50, 80]
        from shut in Gen.Double[0, 0.7]
        select Pieces.SmallLoaf with
        {
            Dough = Pieces.Lean(water),
            Mass = Mass.FromGrams(grams),
            CubicMetres = grams * 3.2e-6,
            Form = RadialForm.Ball,
            Oven = oven,
            Shut = shut,
        };

    /// <summary>What oven and stone gave is in the piece and in the steam that left it, to one part in a thousand million.</summary>
    [Fact]
    public void Heat_IsKept() => AnyPiece.Sample(
        piece =>
        {
            var run = new RadialRun<Lane1>(RadialBake.WorkingGrid(3), new(1800, 400, 400));
            run.Begin(RadialPiece.Lanes([piece]), 0);
            var before = run.Heat.Held.Value;
            for (var step = 1; step <= 400; step++)
            {
                run.Advance(step);
            }

            var (held, given) = (run.Heat.Held.Value, run.Heat.Given.Value);
            Assert.InRange(Math.Abs(held - given) / Math.Abs(held - before), 0, 1e-9);
        },
        iter: 80);

    [Fact]
    public void EveryColumn_AtEveryWidth_HasTheSameDigits() => AnyPiece.Sample(
        piece =>
        {
            RadialPiece[] pieces = [piece, piece with { Transfer = 1.2 }, piece with { Oven = piece.Oven with { Celsius = piece.Oven.Celsius + 5 } }];
            BakeTrace At(int width) => Lanes.AtWidth(width, () => Pieces.Bake(pieces, 20));
            var plain = At(1);
            foreach (var width in (int[])[2, 4, 8])
            {
                var packed = At(width);
                Assert.Equal(plain.Core, packed.Core);
                Assert.Equal(plain.Surface, packed.Surface);
                Assert.Equal(plain.Loss, packed.Loss);
            }
        },
        iter: 6,
        threads: 1);

    /// <summary>Whatever it is in, a piece is no hotter than the hottest thing it meets, and gains no mass but what steam settles on it.</summary>
    [Fact]
    public void Temperatures_StayBelowTheOven() => AnyPiece.Sample(
        piece =>
        {
            var trace = Pieces.Bake(piece, 30);
            var hottest = piece.Oven.Celsius + Math.Max(0, piece.Oven.Change?.By ?? 0);
            for (var step = 0; step <= trace.Clock.Count; step++)
            {
                Assert.InRange(trace.Surface[step * trace.Lanes], piece.Start.Celsius - 3, hottest + 1);
                Assert.InRange(trace.Loss[step * trace.Lanes], -0.1, 0.6);
            }
        },
        iter: 60);

    /// <summary>As good as none: a stone nothing lies on, a dial set to where it stands, steam and lid for no time.</summary>
    [Fact]
    public void OvenThatIsLeftAlone_BakesAsOneOfWhichNothingIsSaid()
    {
        var plain = Pieces.SmallLoaf with { Oven = new(220, 8, 0.45) { DoorDrop = 35 } };
        var left = plain with { Oven = plain.Oven with { Change = new(300, 0, 2200, 0.25), Hearth = new(0, 150, 0.015, 1.5, 2e6, 20), Steam = 40_000 } };
        Assert.Equal(Pieces.Bake(plain, 20).Core, Pieces.Bake(left, 20).Core);
    }

    /// <summary>Under a lid nothing evaporates below boiling; what boils goes through the gap, since a lid holds no pressure.</summary>
    [Fact]
    public void Loss_UnderALid_BeginsWhenTheOutsideBoils()
    {
        var open = Pieces.SmallLoaf with { Mass = Mass.FromGrams(800), CubicMetres = 2.4e-3, Form = RadialForm.Ball, Oven = new(230, 4.5, 0.45) };
        var (free, lidded) = (Pieces.Bake(open, 45), Pieces.Bake(open with { Oven = open.Oven with { LidSeconds = 1500 } }, 45));
        var boils = lidded.When(lidded.Surface, 0, 100);
        Assert.InRange(boils, 60, 900);
        Assert.Equal(0, lidded.At(lidded.Loss, 0, 0.8 * boils), 1e-9);
        Assert.InRange(free.At(free.Loss, 0, 0.8 * boils), 1e-3, 0.1);
        Assert.InRange(lidded.At(lidded.Loss, 0, 1500), 0.005, free.At(free.Loss, 0, 1500));
        Assert.InRange(lidded.At(lidded.Loss, 0, 2700), 0.03, 0.3);
    }

    [Theory]
    [InlineData(-40)]
    [InlineData(40)]
    public void Minutes_WithASecondDial_LieBetweenThoseOfEither(double by)
    {
        RadialPiece In(double celsius) => Pieces.SmallLoaf with
        {
            Mass = Mass.FromGrams(500),
            CubicMetres = 1.6e-3,
            Form = RadialForm.Ball,
            Oven = new(celsius, 4.5, 0.45) { DoorDrop = 35 },
        };
        double Minutes(RadialPiece piece)
        {
            var trace = Pieces.Bake(piece, 90);
            return trace.When(trace.Core, 0, 93) / 60;
        }

        var set = Minutes(In(220) with { Oven = In(220).Oven with { Change = new(600, by, 2200, 0.25) } });
        var (one, other) = (Minutes(In(220)), Minutes(In(220 + by)));
        Assert.InRange(set, Math.Min(one, other) + 0.1, Math.Max(one, other) - 0.1);
    }

    /// <summary>
    /// Down it follows what a domestic oven loses, some 6 K a minute at 230 °C with 2.5 W/K and 5.5 kJ/K (place-oven), and stops at its dial; up it
    /// heats as from cold, 15 K a minute.
    /// </summary>
    [Fact]
    public void Oven_SetAgain_TakesItsTime()
    {
        var down = new OvenChange(600, -30, 2200, 0.25);
        Assert.Equal(250, down.At(250, 600));
        Assert.InRange(250 - down.At(250, 660), 5.5, 6.5);
        Assert.Equal(220, down.At(250, 1200));
        var up = down with { By = 30 };
        Assert.Equal(265, up.At(250, 660), 1e-9);
        Assert.Equal(280, up.At(250, 1200));
    }

    /// <summary>The formula of the lanes is that of a section.</summary>
    [Theory]
    [InlineData(-45)]
    [InlineData(35)]
    public void Oven_InLanes_IsAsInASection(double by)
    {
        var change = new OvenChange(300, by, 2200, 0.25);
        var lanes = RadialPiece.Lanes([Pieces.SmallLoaf with { Oven = new(230, 5, 0.4) { Change = change } }]);
        var pack = new OvenPack<Lane1>(lanes, 0);
        Assert.All(Enumerable.Range(0, 40), minute => Assert.Equal(change.At(230, 20 * minute), pack.WallsAt(20 * minute).Value, 1e-12));
    }
}
