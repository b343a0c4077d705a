using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;

namespace Doughwright.Engine.Tests.Formulas.Resizing;

/// <summary>What a resized recipe says once and in the right place, and what goes along with it.</summary>
public class ResizeTellingTests
{
    private static readonly Recipe Household = Making(10, 58, Dough(
        Of("strong white flour", 500),
        Of("sugar", 50) with { Typed = "3 tbsp", Household = new(3, "tbsp") },
        Of("olive oil", 27) with { Typed = "2 tbsp", Household = new(2, "tbsp") },
        Of("instant yeast", 7) with { Typed = "1 sachet", Household = new(1, "sachet") }));

    [Theory]
    [InlineData(" sachet", 2, " sachets")]
    [InlineData(" sachets", 1, " sachet")]
    [InlineData(" European large", 3, " European large")]
    [InlineData(" tbsp", 2, " tbsp")]
    [InlineData(" US cup", 1.5, " US cups")]
    [InlineData(" cups", 0.5, " cup")]
    [InlineData(" pinch", 3, " pinches")]
    [InlineData(" sachet, one sachet is 7 g", 2, " sachets, one sachet is 7 g")]
    public void MeasureBehindItsNumber_IsOneOrMany(string words, double amount, string told) => Assert.Equal(told, PieceWords.Counted(words, amount));

    [Fact]
    public void MeasuresThatComeToNoQuarter_AreOneHint_AndPiecesAreToldWithTheirChoices()
    {
        var resized = Household.To(new ResizeWish.Pieces(13));
        var told = Assert.Single(resized.Findings, finding => finding.Kind == "resize-measure-to-grams");
        Assert.Equal(["sugar 65\u00a0g", "olive oil 35\u00a0g"], (string[])told.Arguments["lines"]);
        Assert.Equal(["3\u00a0tbsp", "2\u00a0tbsp"], (string[])told.Arguments["typed"]);
        Assert.Equal("instant-yeast", Assert.Single(resized.Choices).Line);
    }

    [Theory]
    [InlineData(25, 2.5)]
    [InlineData(13, 1.3)]
    public void Sachets_AreOfferedAsBothNeighbours(int pieces, double needed)
    {
        var choice = Assert.Single(Household.To(new ResizeWish.Pieces(pieces)).Choices, choice => choice.Line == "instant-yeast");
        Assert.Equal(needed, choice.Needed, 1e-9);
        Assert.Equal([(int)needed, (int)needed + 1], choice.Options.Select(option => option.Count));
    }

    /// <summary>Only an egg is beaten.</summary>
    [Fact]
    public void WhatIsNotWhole_IsToldByWhatItIs_WithItsPart()
    {
        var eggs = Making(
            10,
            55,
            Dough(Of("strong white flour", 500), Of("egg", 50), Of("instant yeast", 7) with { Typed = "1 sachet", Household = new(1, "sachet") }),
            Part("wash", ComponentKind.Wash, Of("egg", 50)));
        var resized = eggs.To(new ResizeWish.Pieces(13));
        Assert.Equal(["dough", "wash"], resized.Findings.Where(finding => finding.Kind == "resize-egg-not-whole").Select(finding => finding.Arguments["part"]));
        Assert.Equal("parts.dough.instant-yeast", Assert.Single(resized.Findings, finding => finding.Kind == "resize-not-whole").Place);
    }

    /// <summary>8 oz times 7/12 are 4.667 oz, so two of them and 5 oz come to 12.25 oz: 4.65 and 4.7 would add up better.</summary>
    [Theory]
    [InlineData("8 oz", "5 oz", 7)]
    [InlineData("10.1 oz", "2 lb", 31)]
    public void EqualLinesInOunces_StayEqual(string twice, string once, int pieces)
    {
        Line Typed(string name, string typed) => Of(name, QuantityText.TryMass(typed).Value!.Value.Grams) with { Typed = typed };
        var recipe = Making(
            12,
            50,
            Part("poolish", ComponentKind.Preferment, Typed("strong white flour", twice), Typed("water", twice)),
            Dough(Typed("plain flour", once), AllOf("poolish")));
        var resized = recipe.To(new ResizeWish.Pieces(pieces));
        Assert.Equal(resized.The("poolish", "strong-white-flour").Typed, resized.The("poolish", "water").Typed);
        Assert.Equal(resized.Lines.Sum(line => line.Exact.Grams), resized.Lines.Sum(line => line.After.Grams), (0.05 * 28.349523125 / 2) + 1e-9);
    }

    /// <summary>13 times 77.1 g on a scale of 7 g: 77 is near enough, and 75.4 is not.</summary>
    [Theory]
    [InlineData(77.1, 77)]
    [InlineData(75.4, 75)]
    public void PieceWeight_IsNotMovedByACoarseScale(double grams, double written)
    {
        var recipe = Household with { Home = Household.Home with { Scale = Grams(7) } };
        Assert.Equal(written, recipe.To(new ResizeWish.PieceMass(Grams(grams))).Recipe!.Make!.PieceMass.Grams);
    }

    /// <summary>Twelve buns in a tin: all in one, or each in its own, and the recipe does not say which.</summary>
    [Theory]
    [InlineData(10, 58, FitVerdict.Fits)]
    [InlineData(8, 58, FitVerdict.Fits)]
    [InlineData(20, 58, FitVerdict.CannotBeTold)]
    [InlineData(10, 90, FitVerdict.TooMuch)]
    public void SeveralPiecesInATin_AreJudgedBothWays(int pieces, double each, FitVerdict verdict)
    {
        var recipe = Household with { Steps = [Step("bake", StepKind.Bake) with { Vessel = new(VesselShape.Tin, VesselMaterial.Steel, Grams(500), false) }] };
        var resized = pieces == 10 ? recipe.To(new ResizeWish.PieceMass(Grams(each))) : recipe.To(new ResizeWish.Pieces(pieces));
        Assert.Equal(verdict, resized.Fits.Single(fit => fit.Kind == FitKind.Tin).Verdict);
    }

    [Fact]
    public void AnotherTray_IsThatOfEveryWayToBake()
    {
        var tray = new Vessel(VesselShape.Tray, VesselMaterial.Steel, Grams(300), false) { Size = Sheet(33, 23) };
        var bake = Step("bake", StepKind.Bake) with { Vessel = tray };
        var recipe = Household with { Steps = [bake with { Variants = [new("static", bake)] }] };
        var resized = recipe.To(new ResizeWish.Tray(Sheet(40, 30), null)).Recipe!.Steps[0];
        Assert.Equal(resized.Vessel, resized.Variants[0].Step.Vessel);
        Assert.Equal(0.4, resized.Vessel!.Size!.Long!.Value.Metres, 1e-9);
    }

    [Theory]
    [InlineData(0.25 * 28.349523125, "0.25 oz")]
    [InlineData(5, null)]
    public void ScaleInOunces_IsSaidInOunces(double grams, string? said) =>
        Assert.Equal(said, (Household with { Home = Household.Home with { Scale = Grams(grams) } }).To(new ResizeWish.Pieces(13)).ScaleInOunces);

    private static VesselSize Sheet(double length, double width) => new(Length.FromMillimetres(length * 10), Length.FromMillimetres(width * 10), null, null);

    private static Recipe Making(int pieces, double grams, params Component[] parts) => RecipeBuilder.Recipe(parts) with { Make = new(pieces, "rolls", Grams(grams)) };
}
