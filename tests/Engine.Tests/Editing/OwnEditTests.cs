using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Editing;

/// <summary>A recipe takes in what its lines name of the author's own, and nothing else.</summary>
public class OwnEditTests
{
    private static readonly OwnIngredient Mallow = Own("cottage mallow", "counts as: sugar\ntotal carbohydrate: 81 g\npiece: 7 g\n");
    private static readonly OwnIngredient Drink = Own("harbour oat drink", "counts as: liquid\nfat: 1.5 g\n");

    [Theory]
    [InlineData("Cottage Mallow 20 g")]
    [InlineData("cottage mallows 20 g")]
    public void LineThatNamesIt_TakesItIn_HoweverItIsWritten(string line)
    {
        var text = Texts.PotatoRolls;
        var changed = Assert.IsType<EditedText.Changed>(Editor.Carry(text, OwnEdits.With([Mallow, Drink], recipe => LineEdits.Add(recipe, "dough", line))));
        Assert.Equal(["cottage mallow"], RecipeText.Read(changed.Text).Recipe!.Own.Select(own => own.Name));
        Assert.All(text.Split('\n'), one => Assert.Contains(one, changed.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void OtherChange_TakesNothingIn()
    {
        var text = Texts.PotatoRolls;
        var plain = Assert.IsType<EditedText.Changed>(Editor.Carry(text, recipe => LineEdits.Weigh(recipe, "dough", "butter", "60")));
        var withOwn = Assert.IsType<EditedText.Changed>(Editor.Carry(text, OwnEdits.With([Mallow, Own("butter", "counts as: fat\nfat: 60 g\n")], recipe => LineEdits.Weigh(recipe, "dough", "butter", "60"))));
        Assert.Equal(plain.Text, withOwn.Text);
    }

    [Fact]
    public void Taking_PutsTheNewInThePlaceOfTheOld()
    {
        var with = RecipeText.Read(Texts.PotatoRolls).Recipe! with { Own = [Mallow, Drink] };
        var other = Own("Cottage mallow", "counts as: sugar\ntotal carbohydrate: 79 g\n");
        var taken = Assert.IsType<EditAnswer.Done>(OwnEdits.Take(with, other)).Recipe;
        Assert.Equal([79, null], taken.Own.Select(own => own.Ingredient.Composition.Carbohydrate));
        Assert.True(OwnEdits.SayTheSame(OwnEdits.In(taken, "cottage mallow")!, other));
        Assert.False(OwnEdits.SayTheSame(Mallow, other));
    }

    [Fact]
    public void WhatIsAtHand_IsOffered_WithWhatItBrings()
    {
        var recipe = OwnEdits.AtHand(RecipeText.Read(Texts.PotatoRolls).Recipe!, [Mallow]);
        Assert.Contains(LineOffers.For(recipe, "dough", "20 g cottage mal"), offer => offer.Name == "cottage mallow");
    }

    private static OwnIngredient Own(string name, string said) => IngredientText.Read($"doughwright: 1\ningredient: {name}\n{said}").Own!;
}
