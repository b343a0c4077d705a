using Doughwright.Engine.Recipes;
using static Doughwright.Engine.Tests.Formulas.Swaps.Swaps;

namespace Doughwright.Engine.Tests.Formulas.Swaps;

/// <summary>
/// The swaps that readers ask for, each worked by hand from the compositions of USDA SR28 (butter 17.94 water and 81.11 fat, and so on) to what
/// the solver has to find.
/// </summary>
public class SwapCaseTests
{
    /// <summary>50 g of butter hold 40.6 g of fat and 9.0 g of water: 41 g of oil and 9 g of water.</summary>
    [Fact]
    public void OilForButterInADough_MatchesTheFatAndGivesTheWaterBack()
    {
        var swapped = Of(Rolls, "butter=olive oil");
        Assert.Equal(41, swapped.Grams("dough", "olive-oil"));
        Assert.Equal(9, swapped.Grams("dough", "water"));
        Assert.InRange(swapped.OfDough().Fat!.Value.Value, -0.15, 0.15);
        Assert.InRange(swapped.OfDough().Water!.Value.Value, -0.15, 0.15);
        Assert.Contains("swap-handles-softer", swapped.Kinds());
        Assert.Contains("swap-cannot-be-creamed", swapped.Kinds());
        Assert.Contains("swap-loses-butter-flavour", swapped.Kinds());
        Assert.Contains("swap-adds-water", swapped.Kinds());
        Assert.Equal(new[] { "milk" }, (string[])swapped.The("swap-allergen-stays").Arguments["allergens"]);
    }

    [Fact]
    public void OilForButterInAFilling_IsRefusedWithTheReason()
    {
        var swapped = Of(Buns, "butter@filling=sunflower oil");
        Assert.True(swapped.IsRefused);
        Assert.Equal(["swap-filling-stands-by-fat"], swapped.Kinds());
    }

    [Fact]
    public void OilForButterInAnIcing_IsRefusedWithTheReason() =>
        Assert.Equal(["swap-icing-stands-by-fat"], Of(Buns, "butter@icing=sunflower oil").Kinds());

    [Fact]
    public void OilForButterEverywhere_IsRefusedForFillingAndIcing_AndNothingIsHalfDone() =>
        Assert.Equal(["swap-filling-stands-by-fat", "swap-icing-stands-by-fat"], Of(Buns, "butter=sunflower oil").Kinds());

    /// <summary>100 : 33 by mass (yeast-equivalence): 4 g instant are 12.1 g fresh, and 14 g fresh are 4.6 g instant or 5.6 g active dry.</summary>
    [Fact]
    public void Yeasts_StandInByWhatTheyRaise()
    {
        Assert.Equal(12, Of(Rolls, "instant yeast=fresh yeast").Grams("dough", "fresh-yeast"));
        var instant = Of(Buns, "fresh yeast=instant yeast");
        Assert.Equal(4.6, instant.Grams("dough", "instant-yeast"));
        Assert.Contains("swap-yeast-goes-in-dry", instant.Kinds());
        Assert.Contains("swap-yeast-in-sweet-dough", instant.Kinds());
        var dry = Of(Buns, "fresh yeast=active dry yeast");
        Assert.Equal(5.6, dry.Grams("dough", "active-dry-yeast"));
        Assert.Contains("swap-yeast-is-dissolved", dry.Kinds());
        Assert.Contains("swap-words-still-say", dry.Kinds());
    }

    /// <summary>160 g of boiled potato hold 123.9 g of water; baked butternut is 87.8 % water, so 141 g hold as much.</summary>
    [Fact]
    public void SquashForPotato_GoesByTheirWater()
    {
        var swapped = Of(Rolls, "potato=butternut squash, baked, mashed");
        Assert.Equal(141, swapped.Grams("potato", "butternut-squash"));
        Assert.InRange(swapped.OfDough().Water!.Value.Value, -0.15, 0.15);
        Assert.Equal(["boiled", "mashed", "peeled"], Rolls.FindComponent("potato")!.Lines[0].Conditions.Order());
        Assert.Equal(["baked", "mashed"], swapped.Recipe!.FindComponent("potato")!.Lines[0].Conditions);
        Assert.Contains(swapped.Consequences, finding => finding is { Kind: "swap-step-written-for", Place: "steps.boil" });
    }

    [Fact]
    public void SquashWithoutSayingHowCooked_IsAskedAbout() =>
        Assert.Contains("swap-stand-in-not-clear", Of(Rolls, "potato=butternut squash").Kinds());

    /// <summary>30 g of sugar are 29.9 g sweet; honey is 82.12 % sweet and 17.1 % water, so 36 g.</summary>
    [Fact]
    public void HoneyForSugar_MatchesTheSweetness_AndSaysWhatElse()
    {
        var swapped = Of(Rolls, "sugar=honey");
        Assert.InRange(swapped.Grams("dough", "honey"), 34, 37);
        Assert.Contains("swap-tastes-sweeter", swapped.Kinds());
        Assert.Contains("swap-browns-more", swapped.Kinds());
    }

