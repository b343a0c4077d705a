using Doughwright.Engine.Heat.Warming;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals.Warming;

/// <summary>Laws of places that are made warm. The figures of the places are assumed, so the laws hold whatever they are.</summary>
public class PlacesTests
{
    private static readonly Rehearsal Home = In(null);
    private static readonly Rehearsal Cold = In(17);

    private static Temperature C(double celsius) => Temperature.FromCelsius(celsius);

    private static Rehearsal In(double? air) => Rehearser.Rehearse(
        RecipeText.Read(Texts.PotatoRolls).Recipe!,
        Larder.Shipped,
        air is { } celsius ? new() { Kitchen = new Kitchen { Air = AirProfile.Constant(C(celsius)) } } : Request.Home);

    private static PlaceAdvice Advice(Rehearsal rehearsal, double target, string step = "bulk", PlaceWish? wish = null) =>
        Places.Advise(rehearsal, step, C(target), wish);

    public static TheoryData<double, double, string> Asked => new()
    {
        { 17, 26, "bulk" }, { 17, 26, "proof" }, { 14, 24, "bulk" }, { 20, 30, "proof" }, { 30, 25, "bulk" }, { 8, 35, "bulk" }, { 5, 38, "proof" },
    };

    [Theory]
    [MemberData(nameof(Asked))]
    public void PlaceThatReaches_HasTheTargetAsItsMean_AndAnotherSaysHowNearItComes(double air, double target, string step)
    {
        var places = Advice(In(air), target, step).Places;
        Assert.NotEmpty(places);
        Assert.All(places, place =>
        {
            var miss = place.Mean.Likely.Celsius - target;
            Assert.Equal(place.Reaches, Math.Abs(miss) <= PlaceSearchTolerance);
            if (!place.Reaches)
            {
                Assert.True(target > air ? miss < 0 : miss > 0, $"{place.Kind}: {miss}");
            }

            // What is told is told for the time that this place gives, and renewals fall within it.
            if (place.Time is { } time)
            {
                Assert.Equal(Math.Ceiling(time.Likely.Minutes), place.Course[^1].After.Minutes);
                Assert.Equal(place.RenewEvery is { } every ? Math.Ceiling(place.Course[^1].After.Minutes / every.Minutes) - 1 : 0, place.Renewals);
            }
        });
    }

    /// <summary>The rolls are baked on two trays, so they rise on two. The dough in its bowl asks for none.</summary>
    [Theory]
    [InlineData(2, "proof", false)]
    [InlineData(1, "proof", true)]
    [InlineData(1, "bulk", false)]
    public void PiecesOnMoreTraysThanThereAre_AreTold(int trays, string step, bool told)
    {
        var kitchen = RecipeText.Read(Texts.PotatoRolls).Recipe!.Home with { Trays = trays, Air = AirProfile.Constant(C(17)) };
        var advice = Advice(Rehearser.Rehearse(RecipeText.Read(Texts.PotatoRolls).Recipe!, Larder.Shipped, new() { Kitchen = kitchen }), 28, step);
        var findings = advice.Findings.Where(finding => finding.Kind == "proof-trays-missing").ToArray();
        Assert.Equal(told ? 1 : 0, findings.Length);
        Assert.All(findings, finding => Assert.Equal((2, 1), (finding.Arguments["needed"], finding.Arguments["there"])));
    }

    private const double PlaceSearchTolerance = 0.3;

    private static void AssertHeld(Estimate<Temperature> warmth) => Assert.InRange(warmth.Likely.Celsius, warmth.Low.Celsius, warmth.High!.Value.Celsius);

