using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>Preferments and levains: when they are ripe, and what of it goes into the dough.</summary>
public class RipeningTests
{
    // A printed handbook, guide to preferments [read]: poolish 12 to 16 h. A model without the author's hours makes 13.5 h of 0.06 % instant yeast at
    // 21 °C (fermentation sheet 14.3, computed apart from this program). Nothing was tuned to it.
    [Fact]
    public void Poolish_NobodyTimed_IsRipeInTheTradesHours()
    {
        var ripe = Step(Rehearse(Preferment(100, 100, 0.06, "ripe")), "ripen");
        Assert.Equal(13.5 * 60, ripe.Time!.Value.Likely.Minutes, 0.02 * 13.5 * 60);
        Assert.InRange(ripe.Ripe!.Earliest.Minutes / 60, 11, 13);
        Assert.InRange(ripe.Ripe.Latest!.Value.Minutes / 60, 14, 16);
        Assert.True(ripe.Time.Value.Low.Minutes < 11 * 60 && ripe.Time.Value.High!.Value.Minutes > 16 * 60);
    }

    /// <summary>Nothing published says at what rise a stiff preferment is ripe. With the author's hours it is carried like any other.</summary>
    [Fact]
    public void Biga_NobodyTimed_IsNotComputed_AndThatIsTold()
    {
        var untimed = Rehearse(Preferment(100, 55, 0.1, "ripe"));
        Assert.Null(Step(untimed, "ripen").Time);
        Assert.Contains(untimed.Findings, finding => finding.Kind == "ripening-needs-hours");
        var timed = Step(Rehearse(Preferment(100, 55, 0.1, "ripe\n    measured: 14 h"), new() { Kitchen = Room(25) }), "ripen");
        Assert.InRange(timed.Time!.Value.Likely.Minutes / 60, 7, 12);
    }

    // Feedings at the growth rate of the yeast, without lag: fermentation sheet 7.2, computed from Gänzle 1998 apart from this program, printed to 0.1 h.
    [Theory]
    [InlineData(1, 20, 4.9)]
    [InlineData(1, 24, 3.0)]
    [InlineData(1, 27, 2.6)]
    [InlineData(2, 20, 7.2)]
    [InlineData(2, 24, 4.4)]
    [InlineData(2, 27, 3.8)]
    [InlineData(5, 20, 10.7)]
    [InlineData(5, 24, 6.6)]
    [InlineData(5, 27, 5.7)]
    [InlineData(10, 20, 13.5)]
    [InlineData(10, 24, 8.3)]
    [InlineData(10, 27, 7.2)]
    public void Feeding_NobodyTimed_IsRipeWhenItIsAsDenseAgain(int fed, double celsius, double hours)
    {
        var run = Rehearse(Levain(fed, "ripe"), new() { Kitchen = Room(celsius) });
        Assert.Equal(hours, Step(run, "ripen").Time!.Value.Likely.Minutes / 60, 0.06);
    }

