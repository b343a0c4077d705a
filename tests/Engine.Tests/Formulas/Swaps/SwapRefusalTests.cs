using Doughwright.Engine.Recipes;
using static Doughwright.Engine.Tests.Formulas.Swaps.Swaps;

namespace Doughwright.Engine.Tests.Formulas.Swaps;

/// <summary>What no swap may do, and says so before anything is changed.</summary>
public class SwapRefusalTests
{
    [Theory]
    [InlineData("salt=sugar", "swap-salt-held")]
    [InlineData("salt=", "swap-salt-held")]
    [InlineData("instant yeast=", "swap-yeast-held")]
    [InlineData("instant yeast=sugar", "swap-yeast-held")]
    [InlineData("flour=maize starch", "swap-flour-held")]
    [InlineData("sugar=plain flour", "swap-flour-held")]
    [InlineData("potato=", "swap-empties-part")]
    [InlineData("sugar=moon dust", "swap-stand-in-not-known-at-all")]
    [InlineData("butter=oliv oyl", "swap-stand-in-not-known")]
    [InlineData("strong white flour=", "swap-flour-held")]
    [InlineData("ink=oil", "swap-nothing-meant")]
    [InlineData("sugar=scald", "swap-name-is-part")]
    [InlineData("sugar=olive oil", "swap-brings-nothing-of-it")]
    public void WhatNoSwapMayDo_IsRefused(string wish, string kind)
    {
        var swapped = Of(Rolls, wish);
        Assert.True(swapped.IsRefused);
        Assert.Contains(swapped.Consequences, finding => finding.Kind == kind && finding.Grade == Grade.Error);
    }

    [Fact]
    public void OneLineSwappedInTwoWays_IsRefused() => Assert.Contains("swap-asked-twice", Of(Rolls, "butter=olive oil", "butter=lard").Kinds());

    /// <summary>However little of it goes in: what it brings, and to whom it is dangerous, nobody knows.</summary>
    [Fact]
    public void SomethingUnknown_IsRefused_HoweverLittle()
    {
        var swapped = Of(With("cinnamon", 8), "cinnamon@dough=moon dust");
        Assert.Equal(["swap-stand-in-not-known-at-all"], swapped.Kinds());
    }

    /// <summary>40 g of a dough of about 1 kg are 4 %, and it was there before.</summary>
    [Fact]
    public void MuchThatNobodyKnows_CannotBeBalanced()
    {
        var swapped = Of(With("moon dust", 40), "butter@dough=olive oil");
        Assert.True(swapped.IsRefused);
        Assert.Contains("swap-composition-not-known", swapped.Kinds());
    }

    /// <summary>A wash is brushed on as much as before and is no matter of balance: what it does not do is told. In the dough the same is refused.</summary>
    [Fact]
    public void Wash_MayBeOfSomethingWhoseCompositionNobodyKnows()
    {
        var swapped = Of(Rolls, "milk@wash=oat drink");
        Assert.False(swapped.IsRefused);
        Assert.Contains("swap-wash-browns-less", swapped.Kinds());
        Assert.Equal(15, Assert.Single(swapped.Lines, line => line.Component == "wash").After!.Value.Grams, 1e-9);
        Assert.True(Of(Rolls, "egg@dough=oat drink").IsRefused);
    }

    [Fact]
    public void AllLiquidOfADough_CannotBeLeftOut()
    {
        Assert.Equal(["swap-leaves-no-liquid", "swap-leaves-no-liquid"], Of(HearthLoaf, "water=").Kinds());
        Assert.False(Of(HearthLoaf, "water=milk").IsRefused);
        // Flour and yeast alone are no poolish; half of the dough's own water is less than it had, and still a dough.
        Assert.Equal(["swap-leaves-no-liquid"], Of(HearthLoaf, "water@poolish=").Kinds());
        Assert.False(Of(HearthLoaf, "water@dough=").IsRefused);
    }

    /// <summary>Salt and flaky salt are one ingredient, bought as two.</summary>
    [Fact]
    public void WhatIsBoughtUnderTwoNames_IsComparedNameByName()
    {
        var swapped = Of(With("flaky salt", 3), "butter@dough=olive oil");
        Assert.False(swapped.IsRefused);
        Assert.Equal(2, swapped.Formula!.Buy.Count(item => item.Ingredient?.Id == swapped.Formula.Buy.Single(bought => bought.Name == "salt").Ingredient!.Id));
        Assert.DoesNotContain(swapped.Buy, change => change.Name is "salt" or "flaky salt");
        Assert.Contains(swapped.Buy, change => change is { Name: "olive oil", Before: null });
    }

    private static Recipe With(string name, double grams) => Buns with
    {
        Components = [.. Buns.Components.Select(part => part.Id != "dough" ? part : part with { Lines = [.. part.Lines, RecipeBuilder.Of(name, grams)] })],
    };
}
