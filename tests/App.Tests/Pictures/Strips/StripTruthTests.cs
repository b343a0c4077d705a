using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>A strip says nothing that the rehearsal does not know, and nothing in the wrong place.</summary>
public class StripTruthTests
{
    private static Rehearsal At(string recipe, double celsius)
    {
        var written = Rehearsed.Of(recipe).Recipe;
        return Rehearser.Rehearse(written, Larder.Shipped, new() { Kitchen = written.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(celsius)) } });
    }

    /// <summary>What a bake takes is not known, so what is told is what goes into the oven.</summary>
    [Theory]
    [InlineData("hearth-loaf", "905\u00a0g")]
    [InlineData("potato-rolls", "816\u00a0g")]
    public void WeightOut_IsTheWeightBeforeBaking(string recipe, string mass)
    {
        var rehearsal = Rehearsed.Of(recipe);
        var wide = StripCases.Wide(rehearsal);
        Assert.Contains(mass, wide.Texts.Select(text => text.Text));
        Assert.Contains("before baking", wide.Texts.Select(text => text.Text));
        // The tall strip has no room for both: there the time stands, and no weight that could be taken for the bread's.
        var tall = StripCases.Tall(rehearsal).Texts.Select(text => text.Text).ToList();
        Assert.Contains(tall, text => text.StartsWith("after ", StringComparison.Ordinal));
        Assert.DoesNotContain(tall, text => text.StartsWith(mass + ",", StringComparison.Ordinal));
        Assert.Contains(mass + " before baking", wide.Root.Element("desc")!.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(9)]
    [InlineData(10)]
    [InlineData(12)]
    public void Fold_CutsNoComb(double air)
    {
        foreach (var recipe in Rehearsed.Recipes)
        {
            var strip = StripCases.Wide(At(recipe, air));
            var folds = strip.OfClass("fold").Select(slash => DrawnStrip.Points(slash).Average(point => point.X)).ToArray();
            Assert.All(CombsOf(strip), comb => Assert.DoesNotContain(folds, fold => fold > comb.From && fold < comb.To));
        }
    }

    [Theory]
    [InlineData(9)]
    [InlineData(10)]
    [InlineData(21)]
    [InlineData(30)]
    public void NoText_StandsAcrossAnUpright(double air)
    {
        foreach (var recipe in Rehearsed.Recipes)
        {
            var strip = StripCases.Wide(At(recipe, air));
            StripCases.KeepsApart(strip);
            StripCases.StaysOffUprights(strip);
        }
    }

    private static IEnumerable<(double From, double To)> CombsOf(DrawnStrip strip) =>
        strip.OfClass("combbar").Select(bar => (Math.Min(DrawnStrip.At(bar, "x1"), DrawnStrip.At(bar, "x2")), Math.Max(DrawnStrip.At(bar, "x1"), DrawnStrip.At(bar, "x2"))));
}
