using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;
using static Doughwright.Engine.Tests.Formulas.Resizing.Sizes;

namespace Doughwright.Engine.Tests.Formulas.Resizing;

/// <summary>Whether another size has room: on trays, in the oven, in the bowl.</summary>
public class ResizeFitTests
{
    private static readonly Recipe Rolls = PotatoRolls.Sound;

    [Fact]
    public void MorePiecesThanTraysHold_AreLoadsOfTheOven()
    {
        var resized = Rolls.To(new ResizeWish.Pieces(24));
        var oven = resized.Fits.Single(fit => fit.Kind == FitKind.Oven);
        Assert.Equal((5, 2, 3), (oven.Needed, oven.There, oven.Loads));
        Assert.Contains("resize-oven-loads", resized.Kinds());
    }

    /// <summary>Five to a tray, and that stays so in the text: what is found in it is what the resizing found, and from there back is where it began.</summary>
    [Theory]
    [InlineData(24, 5)]
    [InlineData(11, 3)]
    [InlineData(5, 1)]
    public void TraysInUse_AreAsManyAsThePiecesFill(int pieces, int trays)
    {
        var resized = Rolls.To(new ResizeWish.Pieces(pieces));
        Assert.Equal(trays, resized.Recipe!.FindStep("bake")!.Trays);
        Assert.Equal(trays > 2, resized.Kinds().Contains("resize-oven-loads"));
        Assert.Equal(trays > 2, Rehearser.Rehearse(resized.Recipe!, Larder.Shipped).Findings.Any(finding => finding.Kind == "trays-missing"));
    }

    [Fact]
    public void MoreTraysThanATextCanSay_AreLeft() => Assert.Equal(2, Rolls.To(new ResizeWish.Pieces(1000)).Recipe!.FindStep("bake")!.Trays);

    /// <summary>Home ovens end near 50 by 45 cm inside (common practice, no source).</summary>
    [Theory]
    [InlineData(45, 40, 5, false)]
    [InlineData(40, 45, 5, false)]
    [InlineData(60, 40, 5, true)]
    [InlineData(40, 60, 5, true)]
    [InlineData(48, 48, 5, true)]
    [InlineData(90, 50, 40, true)]
    [InlineData(30, 30, 40, true)]
    public void WhatIsLargerThanAHomeOven_IsNoLoad(double length, double width, double depth, bool isBeyond)
    {
        var own = Box(25, 11, 8);
        foreach (var wish in new ResizeWish[] { new ResizeWish.Tin(Box(length, width, depth), own), new ResizeWish.Tray(Box(length, width, depth), own) })
        {
            var resized = Rolls.To(wish);
            var oven = Assert.Single(resized.Fits, fit => fit.Kind == FitKind.Oven);
            Assert.Equal(isBeyond, oven is { Verdict: FitVerdict.CannotBeTold, Loads: null });
            Assert.Equal(isBeyond, resized.Kinds().Contains("resize-oven-not-told"));
        }
    }

    /// <summary>Twice as heavy a roll covers 2^(2/3) = 1.587 times the floor, so of five three remain.</summary>
    [Fact]
    public void HeavierPieces_TakeMoreOfATray() =>
        Assert.Equal(3, Rolls.To(new ResizeWish.PieceMass(Grams(160))).Fits.Single(fit => fit.Kind == FitKind.Tray).PerTray);

    [Fact]
    public void BowlOfUnknownRoom_IsNotJudged_UnlessItHoldsLess()
    {
        Assert.All(Rolls.To(new ResizeWish.Pieces(5)).Fits.Where(fit => fit.Kind == FitKind.Bowl), fit => Assert.Equal(FitVerdict.Fits, fit.Verdict));
        Assert.All(Rolls.To(new ResizeWish.Pieces(20)).Fits.Where(fit => fit.Kind == FitKind.Bowl), fit => Assert.Equal(FitVerdict.CannotBeTold, fit.Verdict));
    }

    /// <summary>801 g of dough at 1.15 kg to the litre, doubled, are 1.39 l; twice that is 2.79 l.</summary>
    [Theory]
    [InlineData(3.0, FitVerdict.Fits)]
    [InlineData(2.5, FitVerdict.TooMuch)]
    public void BowlOfKnownRoom_IsJudgedByTheRisenDough(double litres, FitVerdict verdict)
    {
        var size = new VesselSize(null, null, null, Volume.FromLitres(litres));
        var recipe = Rolls with { Steps = [.. Rolls.Steps.Select(step => step.Component == "dough" && step.Vessel is { } bowl ? step with { Vessel = bowl with { Size = size } } : step)] };
        var fit = recipe.To(new ResizeWish.Pieces(20)).Fits.Single(fit => fit is { Kind: FitKind.Bowl, Has: not null });
        Assert.Equal(verdict, fit.Verdict);
        Assert.Equal(2.79, fit.Needs!.Value.Litres, 0.01);
    }
}
