using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Tests.Recipes;

public class OneOrManyTests
{
    [Theory]
    [InlineData("loaf", "loaves")]
    [InlineData("tin loaf", "tin loaves")]
    [InlineData("ring", "rings")]
    [InlineData("bun with a crossed top", "buns with a crossed top")]
    [InlineData("loaf in a tin", "loaves in a tin")]
    [InlineData("pastry", "pastries")]
    [InlineData("tray", "trays")]
    [InlineData("batch", "batches")]
    [InlineData("brioche", "brioches")]
    [InlineData("slice", "slices")]
    [InlineData("stollen", "stollen")]
    public void Word_FitsTheNumber_ThereAndBack(string one, string many)
    {
        var make = new Make(1, one, Mass.FromGrams(800));
        Assert.Equal(many, make.With(2).What);
        Assert.Equal(one, make.With(2).With(1).What);
        Assert.Equal(many, make.With(2).With(12).What);
        Assert.Equal(one, make.With(1).What);
    }
}
