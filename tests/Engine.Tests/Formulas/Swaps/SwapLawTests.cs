using CsCheck;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;
using static Doughwright.Engine.Tests.Formulas.Swaps.Swaps;

namespace Doughwright.Engine.Tests.Formulas.Swaps;

/// <summary>What holds for every swap of every recipe.</summary>
public class SwapLawTests
{
    private static readonly string[] StandIns =
    [
        "olive oil", "lard", "salted butter", "coconut oil", "honey", "maple syrup", "brown sugar", "water", "skimmed milk", "buttermilk", "whipping cream",
        "whole egg", "egg yolk", "egg white", "banana", "tinned pumpkin", "boiled carrot", "plain flour", "wholemeal flour", "fresh yeast", "active dry yeast",
        "instant yeast", "orange juice", "walnuts", "milk powder", "",
    ];

    private static readonly (Recipe Recipe, string Component, Line Line)[] Lines =
    [
        .. from recipe in All
           from part in recipe.Components
           from line in part.Lines
           where line.Uses is null
           select (recipe, part.Id, line),
    ];

    private static readonly Gen<(Recipe Recipe, Wish Wish)> Single = Gen.Select(Gen.Int[0, Lines.Length - 1], Gen.Int[0, StandIns.Length - 1])
        .Select((at, by) => (Lines[at].Recipe, new Wish(Lines[at].Line.Name, StandIns[by], Lines[at].Component)));

    private static readonly Gen<(Recipe Recipe, Wish[] Wishes)> Several = Gen.Select(Gen.Int[0, All.Count - 1], Gen.Int[0, 999].Array[2, 3], Gen.Int[0, StandIns.Length - 1].Array[3])
        .Select((which, ats, bys) =>
        {
            var own = Lines.Where(at => at.Recipe == All[which]).ToArray();
            return (All[which], ats.Select((at, i) => new Wish(own[at % own.Length].Line.Name, StandIns[bys[i]], own[at % own.Length].Component)).ToArray());
        });

    [Fact]
    public void ALineByItself_ChangesNothing() => Assert.All(Lines, at =>
    {
        var swapped = Swapping.Swap(at.Recipe, [new(at.Line.Name, at.Line.Name)], Larder.Shipped);
        Assert.Equal(RecipeText.Write(at.Recipe), RecipeText.Write(swapped.Recipe!));
        Assert.Empty(swapped.Lines);
        Assert.Empty(swapped.Consequences);
        Assert.All(swapped.Residuals, residual => Assert.Equal((0.0, 0.0, 0.0, 0.0), (residual.Water!.Value.Value, residual.Sugar!.Value.Value, residual.Fat!.Value.Value, residual.Salt!.Value.Value)));
    });

    [Fact]
    public void NoWish_ChangesNothing() => Assert.All(All, recipe => Assert.Equal(RecipeText.Write(recipe), RecipeText.Write(Of(recipe).Recipe!)));

    [Fact]
    public void FlourIsHeld_AndSaltWithinATenthOfAPercent() => Single.Sample(each => Done(each.Recipe, each.Wish) is not { } done || done.IsFine(() =>
    {
        Assert.Equal(done.Before.Flour.Grams, done.After.Flour.Grams, 1e-9);
        // The salt of the dough, when there was enough to take from.
        if (done.Swapped.Residuals.FirstOrDefault(residual => residual.Component is null)?.Salt is { } salt && done.After.Components.SelectMany(part => part.Lines).Any(line => line.Role == Role.Salt))
        {
            Assert.InRange(salt.Value, -0.12, 0.12);
        }
    }));

