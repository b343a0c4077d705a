using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Tests.Ingredients;

/// <summary>An ingredient of the author's own, from what its label says. The figures of the labels here are invented.</summary>
public class LabelTests
{
    private static readonly Label BarleyDrink = new()
    {
        Name = "barley drink",
        Role = Role.Liquid,
        Fat = 1.5,
        Carbohydrate = 6.5,
        Sugars = 4,
        Fibre = 0.8,
        Protein = 1,
        Salt = 0.1,
    };

    [Fact]
    public void Read_EuropeanLabel_AddsFibreToTheCarbohydrate()
    {
        var ingredient = BarleyDrink.Read().Ingredient!;
        Assert.Equal(7.3, ingredient.Composition.Carbohydrate!.Value, 1e-9);
        Assert.Equal(100 - 1.5 - 6.5 - 0.8 - 1 - 0.1, ingredient.Composition.Water!.Value, 1e-9);
        Assert.Contains("worked out", ingredient.Evidence.Note, StringComparison.Ordinal);
        Assert.Null(ingredient.Composition.Ash);
    }

    [Fact]
    public void Read_LabelOfTheUnitedStates_HoldsFibreInTheCarbohydrate() =>
        Assert.Equal(6.5, (BarleyDrink with { Form = LabelForm.UnitedStates }).Read().Ingredient!.Composition.Carbohydrate);

    [Fact]
    public void Read_BlankFibre_LeavesWaterUnknown()
    {
        var composition = (BarleyDrink with { Fibre = null }).Read().Ingredient!.Composition;
        Assert.Null(composition.Fibre);
        Assert.Null(composition.Carbohydrate);
        Assert.Null(composition.Water);
        Assert.Equal(1.5, composition.Fat);
    }

    [Fact]
    public void Read_WaterThatIsSaid_IsTaken()
    {
        var ingredient = (BarleyDrink with { Fibre = null, Water = 89 }).Read().Ingredient!;
        Assert.Equal((89, ""), (ingredient.Composition.Water, ingredient.Evidence.Note));
    }

    /// <summary>Salt is sodium times 2.5 (Regulation 1169/2011, annex I; the larder uses 2.54, the ratio of the masses).</summary>
    [Fact]
    public void Read_Sodium_BecomesSalt() =>
        Assert.Equal(1, (BarleyDrink with { Salt = null, SodiumMilligrams = 400 }).Read().Ingredient!.Composition.Salt!.Value, 0.02);

    [Fact]
    public void Read_NoSugars_HoldsNoLactose()
    {
        Assert.Equal(0, (BarleyDrink with { Sugars = 0 }).Read().Ingredient!.Composition.Lactose);
        Assert.Null(BarleyDrink.Read().Ingredient!.Composition.Lactose);
    }

    [Fact]
    public void Read_WhatCannotBeTrue_TellsAllAtOnce()
    {
        var reading = (BarleyDrink with { Fat = -1, Protein = 120, Sugars = double.NaN }).Read();
        Assert.Null(reading.Ingredient);
        Assert.Equal(
            [(LabelFaultKind.BelowZero, "fat"), (LabelFaultKind.AboveHundred, "sugars"), (LabelFaultKind.AboveHundred, "protein")],
            reading.Faults.Select(fault => (fault.Kind, fault.Entry)));
    }

    [Fact]
    public void Read_PartsThatAreMoreThanTheWhole_AreFaults()
    {
        var faults = (BarleyDrink with { Sugars = 9, Lactose = 20, Fat = 95, Salt = 3, SodiumMilligrams = 400 }).Read().Faults;
        Assert.Equal(
            [LabelFaultKind.PartAboveWhole, LabelFaultKind.PartAboveWhole, LabelFaultKind.SumAboveHundred, LabelFaultKind.SaltAndSodiumDiffer],
            faults.Select(fault => fault.Kind));
    }

    [Fact]
    public void Read_NothingSaid_IsAFault() =>
        Assert.Equal(LabelFaultKind.NothingSaid, Assert.Single(new Label { Name = "x", Role = Role.Flavour }.Read().Faults).Kind);

    /// <summary>Rounded entries may add up to a little more than 100.</summary>
    [Fact]
    public void Read_RoundedEntries_LeaveNoWaterAndNoFault() => Assert.Equal(
        0, new Label { Name = "nut butter", Role = Role.Fat, Fat = 56, Carbohydrate = 10, Fibre = 9, Protein = 25, Salt = 0.6 }.Read().Ingredient!.Composition.Water);

    [Fact]
    public void With_OwnIngredients_GoBeforeTheShippedOnes()
    {
        var butter = new Label { Name = "Butter", Role = Role.Fat, Fat = 84, Carbohydrate = 0.5, Fibre = 0, Protein = 0.6, Salt = 0 }.Read().Ingredient!;
        var larder = Larder.Shipped.With([BarleyDrink.Read().Ingredient!, butter]);
        Assert.Equal("own-barley-drink", larder.Find("Barley drinks", ["cold"]).Ingredient?.Id);
        Assert.Equal(84, larder.Find("butter", []).Ingredient?.Composition.Fat);
        Assert.Equal("butter-salted", larder.Find("salted butter", []).Ingredient?.Id);
        Assert.Equal(MatchKind.Unknown, Larder.Shipped.Find("barley drink", []).Kind);
        Assert.Equal(2, larder.Ingredients.Count - Larder.Shipped.Ingredients.Count);
        Assert.NotEqual(Larder.Shipped.Version, larder.Version);
        Assert.NotEqual(larder.Version, Larder.Shipped.With([butter, BarleyDrink.Read().Ingredient!]).Version);
        Assert.Same(Larder.Shipped, Larder.Shipped.With([]));
    }

    [Fact]
    public void Read_AllergensNotSaid_AreNotKnown()
    {
        Assert.False(BarleyDrink.Read().Ingredient!.AllergensKnown);
        Assert.True((BarleyDrink with { Allergens = ["oat-gluten"] }).Read().Ingredient!.AllergensKnown);
    }
}
