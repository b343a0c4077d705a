using CsCheck;
using Doughwright.Engine.Baking;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Baking;

/// <summary>What must hold whatever is baked.</summary>
public class BakeLawTests
{
    private static readonly BakeGrid Grid = BakeModel.Working;

    private static readonly Gen<(double Start, double Oven, double Boil, double Biot)> AnyBake =
        from start in Gen.Double[4, 35]
        from oven in Gen.Double[110, 280]
        from boil in Gen.Double[85, 101]
        from biot in Gen.Double[0.1, 30]
        select (start, oven, boil, biot);

    [Fact]
    public void Core_AtEveryWidth_HasTheSameDigits() => AnyBake.Array[1, 40].Sample(
        bakes =>
        {
            var lanes = Bakes.Many(bakes);
            var digits = Bakes.Core(Grid, lanes, 0.4, width: 1);
            foreach (var width in (int[])[2, 4, 8])
            {
                Assert.Equal(digits, Bakes.Core(Grid, lanes, 0.4, width));
            }
        },
        iter: 50);

    [Fact]
    public void Core_RisesToBoilingAndNeverAbove() => AnyBake.Sample(
        bake =>
        {
            var lanes = Bakes.Many([bake]);
            var core = Bakes.Core(Grid, lanes, 4);
            var before = bake.Start;
            // A hair for rounding, and for the first moments in which the core has not yet felt the oven.
            for (var index = 0; index < core.Length; index += lanes.Count)
            {
                Assert.InRange(core[index], before - 1e-3, bake.Boil + 1e-9);
                before = core[index];
            }
        },
        iter: 200);

    [Fact]
    public void Time_InAHotterOven_IsNeverLonger() =>
        Compare((bake, more) => bake with { Oven = bake.Oven + more }, Order.NeverLonger);

    [Fact]
    public void Time_OfAColderDough_IsNeverShorter() =>
        Compare((bake, more) => bake with { Start = bake.Start - (more / 10) }, Order.NeverShorter, toCelsius: true);

    [Fact]
    public void Time_InAnOvenThatGivesMore_IsNeverLonger() =>
        Compare((bake, more) => bake with { Biot = bake.Biot * (1 + (more / 10)) }, Order.NeverLonger);

    /// <summary>Minutes = Fo R²/α and Bi = h R/k: a bigger piece has more of both. Of a small one that takes longer than the model looks ahead, nothing can be said.</summary>
    [Fact]
    public void Minutes_OfABiggerPiece_AreNeverFewer() => Gen.Select(AnyBake, Gen.Double[1, 3]).Sample((bake, size) =>
    {
        var small = TimeToShare(bake, 0.9);
        var large = TimeToShare(bake with { Biot = bake.Biot * size }, 0.9) * size * size;
        Assert.True(large >= small * (1 - 1e-9) || double.IsInfinity(small), $"{large} < {small}");
    });

    [Fact]
    public void Time_OfAHigherShare_IsLonger() => Gen.Select(AnyBake, Gen.Double[0.3, 0.9], Gen.Double[0.01, 0.08]).Sample(
        (bake, share, more) => Assert.True(TimeToShare(bake, share + more) > TimeToShare(bake, share)));

    /// <summary>An oven below the boiling point in which the core ends below the share: it never gets there, and says so.</summary>
    [Fact]
    public void Time_InAnOvenTooCool_IsInfinite() => Assert.Equal(double.PositiveInfinity, TimeToShare((20, 80, 100, 5), 0.9));

    [Fact]
    public void Loop_AllocatesNothing()
    {
        var lanes = Bakes.Many([(24, 190, 100, 2)]);
        long Bytes(int steps)
        {
            var core = new double[steps * lanes.Count];
            BakeKernel.Run<Lane4>(Grid, lanes, core);
            var before = GC.GetAllocatedBytesForCurrentThread();
            BakeKernel.Run<Lane4>(Grid, lanes, core);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        Assert.Equal(Bytes(1), Bytes(2000));
    }

    private enum Order
    {
        NeverLonger,
        NeverShorter,
    }

    private static void Compare(
        Func<(double Start, double Oven, double Boil, double Biot), double, (double, double, double, double)> change, Order order, bool toCelsius = false) =>
        Gen.Select(AnyBake, Gen.Double[0, 40], Gen.Double[0.5, 0.97]).Sample((bake, more, share) =>
        {
            var core = bake.Start + (share * (bake.Boil - bake.Start));
            var changed = change(bake, more);
            // The same core in °C where the start differs, the same share elsewhere.
            var (one, other) = (TimeToShare(bake, share), TimeToShare(changed, toCelsius ? (core - changed.Item1) / (changed.Item3 - changed.Item1) : share));
            var (shorter, longer) = order == Order.NeverLonger ? (other, one) : (one, other);
            Assert.True(shorter <= longer * (1 + 1e-9), $"{shorter} > {longer}");
        });

    private static double TimeToShare((double Start, double Oven, double Boil, double Biot) bake, double share)
    {
        var lanes = Bakes.Many([bake]);
        return BakeModel.TimeToShare(lanes, [.. Enumerable.Repeat(share, lanes.Count)])[0];
    }
}
