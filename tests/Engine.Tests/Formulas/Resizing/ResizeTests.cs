using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using UnitsNet.Units;
using static Doughwright.Engine.Tests.Formulas.RecipeBuilder;

namespace Doughwright.Engine.Tests.Formulas.Resizing;

/// <summary>Resizing by every wish, and what cannot be divided, weighed or guessed.</summary>
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

    /// <summary>Two spoons of 13.5 g times 1.3 are 35.1 g, which is 1.24 oz, and 2.6 spoons are no quarter.</summary>
    [Theory]
    [InlineData(0.25 * 28.349523125, "1.25 oz")]
    [InlineData(1, "35 g")]
    [InlineData(0.5, "35 g")]
    public void MeasureThatIsWeighedNow_IsWrittenAsTheScaleShows(double scale, string typed)
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", 500), Of("water", 350), Of("olive oil", 27) with { Typed = "2 tbsp", Household = new(2, "tbsp") })) with { Make = new(10, "rolls", Grams(87)) };
        recipe = recipe with { Home = recipe.Home with { Scale = Grams(scale) } };
        var line = recipe.To(new ResizeWish.Pieces(13)).The("dough", "olive-oil");
        Assert.Equal((typed, LineForm.HouseholdToGrams), (line.Typed, line.Form));
        Assert.Equal(QuantityText.TryMass(typed).Value, line.After);
    }

    /// <summary>17 steps of 0.25 oz are 120.4854732 g: nobody writes that.</summary>
    [Fact]
    public void GramsOnAScaleInOunces_AreWrittenToATenth()
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", 500), Of("sugar", 60))) with { Make = new(10, "rolls", Grams(56)) };
        recipe = recipe with { Home = recipe.Home with { Scale = Grams(0.25 * 28.349523125) } };
        Assert.Equal("120.5 g", recipe.To(new ResizeWish.Pieces(20)).The("dough", "sugar").Typed);
    }

    [Fact]
    public void DoughOutsideItsLimits_IsRefused()
    {
        var resized = Tin.To(new ResizeWish.Tin(Box(2, 2, 2), null));
        Assert.Null(resized.Recipe);
        Assert.Equal(["dough-outside-limits"], resized.Kinds());
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

    [Theory]
    [InlineData("2 tbsp", 2.0, 15, "3 tbsp")]
    [InlineData("1 tsp", 1.0, 15, "1.5 tsp")]
    [InlineData("1 tsp", 1.0, 5, "0.5 tsp")]
    [InlineData("1 tsp", 1.0, 14, "14 g")]
    public void HouseholdMeasure_StaysWhereItComesToQuarters(string typed, double amount, int pieces, string after)
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", 500), Of("sugar", 10 * amount) with { Typed = typed, Household = new(amount, typed.Split(' ')[1]) })) with { Make = new(10, "rolls", Grams(80)) };
        Assert.Equal(after, recipe.To(new ResizeWish.Pieces(pieces)).The("dough", "sugar").Typed);
    }

    /// <summary>Oracle for the ounces written: a general units package.</summary>
    [Theory]
    [InlineData("4 oz", 15, "6 oz", 6)]
    [InlineData("14 oz", 20, "1 lb 12 oz", 28)]
    [InlineData("1 lb 4 oz", 20, "2 lb 8 oz", 40)]
    [InlineData("2.5 lb", 15, "3 lb 12 oz", 60)]
    public void Ounces_StayOunces(string typed, int pieces, string after, double ounces)
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", QuantityText.TryMass(typed).Value!.Value.Grams) with { Typed = typed })) with { Make = new(10, "rolls", Grams(80)) };
        var line = recipe.To(new ResizeWish.Pieces(pieces)).The("dough", "strong-white-flour");
        Assert.Equal(after, line.Typed);
        Assert.Equal(UnitsNet.Mass.From(ounces, MassUnit.Ounce).Grams, line.After.Grams, 1e-9);
    }

    [Fact]
    public void Kilograms_StayKilograms()
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", 1200) with { Typed = "1.2 kg" })) with { Make = new(10, "rolls", Grams(120)) };
        Assert.Equal("1.8 kg", recipe.To(new ResizeWish.Pieces(15)).The("dough", "strong-white-flour").Typed);
        Assert.Equal("600 g", recipe.To(new ResizeWish.Pieces(5)).The("dough", "strong-white-flour").Typed);
    }

    [Fact]
    public void SmallDose_KeepsTheDecimalsItNeeds_AndIsTold()
    {
        var recipe = RecipeBuilder.Recipe(Dough(Of("strong white flour", 500), Of("water", 330), Of("instant yeast", 0.2))) with { Make = new(10, "rolls", Grams(83)) };
        var resized = recipe.To(new ResizeWish.Pieces(20));
        Assert.Equal(("0.4 g", LineForm.BelowScale), (resized.The("dough", "instant-yeast").Typed, resized.The("dough", "instant-yeast").Form));
        Assert.Contains("dose-below-scale", resized.Kinds());
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

    [Fact]
    public void CoarserScale_RoundsToItsStep()
    {
        var kitchen = Rolls.Home with { Scale = Grams(5) };
        var resized = Engine.Rehearsals.Resizing.Resize(Rolls, Engine.Ingredients.Larder.Shipped, new(new ResizeWish.Pieces(11)) { Kitchen = kitchen });
        Assert.All(resized.Lines.Where(line => line.Form == LineForm.Scale), line => Assert.Equal(0, line.After.Grams % 5, 1e-9));
        Assert.Equal(LineForm.BelowScale, resized.The("dough", "salt").Form);
    }

    private static VesselSize Box(double length, double width, double depth) =>
        new(Length.FromMillimetres(length * 10), Length.FromMillimetres(width * 10), Length.FromMillimetres(depth * 10), null);
}
