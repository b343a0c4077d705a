using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Formulas;

/// <summary>Fillings, icings and washes stand on bases of their own, and the two parts of an egg are bought as eggs.</summary>
public class OwnBaseTests
{
    private static Formula Read(string yolk, string white) => Formula.Balance(
        RecipeText.Read($"""
            doughwright: 1
            title: Buns
            home:
              air: 21 C
            parts:
              dough:
                strong white flour: 400 g
                milk: 200 g
                egg yolk: {yolk}
              filling:
                base: sugar
                apple: 300 g, raw
                sugar: 75 g
              icing:
                icing sugar: 100 g
                lemon juice: 20 g
              wash:
                egg white: {white}
            """).Recipe!,
        Larder.Shipped);

    [Fact]
    public void Filling_IsOnTheLineItsAuthorNames_AndAnIcingOnItsLargest()
    {
        var formula = Read("34 g", "33 g");
        Assert.Equal([400, 100], formula.FindComponent("filling")!.Lines.Select(line => Math.Round(line.Percent!.Value.Value, 9)));
        Assert.Equal([100, 20], formula.FindComponent("icing")!.Lines.Select(line => Math.Round(line.Percent!.Value.Value, 9)));
        Assert.Equal(0, formula.FindComponent("filling")!.ShareInDough);
        Assert.Equal(634, formula.Dough.Grams, 1e-9);
    }

    /// <summary>USDA SR28: 17 g of yolk and 33 g of white in a large egg.</summary>
    [Theory]
    [InlineData("2 US large", "1 US large", 2, true)]
    [InlineData("1 US large", "1 US large", 1, false)]
    [InlineData("1 US large", "2 US large", 2, true)]
    public void YolkAndWhite_ComeFromTheSameEggs(string yolk, string white, double eggs, bool leaves)
    {
        var formula = Read(yolk, white);
        Assert.Equal([eggs, eggs], formula.Buy.Select(item => item.TogetherFromEggs).OfType<double>());
        Assert.Equal(leaves, formula.Findings.Any(finding => finding.Kind == "egg-part-left-over"));
    }
}