    [Theory]
    [MemberData(nameof(Asked))]
    public void Ranges_HoldTheLikelyValue_AndTimesFit(double air, double target, string step) => Assert.All(Advice(In(air), target, step).Places, place =>
    {
        Assert.All(place.Course, point => AssertHeld(point.Around));
        AssertHeld(place.Mean);
        AssertHeld(place.DoughEnd);
        Assert.True(place.PlaceWithin.Minutes <= place.Course[^1].After.Minutes + 1);
        Assert.Contains(place.Course, point => point.After == Duration.Zero && point.Dough is not null);
        Assert.All(place.Course, point => Assert.Equal(point.After < Duration.Zero, point.Dough is null));
        Assert.Contains(PlaceCaution.Thermometer, place.Cautions);
        Assert.Equal(place.Kind == PlaceKind.Oven, place.Cautions.Contains(PlaceCaution.OvenOff));
        Assert.Equal(place.WaterTemperature.Celsius >= 48, place.Cautions.Contains(PlaceCaution.HotWater));
    });

    [Fact]
    public void WaterBath_IsNeverHotterThanYeastBears() => Assert.All(
        Asked.Select(row => row.Data).Where(row => row.Item3 == "bulk").SelectMany(row => Advice(In(row.Item1), row.Item2).Places).Where(place => place.Kind == PlaceKind.WaterBath),
        place => Assert.True(place.WaterTemperature.Celsius <= 40));

    [Fact]
    public void Pieces_GoIntoNoBoxAndNoBath() => Assert.All(
        Advice(Cold, 26, "proof").Places, place => Assert.True(place.Kind is PlaceKind.Oven or PlaceKind.Cupboard));

    public static TheoryData<string, string, bool> Standing => new()
    {
        { "vessel: glass bowl, 600 g", "", true },
        { "vessel: steel tray, 300 g", "", false },
        { "vessel: steel tin, 500 g", "", false },
        { "vessel: glass bowl, 600 g", "  turn:\n    kind: shape\n    of: dough\n    hands: 5 min\n", true },
        { "cover: covered", "  turn:\n    kind: shape\n    of: dough\n    hands: 5 min\n", false },
        { "cover: covered", "", true },
    };

    /// <summary>A loaf of one piece is in no bowl once it is shaped, unless the text says so.</summary>
    [Theory]
    [MemberData(nameof(Standing))]
    public void Basin_IsOfferedForABowlOnly(string vessel, string shaping, bool isBowl)
    {
        var places = Advice(Loaf(vessel, shaping, 1), 28).Places;
        Assert.NotEmpty(places);
        Assert.Equal(isBowl, places.Any(place => place.Kind == PlaceKind.WaterBath));
    }

    [Theory]
    [InlineData(1, 4)]
    [InlineData(4, 2)]
    [InlineData(8, 1)]
    [InlineData(20, 0)]
    public void DoughThatIsTooLarge_IsOfferedNoPlaceWithoutRoom(int times, int places)
    {
        var advice = Advice(Loaf("cover: covered", "", times), 28);
        Assert.Equal(places, advice.Places.Count);
        Assert.NotNull(advice.AtTarget);
    }

    private static Rehearsal Loaf(string vessel, string shaping, int times) => Rehearser.Rehearse(
        RecipeText.Read($"""
            doughwright: 1
            title: Loaf
            make: 1 loaf
            home:
              air: 21 C
            parts:
              dough:
                strong white flour: {500 * times} g
                water: {325 * times} g, at 30 C
                salt: {10 * times} g
                instant yeast: {5 * times} g
            steps:
              mix:
                of: dough
                hands: 10 min
                way: by hand
            {shaping}  bulk:
                of: dough
                {vessel}
                ends: doubled
                measured: 80 min on 1 March
            """).Recipe!,
        Larder.Shipped,
        new() { Kitchen = new Kitchen { Air = AirProfile.Constant(C(18)) } });

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
    public void StepTakenAgainAtHome_TakesTheAuthorsMinutes()
    {
        Assert.Equal(105, StepAgain.Of(Home, "bulk")!.MinutesInRoom()!.Value.Central, 1e-6);
        Assert.Equal(70, StepAgain.Of(Home, "proof")!.MinutesInRoom()!.Value.Central, 1e-6);
    }

    [Fact]
    public void StepTakenAgainInTheKitchen_TakesTheMinutesOfTheRehearsal() =>
        Assert.Equal(Cold.FindStep("bulk")!.Time!.Value.Likely.Minutes, StepAgain.Of(Cold, "bulk")!.MinutesInRoom()!.Value.Central, 1e-6);

