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
        });
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

    [Fact]
    public void StepThatIsMeant_IsTheFirstBulk() => Assert.Equal("bulk", Places.StepOf(Cold));

    [Fact]
    public void SameQuestion_SameAnswer() => Assert.Equal(
        Advice(Cold, 26).Places.Select(place => (place.Kind, place.Water, place.WaterTemperature, place.Mean)),
        Advice(In(17), 26).Places.Select(place => (place.Kind, place.Water, place.WaterTemperature, place.Mean)));
}
