using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;
using static Doughwright.Engine.Tests.Rehearsals.Warming.PlaceAsked;

namespace Doughwright.Engine.Tests.Rehearsals.Warming;

/// <summary>Laws of places that are made warm. The figures of the places are assumed, so the laws hold whatever they are.</summary>
public class PlacesTests
{
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
