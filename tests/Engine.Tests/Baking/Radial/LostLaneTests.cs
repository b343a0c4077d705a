using Doughwright.Engine.Baking.Radial;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Tests.Baking.Radial;

/// <summary>A lane whose heat does not come to rest is lost from there on, and says so; its neighbours notice nothing.</summary>
public class LostLaneTests
{
    /// <summary>One whose skin dries out beside one that is done long before.</summary>
    private static readonly RadialPiece[] Pair = [Pieces.SmallLoaf, Pieces.SmallLoaf with { Oven = new(120, 3, 0) }];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(8)]
    public void Lane_ThatDoesNotComeToRest_IsNoNumberFromThereOn(int width)
    {
        var (whole, cut) = (Bake(width), NewtonPasses.AtMost(1, () => Bake(width)));
        Assert.False(whole.IsLost(0));
        Assert.True(cut.IsLost(0));
        Assert.False(cut.IsLost(1));
        var last = whole.Clock.Count;
        Assert.Equal(whole.Core[(last * whole.Lanes) + 1], cut.Core[(last * cut.Lanes) + 1]);
        var lost = Enumerable.Range(0, last + 1).First(step => double.IsNaN(cut.Core[step * cut.Lanes]));
        Assert.InRange(lost, 2, last);
        for (var step = 0; step <= last; step++)
        {
            foreach (var (told, all) in new[] { (cut.Core, whole.Core), (cut.Surface, whole.Surface), (cut.Mean, whole.Mean), (cut.Loss, whole.Loss), (cut.Browning, whole.Browning) })
            {
                Assert.Equal(step < lost ? all[step * whole.Lanes] : double.NaN, told[step * cut.Lanes]);
            }
        }
    }

    [Fact]
    public void TimeToACore_ThatNobodyKnows_IsNoNumber()
    {
        double[] TimesTo(double core) => RadialBake.TimesTo(RadialBake.WorkingGrid(3), Clock, RadialPiece.Lanes(Pair), [core, core, core, core, core, core, core, core]);
        var (hot, warm) = NewtonPasses.AtMost(1, () => (TimesTo(98), TimesTo(25)));
        Assert.True(double.IsNaN(hot[0]));
        Assert.InRange(warm[0], 1, 300);
        Assert.InRange(TimesTo(98)[0], 60, 1800);
    }

    private static BakeClock Clock { get; } = new(1800, 100, 100);

    private static BakeTrace Bake(int width) => Lanes.AtWidth(width, () => RadialBake.Until(RadialBake.WorkingGrid(3), Clock, RadialPiece.Lanes(Pair), 1800));
}