    [Fact]
    public void PlaceThatKeepsOneTemperature_IsLikeAirOfThatTemperature()
    {
        var again = StepAgain.Of(Cold, "bulk")!;
        var around = new Surroundings([.. Enumerable.Repeat(26.0, 3 * again.Lanes)], again.Lanes, null);
        Assert.Equal(again.MinutesAt(C(26))!.Value.Values, again.MinutesIn(around)!.Value.Values);
    }

    [Fact]
    public void Colder_IsSlower_AndAMissCostsBothWays()
    {
        var advice = Advice(Cold, 26);
        Assert.True(advice.InRoom!.Value.Likely > advice.AtTarget!.Value.Likely);
        Assert.Equal(advice.InRoom.Value.Likely.Minutes - advice.AtTarget.Value.Likely.Minutes, advice.RoomAgainstTarget!.Longer.Likely.Minutes, 1e-9);
        Assert.True(advice.TooCold!.Longer.Low.Minutes > 0);
        Assert.True(advice.TooWarm!.Longer.High!.Value.Minutes < 0);
        Assert.True(advice.DoughTooCold!.Longer.Low.Minutes > 0);
        Assert.True(advice.DoughTooWarm!.Longer.High!.Value.Minutes < 0);
        Assert.Equal(100 * advice.TooCold.Longer.Likely.Minutes / advice.AtTarget.Value.Likely.Minutes, advice.TooCold.Share.Likely.Value, 1e-9);
    }

    /// <summary>A dough in a place that has the target as its mean takes about as long as in one that keeps it.</summary>
    [Fact]
    public void PlaceThatReaches_TakesAboutAsLongAsOneThatKeepsTheTarget()
    {
        var advice = Advice(Cold, 26);
        Assert.All(advice.Places.Where(place => place.Reaches && place.Kind != PlaceKind.WaterBath), place =>
            Assert.Equal(advice.AtTarget!.Value.Likely.Minutes, place.Time!.Value.Likely.Minutes, 0.05 * advice.AtTarget.Value.Likely.Minutes));
    }

    [Fact]
    public void RoomAsWarmAsAsked_NeedsNoPlace()
    {
        var advice = Advice(In(26), 26);
        Assert.True(advice.RoomDoes);
        Assert.Empty(advice.Places);
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

    [Fact]
    public void StepThatDoesNotRise_HasNoPlace()
    {
        var advice = Advice(Cold, 26, "mix");
        Assert.Null(advice.DoughStart);
        Assert.Empty(advice.Places);
        Assert.Empty(Places.For(Cold, "bake", C(26)));
    }

    [Theory]
    [InlineData("mix", 26, "measured: 5 h", PlaceRefusal.NotKnown)]
    [InlineData("bulk", 10, "measured: 20 h", PlaceRefusal.LongerThanADay)]
    [InlineData("bulk", 26, "measured: 5 h", null)]
    public void WhereNoPlaceIsWorkedOut_TheReasonIsSaid(string step, double target, string measured, PlaceRefusal? refusal)
    {
        var text = Texts.PotatoRolls.Replace("measured: 105 min", measured, StringComparison.Ordinal);
        Assert.NotEqual(Texts.PotatoRolls, text);
        var rehearsal = Rehearser.Rehearse(RecipeText.Read(text).Recipe!, Larder.Shipped, Request.Home);
        Assert.Equal(refusal, Advice(rehearsal, target, step).Refusal);
    }

    [Fact]
    public void StepThatIsMeant_IsTheFirstBulk() => Assert.Equal("bulk", Places.StepOf(Cold));

    [Fact]
    public void SameQuestion_SameAnswer() => Assert.Equal(
        Advice(Cold, 26).Places.Select(place => (place.Kind, place.Water, place.WaterTemperature, place.Mean)),
        Advice(In(17), 26).Places.Select(place => (place.Kind, place.Water, place.WaterTemperature, place.Mean)));
}