    [Fact]
    public void Honey_IsNotForTheYoungest() => Assert.True(Of(Rolls, "sugar=honey").The("swap-brings-honey").Safety);

    /// <summary>Two flours become one: one line, and one in the order.</summary>
    [Fact]
    public void WhatIsThereAlready_GetsMore_AndNoSecondLine()
    {
        var swapped = Of(HearthLoaf, "strong white flour@dough=wholemeal flour");
        Assert.Equal(325, swapped.Grams("dough", "wholemeal-flour"));
        Assert.Equal(["poolish", "water", "instant-yeast", "wholemeal-flour", "salt"], swapped.Recipe!.FindStep("mix")!.Order);
        Assert.Equal([Engine.Formulas.Swaps.LineChange.Removed, Engine.Formulas.Swaps.LineChange.Corrected], swapped.Lines.Select(line => line.Change));
    }

    /// <summary>A part of which a weight is taken: the same share of it goes in.</summary>
    [Fact]
    public void WeightTakenOfASwappedPart_GoesWithIt()
    {
        var recipe = RecipeBuilder.Recipe(
            RecipeBuilder.Part("mash", ComponentKind.Puree, RecipeBuilder.Of("potato", 200, "boiled")),
            RecipeBuilder.Dough(RecipeBuilder.Of("strong white flour", 400), RecipeBuilder.PartOf("mash", 160), RecipeBuilder.Of("salt", 7)));
        var swapped = Of(recipe, "potato=baked butternut squash");
        Assert.Equal(177, swapped.Grams("mash", "baked-butternut-squash"));
        Assert.Equal(142, swapped.Grams("dough", "mash"));
    }

    /// <summary>The tin loaf's own milk takes less, where there is some: 25 g of sugar in honey bring 5.2 g of water.</summary>
    [Fact]
    public void HoneyForSugar_TakesItsWaterFromTheLiquid()
    {
        var swapped = Of(TinLoaf, "sugar=honey");
        Assert.InRange(swapped.Grams("dough", "honey"), 29, 32);
        Assert.InRange(swapped.Grams("dough", "milk"), 218, 222);
        Assert.InRange(swapped.OfDough().Water!.Value.Value, -0.25, 0.25);
    }

    /// <summary>50 g of salted butter hold 0.82 g of salt, which the salt gives: 7 - 0.8 = 6.2 g.</summary>
    [Fact]
    public void SaltedButter_TakesItsSaltFromTheSalt()
    {
        var swapped = Of(Rolls, "butter=salted butter");
        Assert.Equal(50, swapped.Grams("dough", "salted-butter"), 1.0);
        Assert.Equal(6.2, swapped.Grams("dough", "salt"));
        Assert.InRange(swapped.OfDough().Salt!.Value.Value, -0.02, 0.02);
    }

    /// <summary>100 g of milk are 88.1 g of water, 3.3 g fat, 5.1 g sugar: water, more butter, more sugar.</summary>
    [Fact]
    public void WaterForMilk_IsMadeGoodWithButterAndSugar()
    {
        var swapped = Of(TinLoaf, "milk@dough=water");
        // 226 g of milk: 199.2 g water; 7.4 g of fat are 9.1 g of butter, which holds 1.6 g of water; 11.4 g of sugar.
        Assert.Equal(198, swapped.Grams("dough", "water"), 1.0);
        Assert.Equal(49, swapped.Grams("dough", "butter"), 1.0);
        Assert.Equal(36, swapped.Grams("dough", "sugar"), 1.0);
    }

    [Fact]
    public void ButtermilkForMilk_BringsAcid() => Assert.Contains("swap-brings-acid", Of(TinLoaf, "milk@dough=buttermilk").Kinds());

    /// <summary>Plain for strong: 2 to 4 points of water less (common practice), and the flour is held.</summary>
    [Fact]
    public void PlainForStrongFlour_IsARangeAndChangesNoMass()
    {
        var swapped = Of(Buns, "strong white flour=plain flour");
        Assert.Equal(400, swapped.Grams("dough", "plain-flour"));
        Assert.Equal(200, swapped.Grams("dough", "milk"));
        Assert.Equal((-4.0, -2.0), (swapped.Thirst[0].Low, swapped.Thirst[0].High));
        var said = swapped.The("swap-flour-drinks-less").Arguments;
        Assert.Equal((8.0, 16.0, 20.0), (G(said["low"]), G(said["high"]), G(said["holdBack"])));
        static double G(object mass) => ((Engine.Quantities.Mass)mass).Grams;
    }

    [Fact]
    public void WholemealForWhite_DrinksMore() => Assert.Contains("swap-flour-drinks-more", Of(Buns, "flour=wholemeal flour").Kinds());

    [Fact]
    public void RyeForWheat_SaysThatTheWebGoes() => Assert.Contains("swap-loses-gluten", Of(Buns, "flour=wholemeal rye flour").Kinds());

