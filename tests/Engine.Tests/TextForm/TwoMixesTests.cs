using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>A dough that is mixed twice: flour and water, a rest, then the rest of it.</summary>
public class TwoMixesTests
{
    private static readonly string Text = Texts.Read("tests/data/texts/soaked-loaf.yaml");

    [Fact]
    public void OrdersOfBothMixes_TogetherLeaveNothingOut() => Assert.Empty(RecipeText.Read(Text).Findings);

    [Fact]
    public void LineInNoOrder_IsToldOnce() => Assert.Single(
        RecipeText.Read(Text.Replace("order: salt, instant yeast", "order: salt", StringComparison.Ordinal)).Findings,
        finding => finding.Kind == "order-leaves-out");

    /// <summary>After a night in the fridge at 5 °C the dough is mixed cold, not as warm as its ingredients on the shelf.</summary>
    [Fact]
    public void SecondMix_GoesOnWithTheColdDough()
    {
        var rehearsal = Rehearser.Rehearse(RecipeText.Read(Text).Recipe!, Larder.Shipped);
        Assert.InRange(rehearsal.FindStep("soak")!.EndTemperature!.Value.Celsius, 5, 5.5);
        Assert.InRange(rehearsal.FindStep("mix")!.EndTemperature!.Value.Celsius, 6, 8);
    }

    /// <summary>The second mix takes up the rest only: it does not make unknown how warm the water of the first went in.</summary>
    [Fact]
    public void SecondMix_LeavesKnownHowWarmTheFirstLinesWentIn()
    {
        var recipe = RecipeText.Read(Text).Recipe!;
        var colder = recipe.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(15)), Tap = Temperature.FromCelsius(8) };
        var differences = RehearsalDifferences.Between(Formula.Balance(recipe, Larder.Shipped), Larder.Shipped, Request.Home, new() { Kitchen = colder });
        var water = differences.Find(FigureKind.GoesIn, Request.LineOf("dough", "water"));
        Assert.NotNull(water);
        Assert.NotNull(water.First);
        Assert.NotNull(water.Second);
    }
}
