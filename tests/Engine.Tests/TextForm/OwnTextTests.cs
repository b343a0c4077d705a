using CsCheck;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>An own ingredient as a text, and what it comes to.</summary>
public class OwnTextTests
{
    private const string Head = "doughwright: 1\ningredient: mine\n";

    [Fact]
    public void Ingredient_WrittenAndRead_IsTheSame() => RecipeGen.OwnIngredients.Sample(own =>
    {
        var text = IngredientText.Write(own);
        var reading = IngredientText.Read(text);
        Assert.DoesNotContain(reading.Findings, finding => finding.NotUnderstood);
        Assert.Equal(RecipePicture.Of(own), RecipePicture.Of(reading.Own));
        Assert.Equal(text, IngredientText.Write(reading.Own!));
    });

    [Fact]
    public void Fields_AreTheTextAgain() => RecipeGen.OwnIngredients.Sample(own =>
    {
        var text = IngredientText.Write(own);
        var fields = IngredientText.Fields(IngredientText.Read(text).Document!);
        Assert.Equal(text, IngredientText.OfFields(IngredientText.Keys.Select(key => (key, fields.GetValueOrDefault(key, "")))));
    });

    [Fact]
    public void FieldsOfAKitchen_AreTheTextAgain() => RecipeGen.Kitchen.Sample(kitchen =>
    {
        var text = KitchenText.Write(kitchen);
        var fields = KitchenText.Fields(KitchenText.Read(text).Document!);
        Assert.Equal(text, KitchenText.OfFields(KitchenText.Keys.Select(key => (key, fields.GetValueOrDefault(key, "")))));
    });

    /// <summary>Conservation of mass: 250 g of butter with 17.94 % water (USDA SR28, NDB 01145) that come to 206 g have lost 44 of 44.85 g of it.</summary>
    [Fact]
    public void WhatIsMade_KeepsItsSolids()
    {
        var raw = Larder.Shipped.Find("unsalted butter", []).Ingredient!.Composition;
        var made = Own("counts as: fat\nmade from: unsalted butter\nweighed: 250 g before and 206 g after\n").Ingredient;
        Assert.Equal(250 * raw.Fat!.Value, 206 * made.Composition.Fat!.Value, 9);
        Assert.Equal((250 * raw.Water!.Value) - 4400, 206 * made.Composition.Water!.Value, 9);
        Assert.Equal(["milk"], made.Allergens);
        Assert.True(made.MeltsAsButter);
    }

    /// <summary>A figure in 100 ml over what 100 ml weigh, by what "in 100 g" means.</summary>
    [Fact]
    public void LabelInMillilitres_IsOnWhatTheyWeigh()
    {
        var composition = Own("counts as: fat\n100 ml weigh: 92 g\nfat: 92 g\ncarbohydrate: 0 g\nfibre: 0 g\nprotein: 0 g\nsalt: 0 g\n").Ingredient.Composition;
        Assert.Equal(100, composition.Fat!.Value, 9);
        Assert.Equal(0, composition.Water!.Value, 9);
    }

    [Fact]
    public void DriedSample_TellsItsWater_AndAshTakesThePlaceOfSalt()
    {
        var dried = Own("counts as: flour\nprotein: 12 g\ndried: 50 g before and 43 g after\n").Ingredient.Composition;
        Assert.Equal(14, dried.Water!.Value, 9);
        Assert.Null(dried.Fat);
        var left = Own("counts as: flour\nfat: 1 g\ncarbohydrate: 70 g\nfibre: 3 g\nprotein: 11 g\nsalt: 0 g\nash: 0.6 g\n").Ingredient.Composition;
        Assert.Equal(100 - 1 - 73 - 11 - 0.6, left.Water!.Value, 9);
        Assert.Equal(0.6, left.Ash);
    }

    [Fact]
    public void ReadingOfAScale_LeavesTheLossOpenBothWays()
    {
        var (low, high) = new Weighings(Mass.FromGrams(20), Mass.FromGrams(17)).LossOnAScaleOf(Mass.FromGrams(1));
        Assert.Equal(100 * (19.5 - 17.5) / 19.5, low, 9);
        Assert.Equal(100 * (20.5 - 16.5) / 20.5, high, 9);
    }

    [Fact]
    public void WhatAFlourTakesUp_ChangesNoFigure()
    {
        var without = Own("counts as: flour\nprotein: 12 g\n");
        var with = Own("counts as: flour\nlot: of May\nprotein: 12 g\nabsorption: 61.5 %, farinograph at 14 % moisture\n");
        Assert.Equal(without.Ingredient.Composition, with.Ingredient.Composition);
        Assert.Equal((61.5, "farinograph at 14 % moisture", "of May"), (with.Absorption!.Share.Value, with.Absorption.Words, with.Lot));
    }

    [Theory]
    [InlineData("counts as: flour\nwater: 14 g\ndried: 50 g before and 43 g after\n", "own-water-twice")]
    [InlineData("counts as: flour\ndried: 50 g to 43 g\n", "weighings-not-understood")]
    [InlineData("counts as: flour\ndried: 43 g before and 50 g after\n", "dried-gained")]
    [InlineData("counts as: fat\nmade from: unsalted butter\n", "made-half-said")]
    [InlineData("counts as: fat\nweighed: 250 g before and 206 g after\n", "made-half-said")]
    [InlineData("counts as: fat\nmade from: moonlight\nweighed: 250 g before and 206 g after\n", "made-from-unknown")]
    [InlineData("counts as: fat\nmade from: unsalted butter\nweighed: 250 g before and 200 g after\n", "made-cannot-be")]
    [InlineData("counts as: fat\nfat: 80 g\nmade from: unsalted butter\nweighed: 250 g before and 206 g after\n", "made-and-label")]
    [InlineData("counts as: fat\n100 ml weigh: 3 g\nfat: 2 g\n", "hundred-millilitres-outside-limits")]
    [InlineData("counts as: flour\nprotein: 12 g\nabsorption: 300 %\n", "absorption-outside-limits")]
    [InlineData("counts as: flour\ndried: 0 g before and 0 g after\n", "weighing-outside-limits")]
    [InlineData("counts as: fat\n100 ml weigh: 92 g\nfat: 99 g\n", "label-above-hundred")]
    [InlineData("counts as: salt\nsalt: 5 g\nash: 2 g\n", "label-part-above-whole")]
    public void WhatCannotBe_IsTold(string said, string kind) => Assert.Contains(IngredientText.Read(Head + said).Findings, finding => finding.Kind == kind);

    [Theory]
    [InlineData("doughwright: 1\ncounts as: fat\nfat: 80 g\n")]
    [InlineData("doughwright: 1\ningredient: '?'\ncounts as: fat\nfat: 80 g\n")]
    public void WithoutAName_ThereIsNoIngredient(string text)
    {
        var reading = IngredientText.Read(text);
        Assert.Null(reading.Own);
        Assert.Contains(reading.Findings, finding => finding.Kind == "ingredient-name-missing");
    }

    private static Doughwright.Engine.Recipes.OwnIngredient Own(string said)
    {
        var reading = IngredientText.Read(Head + said);
        Assert.Empty(reading.Findings);
        return reading.Own!;
    }
}
