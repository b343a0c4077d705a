using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;
using static Doughwright.Engine.Tests.Formulas.Swaps.Swaps;

namespace Doughwright.Engine.Tests.Formulas.Swaps;

/// <summary>What a swap cannot hold, what it refuses, and that each is said once and in the right place.</summary>
public class SwapLimitTests
{
    /// <summary>Its salt is not known, so none is taken from the salt, and that is said.</summary>
    [Fact]
    public void SelfRaisingFlour_LeavesTheSalt_AndSaysWhatItBrings()
    {
        var swapped = Swaps.Of(Rolls, "strong white flour=self-raising flour");
        Assert.Equal(7, swapped.Grams("dough", "salt"));
        Assert.Single(swapped.Kinds(), "swap-brings-raising-agent");
        Assert.Single(swapped.Kinds(), "swap-raising-salt-not-known");
        Assert.Contains("swap-loses-raising-agent", Swaps.Of(swapped.Recipe!, "self-raising flour=plain flour").Kinds());
    }

    /// <summary>The salt that is known slows the rise though nobody knows the salt of the flour: about as long as with a plain flour.</summary>
    [Fact]
    public void SaltOfTheOthers_CountsWhereOneIsNotKnown()
    {
        double Bulk(string flour) => Rehearser.RehearseSwapped(Rolls, Swaps.Of(Rolls, $"strong white flour={flour}").Recipe!, Larder.Shipped)
            .Steps.Single(step => step.Id == "bulk").Time!.Value.Likely.Minutes;
        Assert.Equal(1, Bulk("self-raising flour") / Bulk("plain flour"), 0.03);
    }

    /// <summary>A flour with 3 g of salt in 100 g, and nothing else swapped: 12 g come in, and the 7 g give half.</summary>
    [Fact]
    public void SaltOfAFlour_IsHeldAsFarAsItGoes_AndTheRestIsSaid()
    {
        var text = Texts.Read("demo/recipes/potato-rolls.yaml").Replace(
            "parts:\n",
            "own:\n  salted mix:\n    counts as: flour\n    fat: 1.7 g\n    carbohydrate: 70 g\n    of which sugars: 0.3 g\n    fibre: 2.4 g\n    protein: 12 g\n    salt: 3 g\n    allergens: wheat gluten\nparts:\n",
            StringComparison.Ordinal);
        var swapped = Swaps.Of(RecipeText.Read(text).Recipe!, "strong white flour=salted mix");
        Assert.Equal(3.5, swapped.Grams("dough", "salt"));
        Assert.Equal(Grade.Warning, swapped.The("swap-salt-changes").Grade);
        // 400 g x 3 % less what the old flour held, less 3.5 g of salt at 98.4 %: 8.5 g on 400 g.
        Assert.Equal(2.1, swapped.OfDough().Salt!.Value.Value, 0.05);
    }

    /// <summary>250 g of salted butter hold 4.1 g of salt, and of 4 g of salt 2 g at most can go.</summary>
    [Fact]
    public void SaltThatCannotBeHeld_IsSaid_AndTheSaltStaysALine()
    {
        var brioche = RecipeBuilder.Recipe(Dough(Of("strong white flour", 500), Of("water", 250), Of("butter", 250), Of("salt", 4), Of("instant yeast", 5)));
        var swapped = Swaps.Of(brioche, "butter=salted butter");
        Assert.Equal(2, swapped.Grams("dough", "salt"));
        Assert.Contains("swap-salt-changes", swapped.Kinds());
    }

    /// <summary>4 g of instant are 12.1 g of fresh yeast, which hold 8.4 g of water; the dough has no liquid of its own, its scald has.</summary>
    [Fact]
    public void WaterOfFreshYeast_ComesOffTheScald()
    {
        var swapped = Swaps.Of(Rolls, "instant yeast=fresh yeast");
        Assert.Equal(92, swapped.Grams("scald", "water"));
        Assert.InRange(swapped.OfDough().Water!.Value.Value, -0.15, 0.15);
        Assert.DoesNotContain("swap-not-made-good", swapped.Kinds());
        Assert.Contains("Scald the flour", (string[])swapped.The("swap-measured-before").Arguments["steps"]);
    }

    /// <summary>
    /// 150 g of milk with 3.3 % of fat (USDA SR28, whole milk) lose 4.9 g: 3.3 % of the 150 g of poppy seed that its author names as base, and 33 % of
    /// nothing but the 15 g of semolina. A filling is no crust.
    /// </summary>
    [Fact]
    public void AFilling_IsReckonedOnTheBaseItsAuthorNames()
    {
        var text = Texts.Read("demo/recipes/potato-rolls.yaml").Replace(
            "steps:\n", "  poppy:\n    kind: filling\n    base: poppy seeds\n    poppy seeds: 150 g, ground\n    milk: 150 g\n    sugar: 60 g\n    semolina: 15 g\nsteps:\n", StringComparison.Ordinal);
        var swapped = Swaps.Of(RecipeText.Read(text).Recipe!, "milk@poppy=water");
        Assert.Equal(-3.3, swapped.Residuals.Single(residual => residual.Component == "poppy").Fat!.Value.Value, 0.3);
        Assert.DoesNotContain(swapped.Consequences, finding => finding is { Kind: "swap-part-salt-changes", Grade: Grade.Warning });
        Assert.DoesNotContain("swap-browns-less", swapped.Kinds());
        Assert.Contains("swap-browns-less", Swaps.Of(Buns, "milk=water").Kinds());
    }

