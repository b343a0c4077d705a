using Doughwright.Engine.Heat.Warming;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;
using static Doughwright.Engine.Tests.Rehearsals.Warming.PlaceAsked;

namespace Doughwright.Engine.Tests.Rehearsals.Warming;

/// <summary>Laws of the heat in places that are made warm: water, lamp, room and dough.</summary>
public class PlaceHeatTests
{
    /// <summary>
    /// One heat balance: the dough of the lumps and the dough that rises are given the same heat for the same temperatures, through the bath and
    /// through the lid. A bath and a room of one temperature leave a dough of that temperature as it is, and the lid counts.
    /// </summary>
    [Fact]
    public void BowlInABath_FeelsBathAndRoom_EachByItsShare()
    {
        var place = new WarmPlace(PlaceKind.WaterBath, StepAgain.Of(Cold, "bulk")!, PlaceWish.Plain, isWarming: true);
        for (var lane = 0; lane < 8; lane++)
        {
            var lumps = place.Lumps(5, lane);
            var state = new PlaceState(30, 30, 0, 0);
            var felt = place.Felt(state, 17, lane);
            Assert.Equal(((lumps.WaterToDough * 30) + (lumps.DoughToRoom * 17)) / (lumps.WaterToDough + lumps.DoughToRoom), felt, 1e-9);
            Assert.InRange(felt, 29, 29.95);
            Assert.Equal(30, place.Felt(state, 30, lane), 1e-9);
        }
    }

    /// <summary>The lumps give the dough to the minute what its conduction gives it, but for what one temperature for a whole dough leaves out.</summary>
    [Fact]
    public void DoughInABath_EndsAsWarmInBothBalances()
    {
        var dough = StepAgain.Of(Cold, "bulk")!;
        var trial = PlaceTrial.Of(new(PlaceKind.WaterBath, dough, PlaceWish.Plain, isWarming: true), dough, C(26), 90);
        var conducted = dough.DoughIn(trial.Around, trial.Minutes)[(trial.Minutes - 1) * dough.Lanes];
        Assert.Equal(trial.Traces[0][trial.Minutes].Dough, conducted, 0.35);
    }

    [Fact]
    public void WaterFromAFridgeInFrost_IsNotColderThanIce()
    {
        var rehearsal = Rehearser.Rehearse(
            RecipeText.Read(Texts.PotatoRolls).Recipe!,
            Larder.Shipped,
            new() { Kitchen = new Kitchen { Air = AirProfile.Constant(C(32)), Fridge = C(-2), Tap = C(28) } });
        var places = Advice(rehearsal, 20).Places;
        Assert.Contains(places, place => place.WaterTemperature == C(0));
        Assert.DoesNotContain(places, place => place.WaterTemperature < C(0));
    }

    [Fact]
    public void FridgeColderThanADegree_GivesItsOwnWater()
    {
        var rehearsal = Rehearser.Rehearse(
            RecipeText.Read(Texts.PotatoRolls).Recipe!,
            Larder.Shipped,
            new() { Kitchen = new Kitchen { Air = AirProfile.Constant(C(32)), Fridge = C(0.5), Tap = C(28) } });
        Assert.Contains(Advice(rehearsal, 20).Places, place => place.WaterTemperature == C(0.5));
    }

    [Fact]
    public void Lamp_IsOffWhereAPlaceIsCooled()
    {
        PlaceAnswer Oven(PlaceWish wish) => Advice(In(32), 26, wish: wish).Places.Single(place => place.Kind == PlaceKind.Oven);
        Assert.Equal(Oven(PlaceWish.Plain).Water, Oven(new() { Lamp = Power.FromWatts(25) }).Water);
    }

    /// <summary>A lamp that alone is too much is no reason to fill the place with the hottest water.</summary>
    [Fact]
    public void WhereTheLeastWaterIsTooMuch_TheLeastIsTold()
    {
        var oven = Advice(In(25), 26, wish: new() { Lamp = Power.FromWatts(40) }).Places.Single(place => place.Kind == PlaceKind.Oven);
        Assert.False(oven.Reaches);
        Assert.True(oven.Mean.Likely > C(26));
        Assert.Equal(0.25, oven.Water.Kilograms, 1e-9);
    }

    [Fact]
    public void WarmKitchen_IsCooledWithColdWater() => Assert.All(Advice(In(30), 25).Places, place =>
    {
        Assert.True(place.WaterTemperature < C(25));
        Assert.DoesNotContain(PlaceCaution.HotWater, place.Cautions);
    });

    [Fact]
    public void Lamp_SavesWater()
    {
        double Heat(PlaceWish wish) => Advice(Cold, 26, wish: wish).Places.Where(place => place.Kind == PlaceKind.Oven)
            .Select(place => place.Water.Kilograms * (place.WaterTemperature.Celsius - 26) * (1 + place.Renewals)).Single();
        Assert.True(Heat(new() { Lamp = Power.FromWatts(15) }) < 0.8 * Heat(PlaceWish.Plain));
    }

    [Fact]
    public void OpenWater_GivesMoreHeatThanCovered()
    {
        var (open, shut) = (Oven(new() { OpenWater = true }), Oven(PlaceWish.Plain));
        Assert.NotEqual(open.Water.Kilograms * open.WaterTemperature.Celsius, shut.Water.Kilograms * shut.WaterTemperature.Celsius);

        PlaceAnswer Oven(PlaceWish wish) => Advice(In(10), 28, wish: wish).Places.Single(place => place.Kind == PlaceKind.Oven);
    }
}
