using CsCheck;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;

namespace Doughwright.Engine.Tests.Formulas;

public class FormulaTests
{
    [Fact]
    public void SoundRecipe_HasNoErrorNoWarningAndOnlySafetyHints() =>
        Assert.All(Balance(PotatoRolls.Sound).Findings, finding => Assert.Equal((Grade.Hint, true), (finding.Grade, finding.Safety)));

    [Fact]
    public void Scald_StandsOnItsOwnFlour()
    {
        var scald = Balance(PotatoRolls.Sound).The("scald");
        Assert.Equal((180, 80, 100), (scald.Mass.Grams, scald.Flour.Grams, scald.Water!.Value.Grams));
        Assert.Equal(125, scald.The("water").Percent!.Value.Value, 1e-9);
        Assert.Equal(25, scald.The("water").OverallPercent!.Value.Value, 1e-9);
    }

    [Fact]
    public void PartWithoutFlour_StandsOnItsLargestLine() =>
        Assert.Equal(100, Balance(PotatoRolls.Sound).The("potato").The("potato").Percent!.Value.Value);

    [Fact]
    public void Wash_IsOutsideTheDough() => Assert.Equal(0, Balance(PotatoRolls.Sound).The("wash").ShareInDough);

    [Fact]
    public void HalfOfAPart_CountsHalf()
    {
        var formula = Balance(
            Part("levain", ComponentKind.Preferment, Of("strong white flour", 100), Of("water", 100)),
            Dough(Of("strong white flour", 450), PartOf("levain", 100)));
        Assert.Equal(500, formula.Flour.Grams, 1e-9);
        Assert.Equal(10, formula.Percent.Hydration!.Value.Value, 1e-9);
        Assert.Equal(10, formula.Percent.PrefermentedFlour!.Value.Value, 1e-9);
        Assert.Equal(0.5, formula.The("levain").ShareInDough, 1e-12);
    }

    [Fact]
    public void ScaldInsideAPreferment_IsBoth()
    {
        var formula = Balance(
            Part("scald", ComponentKind.Scald, Of("strong white flour", 20), Of("water", 40)),
            Part("sponge", ComponentKind.Preferment, Of("strong white flour", 80), AllOf("scald")),
            Dough(Of("strong white flour", 100), AllOf("sponge")));
        Assert.Equal(10, formula.Percent.ScaldedFlour!.Value.Value, 1e-9);
        Assert.Equal(50, formula.Percent.PrefermentedFlour!.Value.Value, 1e-9);
    }

    [Fact]
    public void MilkCountsAtItsWater_EggAndButterDoNot()
    {
        var percent = Balance(Dough(Of("strong white flour", 100), Of("milk", 50), Of("egg", 50), Of("butter", 50))).Percent;
        Assert.Equal(50 * 0.8813, percent.Hydration!.Value.Value, 1e-9);
    }

    [Fact]
    public void WhatTheAuthorSaysALineCountsAs_GoesBeforeTheLarder() =>
        Assert.Equal(Role.Flour, Balance(Dough(Of("rolled oats", 50) with { CountsAs = "Flour" })).The("dough").Lines[0].Role);

    [Fact]
    public void UnknownIngredient_LeavesAtLeast()
    {
        var formula = Balance(Dough(Of("strong white flour", 100), Of("water", 60), Of("xyzzy", 10)));
        Assert.Null(formula.Percent.TrueWater);
        Assert.Equal(60, formula.Percent.Hydration!.Value.Value, 1e-9);
        Assert.Equal(60, formula.Water.AtLeast.Grams, 1e-9);
        Assert.Contains(formula.Findings, finding => finding.Kind == "water-at-least");
    }

    /// <summary>Its weight is unknown, so what it brings has no upper end; butter brings no less than none, and water no fat at all.</summary>
    [Fact]
    public void WhatCannotBeWeighed_BringsAnUnknownAmount_NotNone()
    {
        var formula = Balance(Dough(Of("strong white flour", 100), Of("water", 60), Of("butter", 0) with { Mass = null }));
        Assert.Null(formula.Percent.TrueWater);
        Assert.Null(formula.Percent.TrueFat);
        Assert.Null(formula.Percent.Fat);
        Assert.Null(formula.Fat.Total);
        Assert.Null(formula.Fat.AtMost);
        Assert.Equal(60, formula.Percent.Hydration!.Value.Value, 1e-9);
        Assert.Null(formula.The("dough").Lines[2].Percent);
        Assert.Equal(["butter"], formula.Unweighed);
        Assert.Contains(formula.Findings, finding => finding.Kind == "mass-not-said");
        var wet = Balance(Dough(Of("strong white flour", 100), Of("water", 0) with { Mass = null }));
        Assert.Null(wet.Percent.Hydration);
        Assert.NotNull(wet.Percent.TrueFat);
    }

    [Fact]
    public void UnweighedFlour_LeavesEveryPercentageUnknown()
    {
        var percent = Balance(Dough(Of("strong white flour", 100), Of("wholemeal flour", 0) with { Mass = null }, Of("water", 60), Of("salt", 2))).Percent;
        Assert.Null(percent.Hydration);
        Assert.Null(percent.Salt);
    }

    [Fact]
    public void NoFlour_LeavesPercentagesUnknown()
    {
        var formula = Balance(Part("icing", ComponentKind.Icing, Of("icing sugar", 100), Of("water", 10)));
        Assert.Null(formula.Percent.Hydration);
        Assert.Equal(Mass.Zero, formula.Dough);
    }

