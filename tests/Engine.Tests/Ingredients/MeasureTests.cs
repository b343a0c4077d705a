using Doughwright.Engine.Ingredients;
using UnitsNet;
using UnitsNet.Units;

namespace Doughwright.Engine.Tests.Ingredients;

/// <summary>What household measures weigh, and which one is meant.</summary>
public class MeasureTests
{
    private static readonly Larder Larder = Larder.Shipped;

    private static MeasureMatch Of(string id, string unit, Region? region = null) => Larder.MeasureOf(Larder.WithId(id)!, unit, region);

    /// <summary>Typed from the source's file of household weights (USDA SR28, WEIGHT; grams of one).</summary>
    [Theory]
    [InlineData("butter-unsalted", "US cup", 227)]
    [InlineData("butter-unsalted", "tbsp", 14.2)]
    [InlineData("butter-unsalted", "sticks", 113)]
    [InlineData("honey", "tablespoons", 21)]
    [InlineData("sugar-granulated", "tsp", 4.2)]
    [InlineData("sugar-granulated", "US cup", 200)]
    [InlineData("sugar-powdered", "US cup, sifted", 100)]
    [InlineData("sugar-powdered", "unsifted US cup", 120)]
    [InlineData("sugar-brown", "US cup packed", 220)]
    [InlineData("wheat-flour-all-purpose-unenriched", "US cups", 125)]
    [InlineData("milk-whole-unfortified", "US fl oz", 30.5)]
    [InlineData("milk-whole-unfortified", "US quart", 976)]
    [InlineData("egg-whole", "US large", 50)]
    [InlineData("egg-whole", "American medium", 44)]
    [InlineData("egg-yolk", "US large", 17)]
    [InlineData("yeast-compressed", "cake", 17)]
    [InlineData("salt", "level tsp", 6)]
    [InlineData("banana-raw", "medium", 118)]
    [InlineData("raisins", "US cup packed", 165)]
    public void MeasureOf_AsTheSourceHasIt_IsItsFigure(string id, string unit, double grams)
    {
        var match = Of(id, unit);
        Assert.Equal((MeasureMatchKind.Exact, grams), (match.Kind, match.Measure!.Mass.Grams));
        Assert.Equal(("usda-sr28", "read"), (match.Measure.Evidence.Source, match.Measure.Evidence.Obtained));
    }

    /// <summary>Units against a library that has nothing to do with us (UnitsNet).</summary>
    [Theory]
    [InlineData("US cup", VolumeUnit.UsCustomaryCup)]
    [InlineData("metric cup", VolumeUnit.MetricCup)]
    [InlineData("legal cup", VolumeUnit.UsLegalCup)]
    [InlineData("tbsp", VolumeUnit.UsTablespoon)]
    [InlineData("Australian tbsp", VolumeUnit.AuTablespoon)]
    [InlineData("tsp", VolumeUnit.UsTeaspoon)]
    [InlineData("metric tsp", VolumeUnit.MetricTeaspoon)]
    [InlineData("US fl oz", VolumeUnit.UsOunce)]
    [InlineData("imperial fl oz", VolumeUnit.ImperialOunce)]
    [InlineData("US pint", VolumeUnit.UsPint)]
    [InlineData("imperial pint", VolumeUnit.ImperialPint)]
    [InlineData("US quart", VolumeUnit.UsQuart)]
    [InlineData("imperial quart", VolumeUnit.ImperialQuart)]
    [InlineData("ml", VolumeUnit.Milliliter)]
    [InlineData("dl", VolumeUnit.Deciliter)]
    [InlineData("l", VolumeUnit.Liter)]
    public void Volumes_AreThoseOfAnotherLibrary(string name, VolumeUnit unit)
    {
        var millilitres = HouseholdUnit.All.Single(each => each.Name == name).Millilitres!.Value;
        Assert.Equal(1, millilitres / Volume.From(1, unit).Milliliters, 1e-5);
    }

    /// <summary>A litre of tap water weighs 1000 g in the source, so a measure of water weighs what it holds.</summary>
    [Theory]
    [InlineData("metric cup", 250.0)]
    [InlineData("US cup", 236.5882365)]
    [InlineData("imperial pint", 568.26125)]
    [InlineData("pinch", 0.308057599609375)]
    public void MeasureOf_Water_WeighsWhatItHolds(string unit, double grams) => Assert.Equal(grams, Of("water", unit).Measure!.Mass.Grams, 1e-9);

    [Fact]
    public void MeasureOf_VolumeTheSourceLacks_IsWorkedOutFromTheSameIngredient()
    {
        var match = Of("honey", "tsp");
        Assert.Equal(21 / 3.0, match.Measure!.Mass.Grams, 1e-9);
        Assert.Equal(("worked out", "tbsp"), (match.Measure.Evidence.Obtained, match.Measure.Evidence.Note));
        Assert.Equal(244 / 236.5882365 * 100, Of("milk-whole-unfortified", "dl").Measure!.Mass.Grams, 1e-9);
    }

