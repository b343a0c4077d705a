using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;
using static Doughwright.Engine.Tests.Formulas.Resizing.Sizes;

namespace Doughwright.Engine.Tests.Formulas.Resizing;

/// <summary>Resizing by every wish, and what cannot be guessed.</summary>
public class ResizeTests
{
    private static readonly Recipe Rolls = PotatoRolls.Sound;

    private static readonly Recipe Tin = RecipeBuilder.Recipe(Dough(Of("strong white flour", 500), Of("water", 350), Of("salt", 10), Of("instant yeast", 5))) with
    {
        Make = new(1, "loaf", Grams(865)),
        Steps = [Step("bake", StepKind.Bake) with { Vessel = new(VesselShape.Tin, VesselMaterial.Steel, Grams(500), false) { Size = Box(25, 11, 8) } }],
    };

    [Theory]
    [InlineData(24, 2.4)]
    [InlineData(5, 0.5)]
    public void Pieces_ScaleByTheirNumber(int pieces, double factor)
    {
        var resized = Rolls.To(new ResizeWish.Pieces(pieces));
        Assert.Equal(factor, resized.Factor);
        Assert.Equal(new(pieces, "rolls", Grams(80)), resized.Recipe!.Make);
    }

    [Fact]
    public void PieceWeight_KeepsTheNumber()
    {
        var resized = Rolls.To(new ResizeWish.PieceMass(Grams(90)));
        Assert.Equal(90 / 80.0, resized.Factor);
        Assert.Equal(new(10, "rolls", Grams(90)), resized.Recipe!.Make);
    }

    /// <summary>1500 g in pieces of 80 g are 18.75: 19 lighter ones, or 18 heavier ones.</summary>
    [Fact]
    public void Dough_OffersBothNumbersOfPieces()
    {
        var resized = Rolls.To(new ResizeWish.Dough(Grams(1500)));
        Assert.Equal(1500 / 801.0, resized.Factor!.Value, 1e-12);
        Assert.Equal(1500, resized.After!.Dough.Grams, 1e-9);
        Assert.Equal([new(19, "rolls", Grams(79)), new(18, "rolls", Grams(83))], resized.Makes);
    }

    [Fact]
    public void WhatThereIsOfAPart_ScalesTheWhole()
    {
        var resized = Rolls.To(new ResizeWish.HavePart("potato", Grams(200)));
        Assert.Equal(1.25, resized.Factor);
        Assert.Equal(Grams(200), resized.The("potato", "potato").After);
        Assert.Equal(Grams(400), resized.The("dough", "strong-white-flour").After);
    }

    /// <summary>Flour goes into the scald and into the dough: 400 g in all.</summary>
    [Fact]
    public void WhatThereIsOfAnIngredient_CountsItInEveryPart() =>
        Assert.Equal(2.5, Rolls.To(new ResizeWish.HaveLine("strong-white-flour", Grams(1000))).Factor);

    /// <summary>25 x 11 x 8 cm are 2.2 l and 30 x 11 x 10 cm are 3.3 l.</summary>
    [Fact]
    public void Tin_ScalesByItsVolume_WhereTheRecipesOwnIsStated()
    {
        var resized = Tin.To(new ResizeWish.Tin(Box(30, 11, 10), null));
        Assert.Equal(1.5, resized.Factor!.Value, 1e-12);
        Assert.Equal(1, resized.Recipe!.Make!.Pieces);
        Assert.Equal(3.3, resized.Recipe.Steps[0].Vessel!.Size!.Volume!.Value.Litres, 1e-9);
        Assert.Null(resized.Recipe.Steps[0].Vessel!.Mass);
        Assert.Equal(FitVerdict.Fits, resized.Fits.Single(fit => fit.Kind == FitKind.Tin).Verdict);
    }

    [Fact]
    public void Tin_WithoutAReference_IsRefused()
    {
        var resized = Rolls.To(new ResizeWish.Tin(Box(30, 11, 10), null));
        Assert.Null(resized.Recipe);
        Assert.Equal(["resize-tin-not-stated"], resized.Kinds());
        Assert.Equal(1.5, Rolls.To(new ResizeWish.Tin(Box(30, 11, 10), Box(25, 11, 8))).Factor!.Value, 1e-12);
    }

    [Fact]
    public void Trays_KeepWhatLiesOnOne()
    {
        var resized = Rolls.To(new ResizeWish.Trays(1));
        Assert.Equal(5, resized.Recipe!.Make!.Pieces);
        Assert.Equal(1, resized.Recipe.FindStep("bake")!.Trays);
        Assert.Equal(["resize-trays-not-stated"], Tin.To(new ResizeWish.Trays(2)).Kinds());
    }

    [Fact]
    public void DoughOutsideItsLimits_IsRefused()
    {
        var resized = Tin.To(new ResizeWish.Tin(Box(2, 2, 2), null));
        Assert.Null(resized.Recipe);
        Assert.Equal(["dough-outside-limits"], resized.Kinds());
    }

    [Fact]
    public void Weighing_GoesWithItsLine()
    {
        var resized = PotatoRolls.Weighed(200, 170).To(new ResizeWish.Pieces(15));
        Assert.Equal(new(Grams(300), Grams(255)), resized.Recipe!.FindComponent("potato")!.Lines[0].Weighed);
    }

    [Fact]
    public void FoldsAndVessels_StayAsWritten()
    {
        var recipe = PotatoRolls.WithStep("bulk", step => step with { Folds = [new(Duration.FromMinutes(45), Duration.FromMinutes(2))] });
        var resized = recipe.To(new ResizeWish.Pieces(24)).Recipe!;
        Assert.Equal(recipe.FindStep("bulk")!.Folds, resized.FindStep("bulk")!.Folds);
        Assert.Equal(recipe.FindStep("bulk")!.Vessel, resized.FindStep("bulk")!.Vessel);
    }

    [Theory]
    [InlineData(19, "dough-outside-limits")]
    [InlineData(600_000, "dough-outside-limits")]
    [InlineData(30_000, "large-dough")]
    public void Limits_AreFindings(double grams, string kind) => Assert.Contains(kind, Rolls.To(new ResizeWish.Dough(Grams(grams))).Kinds());

    [Fact]
    public void WithoutMake_NoPiecesCanBeAskedFor() => Assert.Equal(["resize-without-make"], (Rolls with { Make = null }).To(new ResizeWish.Pieces(24)).Kinds());
}
