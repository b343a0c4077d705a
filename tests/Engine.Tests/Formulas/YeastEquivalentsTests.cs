using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Tests.Formulas;

public class YeastEquivalentsTests
{
    // 100 : 40 : 33 [read: two trade texts]: 30 g fresh = 12.0 g active dry = 9.9 g instant.
    [Fact]
    public void Of30GramsFresh_AreTheTradesTable()
    {
        var kinds = YeastEquivalents.FromFresh(Mass.FromGrams(30));
        Assert.Equal(12.0, kinds.ActiveDry.Grams, 0.05);
        Assert.Equal(9.9, kinds.Instant.Grams, 0.05);
        Assert.Equal(30, YeastEquivalents.ToFresh(Mass.FromGrams(9.9), YeastKind.Instant).Grams, 1e-12);
    }

    [Fact]
    public void Of4GramsInstant_AreTwelveGramsFresh()
    {
        var fresh = YeastEquivalents.ToFresh(Mass.FromGrams(4), YeastKind.Instant);
        Assert.Equal(12.1, fresh.Grams, 0.05);
        Assert.Equal(4.8, YeastEquivalents.FromFresh(fresh).ActiveDry.Grams, 0.05);
    }
}