    [Theory]
    [InlineData("rice flour")]
    [InlineData("buckwheat flour")]
    [InlineData("maize flour")]
    [InlineData("oat flour")]
    public void FlourWithoutGluten_CannotCarryTheDough(string flour)
    {
        var swapped = Swaps.Of(Rolls, $"strong white flour={flour}");
        Assert.Equal(["swap-leaves-no-gluten"], swapped.Kinds());
        Assert.True(swapped.IsRefused);
    }

    [Fact]
    public void LittleOfAFlourWithoutGluten_IsAWarning()
    {
        var swapped = Swaps.Of(HearthLoaf, "wholemeal flour=rice flour");
        Assert.False(swapped.IsRefused);
        Assert.Contains("swap-loses-gluten", swapped.Kinds());
    }

    [Theory]
    [InlineData("wholemeal spelt flour", "swap-flour-drinks-up-to-more")]
    [InlineData("enriched bread flour", "swap-flour-drinks-alike")]
    [InlineData("plain flour", "swap-flour-drinks-less")]
    public void ARangeThatBeginsAtNothing_IsToldByItsOtherEnd(string flour, string kind) =>
        Assert.Contains(kind, Swaps.Of(Rolls, $"strong white flour={flour}").Kinds());

    [Fact]
    public void SugarThatDoesNotDissolve_IsGritInAGlaze_AndNoneInADough()
    {
        Assert.Contains("swap-stays-gritty", Swaps.Of(Ring, "icing sugar=sugar").Kinds());
        Assert.DoesNotContain("swap-part-not-made-good", Swaps.Of(Ring, "icing sugar=sugar").Kinds());
        Assert.Contains("swap-icing-runs", Swaps.Of(Ring, "icing sugar=honey").Kinds());
        Assert.DoesNotContain("swap-stays-gritty", Swaps.Of(Ring, "sugar=icing sugar").Kinds());
        var dough = RecipeBuilder.Recipe(Dough(Of("strong white flour", 500), Of("water", 300), Of("icing sugar", 30)));
        Assert.DoesNotContain("swap-stays-gritty", Swaps.Of(dough, "icing sugar=sugar").Kinds());
    }

    /// <summary>Soda is three to four times as strong as baking powder: common practice, no source.</summary>
    [Theory]
    [InlineData("baking powder", "bicarbonate of soda", true)]
    [InlineData("bicarbonate of soda", "baking powder", true)]
    [InlineData("cinnamon", "baking powder", true)]
    [InlineData("baking powder", "baking powder with aluminium", false)]
    public void WhatRaises_IsHeld(string what, string by, bool isRefused)
    {
        var scones = RecipeBuilder.Recipe(Dough(Of("plain flour", 500), Of("buttermilk", 300), Of(what, 15)));
        Assert.Equal(isRefused, Swaps.Of(scones, $"{what}={by}").Kinds().Contains("swap-raising-held"));
    }

    [Fact]
    public void WhatIsSour_IsMissedBySoda_WhereThereIsSome()
    {
        var scones = RecipeBuilder.Recipe(Dough(Of("plain flour", 500), Of("buttermilk", 300), Of("bicarbonate of soda", 6)));
        Assert.Equal("bicarbonate of soda", Swaps.Of(scones, "buttermilk=milk").The("swap-loses-acid").Arguments["soda"]);
        Assert.Contains("swap-tastes-less-sour", Swaps.Of(Ring, "lemon juice=water").Kinds());
        Assert.DoesNotContain("swap-loses-acid", Swaps.Of(Ring, "lemon juice=water").Kinds());
    }

    /// <summary>Rye comes into poolish and dough, milk stands in dough and wash.</summary>
    [Theory]
    [InlineData("swap-brings-allergen", "hearth", "strong white flour=wholemeal rye flour")]
    [InlineData("swap-loses-gluten", "hearth", "strong white flour=wholemeal rye flour")]
    [InlineData("swap-composition-not-known", "ring", "milk=oat drink")]
    [InlineData("swap-stand-in-not-known-at-all", "ring", "milk=moon dust")]
    [InlineData("swap-allergen-stays", "ring", "milk=water")]
    [InlineData("swap-stand-in-not-clear", "hearth", "strong white flour=rye flour")]
    public void WhatIsTheSameInEveryPart_IsSaidOnce(string kind, string recipe, string wish) =>
        Assert.Single(Swaps.Of(recipe == "ring" ? Ring : HearthLoaf, wish).Kinds(), kind);

    [Fact]
    public void WordsThatStillSpeakOfIt_AreToldByWhatTheyAre()
    {
        var swapped = Swaps.Of(Rolls, "potato=butternut squash, baked, mashed");
        Assert.Equal("title", swapped.The("swap-title-still-says").Place);
        Assert.Equal("parts.potato", swapped.The("swap-part-still-called").Place);
        Assert.Equal("steps.peel", swapped.The("swap-words-still-say").Place);
    }

    /// <summary>The sugar that is cooked with the plums is not the icing sugar, the strong white flour no egg white, and salted butter is butter.</summary>
    [Fact]
    public void WordsThatMeanSomethingElse_AreNotTold()
    {
        Assert.DoesNotContain(Swaps.Of(Ring, "icing sugar=sugar").Consequences, finding => finding is { Kind: "swap-words-still-say", Place: "steps.cook" });
        Assert.DoesNotContain(
            Swaps.Of(Buns with { Words = "Take a white flour." }, "egg white=milk").Consequences, finding => finding.Kind == "swap-opening-still-says");
        Assert.DoesNotContain("swap-words-still-say", Swaps.Of(Buns, "butter=salted butter").Kinds());
    }
}
