using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using UnitsNet.Units;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;

namespace Doughwright.Engine.Tests.Formulas.Resizing;

/// <summary>How another size is written: measures, ounces and kilograms as the author has them, and no finer than the scale shows.</summary>
public class ResizeTypedTests
{
    private static readonly Recipe Rolls = PotatoRolls.Sound;

    /// <summary>Two spoons of 13.5 g times 1.3 are 35.1 g, which is 1.24 oz, and 2.6 spoons are no quarter.</summary>
    [Theory]
    [InlineData(0.25 * 28.349523125, "1.25 oz")]
    [InlineData(1, "35 g")]
    [InlineData(0.5, "35 g")]
    public void MeasureThatIsWeighedNow_IsWrittenAsTheScaleShows(double scale, string typed)
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", 500), Of("water", 350), Of("olive oil", 27) with { Typed = "2 tbsp", Household = new(2, "tbsp") })) with { Make = new(10, "rolls", Grams(87)) };
        recipe = recipe with { Home = recipe.Home with { Scale = Grams(scale) } };
        var line = recipe.To(new ResizeWish.Pieces(13)).The("dough", "olive-oil");
        Assert.Equal((typed, LineForm.HouseholdToGrams), (line.Typed, line.Form));
        Assert.Equal(QuantityText.TryMass(typed).Value, line.After);
    }

    /// <summary>17 steps of 0.25 oz are 120.4854732 g: nobody writes that.</summary>
    [Fact]
    public void GramsOnAScaleInOunces_AreWrittenToATenth()
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", 500), Of("sugar", 60))) with { Make = new(10, "rolls", Grams(56)) };
        recipe = recipe with { Home = recipe.Home with { Scale = Grams(0.25 * 28.349523125) } };
        Assert.Equal("120.5 g", recipe.To(new ResizeWish.Pieces(20)).The("dough", "sugar").Typed);
    }

    [Theory]
    [InlineData("2 tbsp", 2.0, 15, "3 tbsp")]
    [InlineData("1 tsp", 1.0, 15, "1.5 tsp")]
    [InlineData("1 tsp", 1.0, 5, "0.5 tsp")]
    [InlineData("1 tsp", 1.0, 14, "14 g")]
    public void HouseholdMeasure_StaysWhereItComesToQuarters(string typed, double amount, int pieces, string after)
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", 500), Of("sugar", 10 * amount) with { Typed = typed, Household = new(amount, typed.Split(' ')[1]) })) with { Make = new(10, "rolls", Grams(80)) };
        Assert.Equal(after, recipe.To(new ResizeWish.Pieces(pieces)).The("dough", "sugar").Typed);
    }

    /// <summary>Oracle for the ounces written: a general units package.</summary>
    [Theory]
    [InlineData("4 oz", 15, "6 oz", 6)]
    [InlineData("14 oz", 20, "1 lb 12 oz", 28)]
    [InlineData("1 lb 4 oz", 20, "2 lb 8 oz", 40)]
    [InlineData("2.5 lb", 15, "3 lb 12 oz", 60)]
    public void Ounces_StayOunces(string typed, int pieces, string after, double ounces)
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", QuantityText.TryMass(typed).Value!.Value.Grams) with { Typed = typed })) with { Make = new(10, "rolls", Grams(80)) };
        var line = recipe.To(new ResizeWish.Pieces(pieces)).The("dough", "strong-white-flour");
        Assert.Equal(after, line.Typed);
        Assert.Equal(UnitsNet.Mass.From(ounces, MassUnit.Ounce).Grams, line.After.Grams, 1e-9);
    }

    [Fact]
    public void Kilograms_StayKilograms()
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", 1200) with { Typed = "1.2 kg" })) with { Make = new(10, "rolls", Grams(120)) };
        Assert.Equal("1.8 kg", recipe.To(new ResizeWish.Pieces(15)).The("dough", "strong-white-flour").Typed);
        Assert.Equal("600 g", recipe.To(new ResizeWish.Pieces(5)).The("dough", "strong-white-flour").Typed);
    }

    [Fact]
    public void SmallDose_KeepsTheDecimalsItNeeds_AndIsTold()
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", 500), Of("water", 330), Of("instant yeast", 0.2))) with { Make = new(10, "rolls", Grams(83)) };
        var resized = recipe.To(new ResizeWish.Pieces(20));
        Assert.Equal(("0.4 g", LineForm.BelowScale), (resized.The("dough", "instant-yeast").Typed, resized.The("dough", "instant-yeast").Form));
        Assert.Contains("dose-below-scale", resized.Kinds());
    }

    [Fact]
    public void CoarserScale_RoundsToItsStep()
    {
        var kitchen = Rolls.Home with { Scale = Grams(5) };
        var resized = Engine.Rehearsals.Resizing.Resize(Rolls, Engine.Ingredients.Larder.Shipped, new(new ResizeWish.Pieces(11)) { Kitchen = kitchen });
        Assert.All(resized.Lines.Where(line => line.Form == LineForm.Scale), line => Assert.Equal(0, line.After.Grams % 5, 1e-9));
        Assert.Equal(LineForm.BelowScale, resized.The("dough", "salt").Form);
    }
}