    [Theory]
    [InlineData("poolish")]
    [InlineData("levain")]
    public void AuthorsHours_AreMetAtHome_AndByAnotherWay(string which)
    {
        var recipe = Of(which, "ripe\n    measured: 11 h");
        Assert.Equal(660, Step(Rehearser.Rehearse(recipe, Larder.Shipped), "ripen").Time!.Value.Likely.Minutes, 1e-9);
        var again = Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = recipe.Home with { Trays = 5 } });
        Assert.Equal(660, Step(again, "ripen").Time!.Value.Likely.Minutes, 1e-6);
        Assert.Equal(Basis.Computed, Step(again, "ripen").Basis);
    }

    /// <summary>Warmer is sooner, colder later; and how much goes with the published rate along the temperature, the author's hours being what they are.</summary>
    [Fact]
    public void Levain_InAnotherRoom_TakesTheAuthorsHoursOverTheRatioOfThePublishedRates()
    {
        var recipe = Of("levain", "ripe\n    measured: 9 h");
        double In(double celsius) => Step(Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = Room(celsius) }), "ripen").Time!.Value.Likely.Minutes;

        // Gänzle 1998 by the sheet: 0.225 /h at 20 °C, 0.365 at 24; the home is at 24 °C.
        Assert.Equal(540 * 0.365 / 0.225, In(20), 540 * 0.365 / 0.225 * 0.005);
        Assert.True(In(27) < 540 && In(30) > In(27));
    }

    [Fact]
    public void Air_ThatFallsAtNight_LiesBetweenTheTwoRooms()
    {
        var recipe = Of("poolish", "ripe\n    measured: 13 h");
        var night = AirProfile.Of([(Duration.Zero, Temperature.FromCelsius(24)), (Duration.FromHours(3), Temperature.FromCelsius(16)), (Duration.FromHours(11), Temperature.FromCelsius(24))]);
        double In(AirProfile air) => Step(Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = recipe.Home with { Air = air } }), "ripen").Time!.Value.Likely.Minutes;
        var (cold, warm) = (In(AirProfile.Constant(Temperature.FromCelsius(16))), In(AirProfile.Constant(Temperature.FromCelsius(24))));
        Assert.InRange(In(night), warm + 60, cold - 60);
    }

    [Fact]
    public void AFixedTime_StaysAsItIs()
    {
        var run = Rehearse(Preferment(100, 100, 0.06, "after 13 h"), new() { Kitchen = Room(28) });
        Assert.Equal((780, Basis.Stated), (Step(run, "ripen").Time!.Value.Likely.Minutes, Step(run, "ripen").Basis));
        Assert.Null(Step(run, "ripen").Ripe);
    }

    [Theory]
    [InlineData("poolish", -4)]
    [InlineData("levain", 44)]
    public void WhereNothingWorks_ItNeverRipens_AndThatIsTold(string which, double celsius)
    {
        var run = Rehearser.Rehearse(Of(which, "ripe\n    measured: 11 h"), Larder.Shipped, new() { Kitchen = Room(celsius) });
        Assert.Null(Step(run, "ripen").Time);
        Assert.Equal(celsius, Step(run, "ripen").SettlesAt!.Value.Celsius, 1e-9);
        Assert.Contains(run.Findings, finding => finding.Kind == "never-ripens-here");
        Assert.Null(run.Total);
    }

    [Fact]
    public void WithoutYeastOrStarter_ItIsNotComputed_AndThatIsTold()
    {
        var run = Rehearse(Preferment(100, 100, 0.06, "ripe\n    measured: 11 h").Replace("    instant yeast: 0.06 g\n", "", StringComparison.Ordinal), new() { Kitchen = Room(28) });
        Assert.Null(Step(run, "ripen").Time);
        Assert.Contains(run.Findings, finding => finding.Kind == "ripening-not-computed");
    }

    /// <summary>Hours in the fridge count for little, and for something: after more of them it is ripe sooner in the room.</summary>
    [Theory]
    [InlineData("poolish")]
    [InlineData("levain")]
    public void HoursInTheFridge_CountTowardsRipeness(string which)
    {
        double Ripens(int hours) => Step(Rehearse(TextOf(which, "ripe").Replace(
            "steps:\n", $"steps:\n  night:\n    kind: rest\n    of: first\n    where: fridge\n    cover: covered\n    ends: after {hours} h\n", StringComparison.Ordinal)), "ripen").Time!.Value.Likely.Minutes;
        Assert.InRange(Ripens(10) - Ripens(30), 20, 600);
    }

    /// <summary>What has grown in a poolish raises the dough: one that stood two hours brings less than one that stood twenty.</summary>
    [Fact]
    public void DoughOnARipePoolish_RisesFasterThanOnAYoungOne()
    {
        double Bulk(string hours) => Step(Rehearser.Rehearse(Of("poolish", $"ripe, about {hours}"), Larder.Shipped), "bulk").Time!.Value.Likely.Minutes;
        Assert.True(Bulk("20 h") < 0.7 * Bulk("2 h"));
    }

    /// <summary>A levain that is as dense as ripe brings as much, however fast it was; one that was only just fed brings what went into it.</summary>
    [Fact]
    public void DoughOnARipeLevain_RisesFasterThanOnOneJustFed()
    {
        double Bulk(string text) => Step(Rehearse(text), "bulk").Time!.Value.Likely.Minutes;
        var ripe = Levain(5, "ripe");
        var justFed = ripe.Replace("  ripen:\n    kind: rest\n    of: first\n    cover: covered\n    ends: ripe\n    cue: domed\n", "", StringComparison.Ordinal);
        Assert.NotEqual(ripe, justFed);
        Assert.True(1.5 * Bulk(ripe) < Bulk(justFed));
        Assert.Equal(Bulk(Levain(5, "ripe, about 8 h")), Bulk(Levain(5, "ripe, about 12 h")), 1);
    }

    [Fact]
    public void SourInAHotRoom_IsToldWithWhatItsBacteriaDo()
    {
        var recipe = RecipeText.Read(Texts.Read("demo/recipes/night-boat-rye.yaml")).Recipe!;
        var hot = Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = recipe.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(30)) } });
        var told = hot.Findings.Where(finding => finding.Kind == "sour-stands-warm").Select(finding => finding.Place).ToList();
        Assert.Equal(["steps.wake", "steps.night", "steps.bulk"], told);
        Assert.DoesNotContain(Rehearser.Rehearse(recipe, Larder.Shipped).Findings, finding => finding.Kind == "sour-stands-warm");
    }

    [Fact]
    public void YeastBesideSourdough_RaisesTheDoughAlone_AndThatIsTold()
    {
        var both = Rehearse(Levain(5, "ripe").Replace("    salt: 5 g\n", "    salt: 5 g\n    instant yeast: 1 g\n", StringComparison.Ordinal));
        Assert.Contains(both.Findings, finding => finding.Kind == "sour-beside-yeast" && finding.Place == "steps.bulk");
        Assert.DoesNotContain(Rehearse(Levain(5, "ripe")).Findings, finding => finding.Kind == "sour-beside-yeast");
        Assert.DoesNotContain(Rehearse(Preferment(100, 100, 0.06, "ripe")).Findings, finding => finding.Kind == "sour-beside-yeast");
    }

    private static Recipe Of(string which, string ends) => RecipeText.Read(TextOf(which, ends)).Recipe!;

    private static string TextOf(string which, string ends) => which == "poolish" ? Preferment(100, 100, 0.06, ends) : Levain(5, ends);

    private static string Preferment(double flour, double water, double instant, string ends) => FormattableString.Invariant($"""
        doughwright: 1
        title: On a preferment
        home:
          air: 21 C
        parts:
          first:
            kind: preferment
            strong white flour: {flour} g
            water: {water} g
            instant yeast: {instant} g
          dough:
            first: all of it
            strong white flour: 200 g
            water: 100 g
            salt: 5 g
        {Steps(ends)}
        """);

    private static string Levain(int fed, string ends) => FormattableString.Invariant($"""
        doughwright: 1
        title: On a levain
        home:
          air: 24 C
        parts:
          starter:
            strong white flour: 10 g
            water: 10 g
          first:
            kind: preferment
            starter: all of it
            strong white flour: {20 * fed} g
            water: {20 * fed} g
          dough:
            first: all of it
            strong white flour: 200 g
            water: 100 g
            salt: 5 g
        {Steps(ends)}
        """);

    private static string Steps(string ends) => $"""
        steps:
          ripen:
            kind: rest
            of: first
            cover: covered
            ends: {ends}
            cue: domed
          mix:
            of: dough
            hands: 5 min
            vessel: steel bowl, 500 g
          bulk:
            of: dough
            vessel: steel bowl, 500 g
            cover: covered
            ends: at 1.5 times its volume
            cue: at the tape
        """;

    private static Kitchen Room(double celsius) => new() { Air = AirProfile.Constant(Temperature.FromCelsius(celsius)) };

    private static Rehearsal Rehearse(string text, Request? request = null) => Rehearser.Rehearse(RecipeText.Read(text).Recipe!, Larder.Shipped, request);

    private static RehearsedStep Step(Rehearsal run, string id) => run.FindStep(id)!;
}