    /// <summary>34 g of yolk: 17.8 g of water and 9.0 g of fat, given back as milk and butter; the wash is told.</summary>
    [Fact]
    public void YolkOutOfADoughWhoseWhiteIsTheWash_IsFollowedIntoTheWash()
    {
        var swapped = Of(Buns, "egg yolk=");
        Assert.DoesNotContain(swapped.Recipe!.FindComponent("dough")!.Lines, line => line.Id == "egg-yolk");
        Assert.DoesNotContain("egg-yolk", swapped.Recipe.FindStep("mix")!.Order);
        Assert.InRange(swapped.Grams("dough", "butter"), 70, 72);
        Assert.InRange(swapped.OfDough().Water!.Value.Value, -0.3, 0.3);
        Assert.InRange(swapped.OfDough().Fat!.Value.Value, -0.3, 0.3);
        Assert.Equal(Grade.Warning, swapped.The("swap-wash-was-the-other-half").Grade);
        Assert.Contains("swap-loses-setting", swapped.Kinds());
        Assert.Contains("swap-loses-emulsifier", swapped.Kinds());
        Assert.Equal(new[] { "egg" }, (string[])swapped.The("swap-allergen-stays").Arguments["allergens"]);
        Assert.Contains(swapped.Formula!.Findings, finding => finding.Kind == "egg-part-left-over");
    }

    /// <summary>50 g of egg: 38.1 g of water, of which 1.3 come with the 5.9 g of butter for its 4.8 g of fat.</summary>
    [Fact]
    public void EggOut_GivesItsWaterAndFatBack()
    {
        var swapped = Of(Rolls, "egg=");
        Assert.Equal(56, swapped.Grams("dough", "butter"));
        Assert.Equal(37, swapped.Grams("dough", "water"));
        Assert.Equal(["scald", "potato", "water", "sugar", "instant-yeast", "salt", "butter", "strong-white-flour"], swapped.Recipe!.FindStep("mix")!.Order);
        Assert.Equal(["egg"], swapped.Allergens.Lost);
        Assert.Contains("swap-loses-setting", swapped.Kinds());
    }

    [Fact]
    public void EggWhiteOutOfTheWash_TakesTheWashAndItsStepAlong()
    {
        var swapped = Of(Buns, "egg white=");
        Assert.Null(swapped.Recipe!.FindComponent("wash"));
        Assert.Null(swapped.Recipe.FindStep("brush"));
        Assert.Contains("swap-part-goes", swapped.Kinds());
    }

    [Fact]
    public void MilkForEggWhiteInAWash_IsAsMuch_AndShinesLess()
    {
        var swapped = Of(Buns, "egg white=milk");
        Assert.Equal(30, swapped.Grams("wash", "milk"));
        Assert.Contains("swap-wash-shines-less", swapped.Kinds());
    }

    [Fact]
    public void SugarOut_IsLeftOverAndSaid()
    {
        var swapped = Of(Rolls, "sugar=");
        Assert.Equal(-7.5, swapped.OfDough().Sugar!.Value.Value, 0.1);
        Assert.Equal(Grade.Warning, swapped.The("swap-not-made-good").Grade);
        Assert.Contains("swap-less-sweet", swapped.Kinds());
    }

    [Fact]
    public void SugarOutOfAFilling_KeepsLess()
    {
        var finding = Of(Buns, "sugar@filling=").The("swap-keeps-less");
        Assert.True(finding.Safety);
    }

    [Fact]
    public void NewAllergen_IsASafetyFinding()
    {
        var finding = Of(Rolls, "sugar=malt syrup").The("swap-brings-allergen");
        Assert.True(finding.Safety);
        Assert.Equal(new[] { "barley (gluten)" }, (string[])finding.Arguments["allergens"]);
    }

    /// <summary>Sugar for all the water that goes would be several times the sugar; it stays a line of sugar.</summary>
    [Fact]
    public void WhatGivesForALargeLine_StaysWithinDouble()
    {
        var sweet = RecipeBuilder.Recipe(
            RecipeBuilder.Part("soaker", ComponentKind.Soaker, RecipeBuilder.Of("linseed", 40), RecipeBuilder.Of("water", 330)),
            RecipeBuilder.Dough(
                RecipeBuilder.Of("strong white flour", 450), RecipeBuilder.Of("water", 300), RecipeBuilder.Of("treacle", 20), RecipeBuilder.Of("salt", 7), RecipeBuilder.AllOf("soaker")));
        Assert.InRange(Of(sweet, "water@dough=").Grams("dough", "treacle"), 10, 40);
    }

    [Fact]
    public void Offers_AreTheAllowedSwapsAndTheIngredientsOneCanDoWithout()
    {
        var offers = Engine.Formulas.Swaps.Swapping.Offer(Buns, Engine.Ingredients.Larder.Shipped);
        Assert.Equal(["butter", "milk", "egg yolk"], offers.Select(offer => offer.Wish.What));
        Assert.Equal(48, offers[0].Result.Grams("dough", "sunflower-oil"));
        Assert.Equal(80, offers[0].Result.Grams("filling", "butter"));
        Assert.NotNull(offers[2].Without);
    }
}