    /// <summary>Summed over the two formulas from the outside, the change is the residual that is printed.</summary>
    [Fact]
    public void WhatChangedInAll_IsTheResidual() => Single.Sample(each => Done(each.Recipe, each.Wish) is not { } done || done.IsFine(() =>
    {
        if (done.Swapped.Residuals.FirstOrDefault(residual => residual.Component is null) is { } residual)
        {
            Assert.Equal(Change(done, percent => percent.TrueWater), residual.Water!.Value.Value, 1e-9);
            Assert.Equal(Change(done, percent => percent.TrueSugar), residual.Sugar!.Value.Value, 1e-9);
            Assert.Equal(Change(done, percent => percent.TrueFat), residual.Fat!.Value.Value, 1e-9);
        }

        foreach (var outside in done.Swapped.Residuals.Where(residual => residual.Component is not null))
        {
            var (was, now) = (done.Before.FindComponent(outside.Component!)!, done.After.FindComponent(outside.Component!));
            var change = (now?.Water?.Grams ?? 0) - was.Water!.Value.Grams;
            Assert.Equal(change / was.Base.Grams * 100, outside.Water!.Value.Value, 1e-9);
        }
    }));

    [Fact]
    public void OtherLines_StayBetweenHalfAndDouble_OrDoNotChange() => Several.Sample(each => Done(each.Recipe, each.Wishes) is not { } done || done.IsFine(() =>
        Assert.All(done.Swapped.Lines.Where(line => line.Change == LineChange.Corrected && each.Wishes.All(wish => wish.By != line.NameAfter)), line =>
            Assert.InRange(line.After!.Value.Grams, line.Before!.Value.Grams * 0.5, line.Before.Value.Grams * 2))));

    [Fact]
    public void OrderOfWishes_MakesNoDifference() => Several.Sample(each =>
    {
        var forward = Swapping.Swap(each.Recipe, each.Wishes, Larder.Shipped);
        var back = Swapping.Swap(each.Recipe, [.. each.Wishes.Reverse()], Larder.Shipped);
        Assert.Equal(forward.IsRefused, back.IsRefused);
        if (!forward.IsRefused)
        {
            Assert.Equal(RecipeText.Write(forward.Recipe!), RecipeText.Write(back.Recipe!));
        }
    });

    /// <summary>Swaps in parts that have nothing to do with each other, one after the other in either order.</summary>
    [Theory]
    [InlineData("butter@dough=olive oil", "sugar@filling=honey")]
    [InlineData("egg yolk=", "lemon juice=orange juice")]
    [InlineData("milk@dough=buttermilk", "egg white=milk")]
    public void IndependentSwaps_CanBeDoneInEitherOrder(string first, string second)
    {
        string Then(string a, string b) => RecipeText.Write(Of(Of(Buns, a).Recipe!, b).Recipe!);
        Assert.Equal(Then(first, second), Then(second, first));
    }

    [Fact]
    public void ASwappedRecipe_ReadsBackAndBalances() => Several.Sample(each => Done(each.Recipe, each.Wishes) is not { } done || done.IsFine(() =>
    {
        var text = RecipeText.Write(done.Swapped.Recipe!);
        var reading = RecipeText.Read(text);
        Assert.True(reading.Understood, text);
        Assert.Equal(text, RecipeText.Write(reading.Recipe!));
        var again = Formula.Balance(reading.Recipe!, Larder.Shipped);
        Assert.Equal(done.After.Dough.Grams, again.Dough.Grams, 1e-9);
        Assert.All(reading.Recipe!.Steps.SelectMany(step => step.Order.Select(id => (step.Component, id))), at =>
            Assert.Contains(reading.Recipe.FindComponent(at.Component)!.Lines, line => line.Id == at.id));
    }));

    private static double Change(DoneSwap done, Func<FormulaPercents, Percent?> figure) => figure(done.After.Percent)!.Value.Value - figure(done.Before.Percent)!.Value.Value;

    private static DoneSwap? Done(Recipe recipe, params Wish[] wishes)
    {
        var swapped = Swapping.Swap(recipe, wishes, Larder.Shipped);
        return swapped.IsRefused ? null : new(Formula.Balance(recipe, Larder.Shipped), Formula.Balance(swapped.Recipe!, Larder.Shipped), swapped);
    }

    private sealed record DoneSwap(Formula Before, Formula After, Swapped Swapped)
    {
        public bool IsFine(Action asserts)
        {
            asserts();
            return true;
        }
    }
}