    [Theory]
    [InlineData("milk-whole-unfortified", "cup", "US cup|metric cup|legal cup")]
    [InlineData("milk-whole-unfortified", "pint", "US pint|imperial pint")]
    [InlineData("egg-whole", "large", "US large|European large|Australian large")]
    [InlineData("sugar-powdered", "US cup", "US cup unsifted|US cup sifted")]
    [InlineData("yeast-compressed", "cube", "German cube|French cube|Italian cube")]
    [InlineData("apple-raw-peeled", "piece", "large|medium|small")]
    public void MeasureOf_WhatIsNotClear_IsTold(string id, string unit, string candidates)
    {
        var match = Of(id, unit);
        Assert.Equal((MeasureMatchKind.NotClear, candidates), (match.Kind, string.Join('|', match.Candidates.Select(each => each.Unit))));
        Assert.Null(match.Measure);
        Assert.All(match.Candidates, each => Assert.Equal(each, Of(id, each.Unit).Measure));
    }

    [Theory]
    [InlineData("milk-whole-unfortified", "cup", Region.UnitedStates, "US cup")]
    [InlineData("milk-whole-unfortified", "cup", Region.Australia, "metric cup")]
    [InlineData("milk-whole-unfortified", "tbsp", Region.Australia, "Australian tbsp")]
    [InlineData("milk-whole-unfortified", "tbsp", Region.Britain, "tbsp")]
    [InlineData("milk-whole-unfortified", "pint", Region.Britain, "imperial pint")]
    [InlineData("egg-whole", "large", Region.Britain, "European large")]
    [InlineData("egg-whole", "large", Region.UnitedStates, "US large")]
    [InlineData("yeast-compressed", "cube", Region.Germany, "German cube")]
    [InlineData("banana-raw", "large", Region.France, "large")]
    public void MeasureOf_WithARegion_IsClear(string id, string unit, Region region, string name) => Assert.Equal(name, Of(id, unit, region).Measure?.Unit);

    [Theory]
    [InlineData("salt", "clove", MeasureMatchKind.NotHeld)]
    [InlineData("egg-whole", "sachet", MeasureMatchKind.NotHeld)]
    [InlineData("yeast-compressed", "tsp", MeasureMatchKind.NotHeld)]
    [InlineData("salt", "shovel", MeasureMatchKind.Unknown)]
    [InlineData("salt", "", MeasureMatchKind.Unknown)]
    [InlineData("salt", "heaped tsp", MeasureMatchKind.NotHeld)]
    public void MeasureOf_WhatTheLarderDoesNotHave_IsNotGuessed(string id, string unit, MeasureMatchKind kind)
    {
        var match = Of(id, unit);
        Assert.Equal(kind, match.Kind);
        Assert.Null(match.Measure);
        Assert.Equal(Larder.MeasuresOf(Larder.WithId(id)!), match.Known);
    }

    /// <summary>
    /// European egg grades (Regulation 589/2008, article 4): M is 53 to 63 g and L 63 to 73 g in the shell. The shell is 12 % (USDA SR28, refuse).
    /// </summary>
    [Theory]
    [InlineData("European medium", 53, 63)]
    [InlineData("European large", 63, 73)]
    public void EggsOfAGrade_LieInTheGrade(string unit, double low, double high) =>
        Assert.InRange(Of("egg-whole", unit).Measure!.Mass.Grams / 0.88, low, high);

    /// <summary>
    /// Australian sizes, as an encyclopaedia quotes the Australian Egg Corporation: medium 42.0 to 49.9 g, large to 58.2 g, extra large to 66.6 g, jumbo
    /// to 70 g in the shell. The shell is 12 % (USDA SR28, refuse).
    /// </summary>
    [Theory]
    [InlineData("medium", 42.0, 49.9)]
    [InlineData("large", 50.0, 58.2)]
    [InlineData("extra large", 58.3, 66.6)]
    [InlineData("jumbo", 66.7, 70)]
    public void EggsOfAustralia_LieInTheirSize(string unit, double low, double high) =>
        Assert.InRange(Of("egg-whole", unit, Region.Australia).Measure!.Mass.Grams / 0.88, low, high);

    /// <summary>The white and the yolk of an egg are the egg.</summary>
    [Theory]
    [InlineData("US large")]
    [InlineData("European large")]
    [InlineData("European medium")]
    [InlineData("Australian large")]
    [InlineData("Australian extra large")]
    public void WhiteAndYolk_AreTheEgg(string unit) => Assert.Equal(
        Of("egg-whole", unit).Measure!.Mass.Grams, Of("egg-white", unit).Measure!.Mass.Grams + Of("egg-yolk", unit).Measure!.Mass.Grams, 0.11);

    [Fact]
    public void AnEgg_WithoutASize_IsThePieceOfTheTable() => Assert.Equal(50, Of("egg-whole", "piece").Measure!.Mass.Grams);

    [Fact]
    public void EveryMeasure_IsFoundByItsOwnName() => Assert.All(
        Larder.Ingredients.SelectMany(row => Larder.MeasuresOf(row).Select(measure => (Row: row, Measure: measure))),
        each => Assert.Equal(each.Measure.Mass, Larder.MeasureOf(each.Row, each.Measure.Unit).Measure?.Mass));

    /// <summary>Nothing a kitchen pours is lighter than puffed flakes or heavier than syrup; one figure in the wrong place would be.</summary>
    [Fact]
    public void EveryVolume_HasADensityOfFood() => Assert.All(Larder.Ingredients, row =>
    {
        foreach (var measure in Larder.MeasureOf(row, "ml") is { Measure: { } one } ? [one] : Larder.MeasureOf(row, "ml").Candidates)
        {
            Assert.InRange(measure.Mass.Grams, 0.03, 1.5);
        }
    });
}
