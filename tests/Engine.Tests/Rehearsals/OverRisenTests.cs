using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>
/// All gas along a dough's way counts. That a strong white dough holds about 4 to 5 times its volume is of the trade and from memory (source
/// rise-ceiling); that two days in a warm room or a week in the fridge are too long for an ordinary dose, and a night in the fridge is not, is common
/// practice, no source.
/// </summary>
public class OverRisenTests
{
    private static Rehearsal Of(string between, string before = "", string flour = "strong white flour") => Rehearser.Rehearse(
        RecipeText.Read($"""
            doughwright: 1
            title: Waiting loaf
            make: 1 loaf of 800 g
            home:
              air: 22 C
              fridge: 5 C
            parts:
              dough:
                {flour}: 480 g
                water: 310 g, at 25 C
                salt: 9 g
                instant yeast: 3 g
            steps:
              mix:
                of: dough
                hands: 10 min
                way: by hand
                vessel: steel bowl, 500 g
            {before}
              bulk:
                of: dough
                cover: covered
                ends: doubled
                measured: 100 min
                cue: at the tape
            {between}
              shape:
                of: dough
                hands: 10 min
              proof:
                of: dough
                cover: cloth
                measured: 60 min
                cue: springs back slowly
              bake:
                of: dough
                oven: 230 C fan
                ends: core at 96 C
                cue: brown
            """).Recipe!,
        Larder.Shipped);

    private static string Rest(string time, string where) => $"""
              wait:
                kind: rest
                of: dough
                where: {where}
                cover: covered
                vessel: steel bowl, 500 g
                ends: after {time}
            """;

    private static Finding? Told(Rehearsal rehearsal, string kind) => rehearsal.Findings.SingleOrDefault(finding => finding.Kind == kind);

    [Fact]
    public void TwoDaysInTheRoom_AreAnError_ThatSaysWhereWhenAndHowFar()
    {
        var told = Told(Of(Rest("48 h", "room")), "rises-far-past-its-flour")!;
        Assert.Equal((Grade.Error, "steps.wait", false), (told.Grade, told.Place, told.Safety));
        Assert.InRange(((Engine.Quantities.Duration)told.Arguments["time"]).Hours, 0.5, 8);
        Assert.True((double)told.Arguments["growth"] > 9);
        Assert.Equal(5.0, told.Arguments["most"]);
    }

    [Theory]
    [InlineData("14 h", false)]
    [InlineData("168 h", true)]
    public void ANightInTheFridge_IsSound_AndAWeekIsNot(string time, bool told) =>
        Assert.Equal(told, Of(Rest(time, "fridge")).Findings.Any(finding => finding.Kind is "rises-past-its-flour" or "rises-far-past-its-flour" && finding.Place == "steps.wait"));

    [Fact]
    public void AnOrdinaryLoaf_IsToldNothing() => Assert.DoesNotContain(Of("").Findings, finding => finding.Kind.StartsWith("rises-", StringComparison.Ordinal));

    /// <summary>Past the flour once, pressed, and not past it again: told once.</summary>
    [Fact]
    public void ItIsToldOnce_WhereItHappens() => Assert.Single(
        Of(Rest("48 h", "room")).Findings, finding => finding.Kind.StartsWith("rises-", StringComparison.Ordinal));

    /// <summary>The dough that stood before its bulk has begun to rise: at home the same minutes come out, and the yeast is seen to be slower for it.</summary>
    [Fact]
    public void ARestBeforeTheBulk_Counts()
    {
        double Elsewhere(string before) => Rehearser.Rehearse(
            Recipe(before),
            Larder.Shipped,
            new() { Kitchen = new() { Air = Engine.Kitchens.AirProfile.Constant(Engine.Quantities.Temperature.FromCelsius(18)) } }).FindStep("bulk")!.Time!.Value.Likely.Minutes;

        var home = Of("", Rest("40 min", "room")).FindStep("bulk")!.Time!.Value.Likely.Minutes;
        Assert.Equal(100, home, 1e-6);
        Assert.True(Elsewhere(Rest("40 min", "room")) > 100);
        Assert.NotEqual(Elsewhere(""), Elsewhere(Rest("40 min", "room")), 1.0);
    }

    private static Recipe Recipe(string before) => Of("", before).Recipe;

    /// <summary>Weaker flour holds less, so it is past it sooner.</summary>
    [Fact]
    public void RyeIsPastItSooner()
    {
        Engine.Quantities.Duration When(string flour) => (Engine.Quantities.Duration)Of(Rest("48 h", "room"), "", flour).Findings
            .First(finding => finding.Kind.StartsWith("rises-", StringComparison.Ordinal) && finding.Place is "steps.wait" or "steps.bulk").Arguments["time"];
        Assert.True(When("plain flour") < When("strong white flour"));
    }
}
