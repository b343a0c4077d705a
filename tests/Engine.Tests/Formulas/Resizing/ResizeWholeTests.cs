using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Recipes;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;

namespace Doughwright.Engine.Tests.Formulas.Resizing;

/// <summary>What cannot be divided: eggs and sachets, and what their whole neighbours change.</summary>
public class ResizeWholeTests
{
    private static readonly Recipe Rolls = PotatoRolls.Sound;

    [Fact]
    public void Egg_IsWeighed_AndBothNeighboursAreOffered()
    {
        var resized = Rolls.To(new ResizeWish.Pieces(24));
        var choice = Assert.Single(resized.Choices);
        Assert.Equal(2.4, choice.Needed, 1e-12);
        Assert.Equal(Grams(120), resized.The("dough", "egg").After);
        Assert.Equal([2, 3], choice.Options.Select(option => option.Count));
        var two = choice.Options[0];
        Assert.Equal(-20, two.Shift.Dough.Grams, 1e-9);
        Assert.Equal(1602, two.WholeDough.Grams, 1e-9);
        Assert.Equal(0, two.Shift.Hydration!.Value, 1e-9);
    }

    /// <summary>Worked out once more by hand: 20 g of whole egg less on all flour, with the larder's water, sugar and fat of an egg.</summary>
    [Fact]
    public void NeighbourOfAnEgg_ShiftsWhatItsCompositionSays()
    {
        var resized = Rolls.To(new ResizeWish.Pieces(24));
        var egg = resized.After!.The("dough").The("egg").Composition;
        var flour = resized.After!.Flour.Grams;
        var shift = resized.Choices[0].Options[0].Shift;
        Assert.Equal(-20 * egg.Water!.Value / flour, shift.TrueWater!.Value, 1e-9);
        Assert.Equal(-20 * egg.Fat!.Value / flour, shift.TrueFat!.Value, 1e-9);
        Assert.Equal(-20 * egg.Sugars!.Value / flour, shift.TrueSugar!.Value, 1e-9);
    }

    [Fact]
    public void WholeEggs_AreTakenWhereAsked()
    {
        var resized = Rolls.To(new ResizeWish.Pieces(24), ("egg", 2));
        Assert.Equal(Grams(100), resized.The("dough", "egg").After);
        Assert.Equal(LineForm.Pieces, resized.The("dough", "egg").Form);
        Assert.Empty(resized.Choices);
        Assert.Equal(["resize-not-in-pieces"], Rolls.To(new ResizeWish.Pieces(24), ("butter", 2)).Kinds());
    }

    /// <summary>Three eggs of the dough in one and a half times the size are 4.5, and the one of the wash is 1.5: 2 can be taken in the wash alone.</summary>
    [Fact]
    public void WholeEggs_AreTakenPartByPart_AndOnlyTheNeighbours()
    {
        var eggs = RecipeBuilder.Recipe(
            Dough(Of("strong white flour", 500), Of("water", 150), Of("egg", 150)),
            Part("wash", ComponentKind.Wash, Of("egg", 50)));
        eggs = eggs with { Make = new(10, "rolls", Grams(80)) };
        Resized With(params (string, int)[] take) => eggs.To(new ResizeWish.Pieces(15), take);
        Assert.Equal(["resize-take-not-offered"], With(("egg", 2)).Kinds());
        Assert.Equal(["resize-take-not-offered", "resize-take-not-offered"], With(("egg", 99)).Kinds());
        Assert.Equal(["resize-not-in-pieces"], With(("egg@filling", 2)).Kinds());
        var taken = With(("egg@wash", 2), ("egg@dough", 4));
        Assert.Equal((Grams(100), Grams(200)), (taken.The("wash", "egg").After, taken.The("dough", "egg").After));
        Assert.Empty(taken.Choices);
        Assert.Equal(["dough"], With(("egg@wash", 1)).Choices.Select(choice => choice.Component));
    }

    [Fact]
    public void Sachet_IsNotDivided()
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", 500), Of("instant yeast", 7) with { Typed = "1 sachet", Household = new(1, "sachet") })) with { Make = new(10, "rolls", Grams(80)) };
        Assert.Equal("2 sachets", recipe.To(new ResizeWish.Pieces(20)).The("dough", "instant-yeast").Typed);
        var half = recipe.To(new ResizeWish.Pieces(15));
        Assert.Equal(LineForm.HouseholdToGrams, half.The("dough", "instant-yeast").Form);
        Assert.Equal([1, 2], half.Choices[0].Options.Select(option => option.Count));
        Assert.Contains("resize-not-whole", half.Kinds());
    }
}
