using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.House;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>What becomes of the author's measurements in another size.</summary>
public class ResizedMeasuresTests
{
    private static readonly Recipe Rolls = RecipeText.Read(File.ReadAllText(Tree.PathTo("demo", "recipes", "potato-rolls.yaml"))).Recipe!;

    private static Resized To(ResizeWish wish) => Resizing.Resize(Rolls, Larder.Shipped, new(wish));

    private static ResizedMeasure Of(Resized resized, string step) => resized.Measures.Single(measure => measure.Step == step && measure.Variant is null);

    [Fact]
    public void TwiceTheRolls_BulkProofAndBakeStand_AndTheScaldDoesNot()
    {
        var resized = To(new ResizeWish.Pieces(20));
        Assert.All(new[] { "mix", "bulk", "proof", "bake" }, step => Assert.True(Of(resized, step).Stands, step));
        Assert.False(Of(resized, "scald").Stands);
        Assert.Null(resized.Recipe!.FindStep("scald")!.Measured);
        Assert.Equal(Rolls.FindStep("bulk")!.Measured, resized.Recipe.FindStep("bulk")!.Measured);
        Assert.Contains(resized.Findings, finding => finding is { Kind: "resized-times", Place: "steps.scald" });
    }

    /// <summary>A larger body in the same bowl cools more slowly: less of it touches the air for its weight.</summary>
    [Fact]
    public void MoreScald_CoolsLonger_LessShorter()
    {
        var old = Rolls.FindStep("scald")!.Measured!.Time!.Value;
        Assert.True(Of(To(new ResizeWish.Pieces(20)), "scald").NewTime > old);
        Assert.True(Of(To(new ResizeWish.Pieces(5)), "scald").NewTime < old);
    }

    [Fact]
    public void HeavierPieces_BakeLonger_AndNobodyHasTriedIt()
    {
        var resized = To(new ResizeWish.PieceMass(Mass.FromGrams(160)));
        var bake = Of(resized, "bake");
        Assert.False(bake.Stands);
        Assert.True(bake.NewTime > bake.Time);
        Assert.True(bake.NewTimeLow < bake.NewTime);
        var step = resized.Recipe!.FindStep("bake")!;
        Assert.Null(step.Measured);
        Assert.Equal(Math.Round(bake.NewTime!.Value.Minutes), Assert.IsType<StepEnd.ByCue>(step.End).Estimate.Minutes);
        Assert.Equal(Basis.Stated, Rehearser.Rehearse(resized.Recipe, Larder.Shipped).Steps.Single(each => each.Id == "bake").Basis);
    }

    /// <summary>Another way of a step was measured in the old size too, and is worked out by itself: its own time grows as the author's does.</summary>
    [Fact]
    public void MeasurementsOfVariants_AreSettledLikeTheOthers()
    {
        var recipe = Rolls with
        {
            Steps = [.. Rolls.Steps.Select(step => step.Id != "bake" ? step : step with
            {
                Variants = [new("static", step with { Oven = new(Temperature.FromCelsius(190), OvenMode.Static), Measured = step.Measured! with { Time = Duration.FromMinutes(23) } })],
            })],
        };
        var heavier = Resizing.Resize(recipe, Larder.Shipped, new(new ResizeWish.PieceMass(Mass.FromGrams(160))));
        var variant = heavier.Measures.Single(measure => measure.Variant == "static");
        Assert.Equal(("bake", "Bake (static)", false), (variant.Step, variant.Name, variant.Stands));
        Assert.True(variant.NewTime > variant.Time);
        var step = heavier.Recipe!.FindStep("bake")!.FindVariant("static")!.Step;
        Assert.Null(step.Measured);
        Assert.Equal(Math.Round(variant.NewTime!.Value.Minutes), Assert.IsType<StepEnd.ByCue>(step.End).Estimate.Minutes);
        var more = Resizing.Resize(recipe, Larder.Shipped, new(new ResizeWish.Pieces(20)));
        Assert.True(more.Measures.Single(measure => measure.Variant == "static").Stands);
        Assert.Equal(23, more.Recipe!.FindStep("bake")!.FindVariant("static")!.Step.Measured!.Time!.Value.Minutes);
    }

    /// <summary>What stands is met at home to the digit, as in every recipe.</summary>
    [Fact]
    public void WhatStands_IsWhatTheNewSizeGivesAtHome()
    {
        var resized = To(new ResizeWish.Pieces(20));
        var home = Rehearser.Rehearse(resized.Recipe!, Larder.Shipped);
        foreach (var measure in resized.Measures.Where(measure => measure is { Stands: true, Time: not null }))
        {
            var step = home.Steps.Single(step => step.Id == measure.Step);
            Assert.Equal(Basis.Measured, step.Basis);
            Assert.Equal(measure.Time!.Value.Minutes, step.Time!.Value.Likely.Minutes, 1e-6);
        }
    }

    /// <summary>Heat reaches the middle of a slab through its thickness (infinite slab of conduction, Carslaw and Jaeger, from memory): as thick, as long.</summary>
    [Fact]
    public void ASheetOnALargerTray_BakesAsLong_AndThatIsTheAuthorsFigure()
    {
        var sheet = RecipeText.Read("""
            doughwright: 1
            title: Flat bread
            make: 1 sheet of 1 kg
            home:
              air: 22 C
            parts:
              dough:
                strong white flour: 560 g
                water: 410 g, from the tap
                salt: 11 g
                instant yeast: 4 g
                olive oil: 15 g
            steps:
              mix:
                of: dough
                hands: 8 min
                way: by hand
                measured: 24 C
              bulk:
                of: dough
                measured: 90 min
              proof:
                of: dough
                vessel: aluminium tray, 600 g, 30 x 20 x 3 cm
                measured: 60 min
              bake:
                of: dough
                oven: 230 C fan
                vessel: aluminium tray, 600 g, 30 x 20 x 3 cm
                measured: 24 min and 97 C
            """).Recipe!;
        var wish = new ResizeWish.Tray(new(Length.FromMetres(0.45), Length.FromMetres(0.40), null, null), null);
        var resized = Resizing.Resize(sheet, Larder.Shipped, new(wish));
        Assert.Equal(3, resized.Factor!.Value, 1e-9);
        Assert.True(Of(resized, "bake").Stands);
        Assert.Equal(24, resized.Recipe!.FindStep("bake")!.Measured!.Time!.Value.Minutes);
        Assert.Contains(resized.Findings, finding => finding is { Kind: "resize-bake-as-thick", Place: "steps.bake" });
        var thicker = Resizing.Resize(sheet, Larder.Shipped, new(new ResizeWish.PieceMass(Mass.FromKilograms(3))));
        Assert.False(Of(thicker, "bake").Stands);
    }

    [Fact]
    public void SameSize_LeavesEveryMeasurement()
    {
        var resized = To(new ResizeWish.Pieces(10));
        Assert.Equal(RecipeText.Write(Rolls), RecipeText.Write(resized.Recipe!));
        Assert.Empty(resized.Findings);
    }

    [Fact]
    public void ResizedText_ReadsBackSound()
    {
        foreach (var pieces in new[] { 1, 7, 24, 400 })
        {
            var text = RecipeText.Write(To(new ResizeWish.Pieces(pieces)).Recipe!);
            var reading = RecipeText.Read(text);
            Assert.True(reading.Understood && reading.Sound, text);
            Assert.Equal(text, RecipeText.Write(reading.Recipe!));
        }
    }
}