    [Fact]
    public void Empty_IsNoFault() => Assert.Equal(Mass.Zero, Balance(Recipe()).Dough);

    /// <summary>25 % refuse (USDA SR28, read); 0.94 boiled unpared (USDA handbook 102, read second hand).</summary>
    [Fact]
    public void Buy_PotatoWithoutAWeighing_UsesTheTable()
    {
        var item = Balance(PotatoRolls.Sound).Buy.Single(item => item.Name == "potato");
        Assert.Equal(160 / 0.94 / 0.75, item.ToBuy!.Value.Grams, 1e-9);
        Assert.Equal([PreparationStep.Peel, PreparationStep.Cook], item.Steps.Select(step => step.Step));
        Assert.DoesNotContain(item.Steps, step => step.Weighed);
    }

    /// <summary>Given with the recipe: 188 g peeled, 251 g bought for 160 g cooked when 200 g became 170 g.</summary>
    [Fact]
    public void Buy_WeighedPotato_UsesTheWeighing()
    {
        var item = Balance(PotatoRolls.Weighed(200, 170)).Buy.Single(item => item.Name == "potato");
        Assert.Equal(251, item.ToBuy!.Value.Grams, 0.5);
        Assert.Equal(188, item.ToBuy.Value.Grams * item.Steps[0].Factor!.Value, 0.5);
    }

    [Fact]
    public void Buy_CountsEveryPart()
    {
        var buy = Balance(PotatoRolls.Sound).Buy;
        Assert.Equal(400, buy.Single(item => item.Name == "strong white flour").ToBuy!.Value.Grams, 1e-9);
        Assert.Equal(15, buy.Single(item => item.Name == "milk").Used.Grams);
        Assert.Equal(1, buy.Single(item => item.Name == "egg").Pieces);
    }

    [Fact]
    public void WeighedPotato_ReplacesTheTableAndSaysTheWater()
    {
        var formula = Balance(PotatoRolls.Weighed(200, 170));
        Assert.Equal(75.6, formula.The("potato").Composition.Water!.Value, 0.05);
        var said = formula.Findings.Single(finding => finding.Kind == "weighed-drier");
        Assert.Equal(3.0, ((Mass)said.Arguments["water"]).Grams, 0.05);
        Assert.Equal("scald", said.Arguments["where"]);
        Assert.Equal(801, formula.Dough.Grams, 1e-9);
    }

    [Fact]
    public void WeighedWithoutAWordOnCooking_NeedsNoWord()
    {
        var formula = Balance(PotatoRolls.WithPotato(line => line with { Conditions = ["mashed"], Weighed = new(Grams(200), Grams(170)) }));
        Assert.Equal(75.6, formula.The("potato").Composition.Water!.Value, 0.05);
        Assert.DoesNotContain(formula.Findings, finding => finding.Kind == "raw-or-cooked-not-said");
    }

    [Fact]
    public void ManyPartsInAChain_TakeNoTimeAndNoStack()
    {
        static Component Link(int index) =>
            Part($"p{index}", ComponentKind.Soaker, AllOf($"p{index + 1}"), PartOf($"p{index + 1}", 0));
        var last = Part("p400", ComponentKind.Soaker, Of("water", 1));
        var formula = Balance([.. Enumerable.Range(0, 400).Select(Link), last, Dough(Of("strong white flour", 1), AllOf("p0"))]);
        Assert.Equal(2, formula.Dough.Grams, 1e-9);
    }

    /// <summary>Called on every keystroke: what it allocates is bounded, since time on a shared machine is not a test.</summary>
    [Fact]
    public void Balancing_AllocatesLittle()
    {
        Balance(PotatoRolls.Sound);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Balance(PotatoRolls.Sound);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100_000);
    }

    [Fact]
    public void Doubling_Doubles() => Gen.Double[1, 500].Array[5].Sample(grams =>
    {
        Formula Made(double times) => Balance(
            Part("scald", ComponentKind.Scald, Of("wholemeal flour", grams[0] * times), Of("water", grams[1] * times)),
            Dough(AllOf("scald"), Of("plain flour", grams[2] * times), Of("honey", grams[3] * times), Of("egg", grams[4] * times)));
        var (one, two) = (Made(1), Made(2));
        Assert.Equal(one.Dough.Grams * 2, two.Dough.Grams, 1e-9);
        Assert.Equal(one.Percent.TrueWater!.Value.Value, two.Percent.TrueWater!.Value.Value, 1e-9);
    });

    [Fact]
    public void OrderOfListing_ChangesNothing() => Gen.Shuffle(PotatoRolls.Sound.FindComponent("dough")!.Lines.ToArray()).Sample(lines =>
    {
        var formula = Balance([.. PotatoRolls.Sound.Components.Where(part => part.Id != "dough").Append(Dough(lines)).Reverse()]);
        Assert.Equal(67.8, formula.Percent.TrueWater!.Value.Value, 0.05);
    });

    [Fact]
    public void LinesAddUpToTheDough()
    {
        var formula = Balance(PotatoRolls.Sound);
        var ingredients = formula.Components.Sum(part =>
            part.ShareInDough * part.Lines.Where(line => line.UsesComponent is null).Sum(line => line.Mass.Grams));
        Assert.Equal(formula.Dough.Grams, ingredients, 1e-9);
        Assert.Equal(formula.Water.Total!.Value.Grams, formula.The("dough").Water!.Value.Grams, 1e-9);
    }
}
