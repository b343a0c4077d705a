using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>The loaf after the oven as a step that is told. Expected from the model, not measured, but for the physics in RackTests.</summary>
public class LoafCoolingTests
{
    private const string Cooling = "  cool:\n    name: Cool on a rack\n    of: dough\n    ends: after 90 min\n    tools: rack\n";

    private static readonly Recipe Hearth = Read("hearth-loaf", "", "");

    private static Recipe Read(string name, string piece, string instead)
    {
        var text = Texts.Read($"demo/recipes/{name}.yaml");
        Assert.True(piece.Length == 0 || text.Split(piece).Length == 2, piece);
        var reading = RecipeText.Read(piece.Length == 0 ? text : text.Replace(piece, instead, StringComparison.Ordinal));
        Assert.True(reading.Sound, string.Join(", ", reading.Findings.Select(finding => finding.Kind)));
        return reading.Recipe!;
    }

    private static Rehearsal In(Recipe recipe, double? air = null) =>
        Rehearser.Rehearse(recipe, Larder.Shipped, air is { } celsius ? new() { Kitchen = recipe.Home with { Air = AirProfile.Constant(Bake.Celsius(celsius)) } } : null);

    private static RehearsedStep Cool(Recipe recipe, double? air = null, string step = "cool") => In(recipe, air).FindStep(step)!;

    private static double Minutes(RehearsedStep step) => step.Time!.Value.Likely.Minutes;

    [Fact]
    public void AtHome_TheAuthorsMinutesStand_AndTheMiddleIsTold()
    {
        var cool = Cool(Hearth);
        Assert.Equal((90.0, 90.0, 90.0), (Minutes(cool), cool.Time!.Value.Low.Minutes, cool.Time.Value.High!.Value.Minutes));
        Assert.Equal(97, cool.StartTemperature!.Value.Celsius, 1e-6);
        Assert.InRange(cool.EndTemperature!.Value.Celsius, 28, 45);
        var told = cool.Cooling!();
        Assert.Equal(CooledTo.Minutes, told.Until);
        Assert.Equal(cool.EndTemperature, told.Core.Likely);
        Assert.True(told.Core.Low < told.Core.Likely && told.Core.Likely < told.Core.High);
        Assert.InRange(told.Loss.Likely.Value, 1, 3);
    }

    [Fact]
    public void ElsewhereAsAtHome_TakesTheAuthorsMinutes()
    {
        var same = Rehearser.Rehearse(Hearth, Larder.Shipped, new() { Kitchen = Hearth.Home with { Air = AirProfile.Constant(Bake.Celsius(Hearth.Home.Air.At(Duration.Zero).Celsius + 1e-7)) } });
        Assert.False(same.AtHome);
        Assert.Equal(90, Minutes(same.FindStep("cool")!), 0.01);
    }

    [Fact]
    public void ColderRoom_CoolsToTheSameMiddleSooner_AndTheDayFollows()
    {
        var (cold, home, warm) = (In(Hearth, 15), In(Hearth), In(Hearth, 27));
        Assert.True(Minutes(cold.FindStep("cool")!) < 85);
        Assert.True(Minutes(warm.FindStep("cool")!) > 95);
        Assert.Equal(CooledTo.SameCore, cold.FindStep("cool")!.Cooling!().Until);
        Assert.Equal(home.FindStep("cool")!.EndTemperature!.Value.Celsius, cold.FindStep("cool")!.EndTemperature!.Value.Celsius, 0.01);
        foreach (var rehearsal in (Rehearsal[])[cold, warm])
        {
            var cool = rehearsal.FindStep("cool")!;
            Assert.Equal(cool.Start!.Value.Minutes + Minutes(cool), rehearsal.Total!.Value.Likely.Minutes, 1e-6);
            Assert.True(cool.Time!.Value.Low < cool.Time.Value.High);
        }
    }

    /// <summary>
    /// A room that is too warm for the author's middle keeps it as long as the warmest one that is not, which is 5 K colder than that middle was: here it is then
    /// between the room and 5 K above it.
    /// </summary>
    [Fact]
    public void HotRoom_KeepsItAsLongAsTheWarmestThatWouldDo()
    {
        var (hot, core) = (Cool(Hearth, 38), Cool(Hearth).EndTemperature!.Value.Celsius);
        Assert.Equal(CooledTo.RoomIsWarm, hot.Cooling!().Until);
        Assert.InRange(hot.EndTemperature!.Value.Celsius, 38, 43);
        var (within, beyond) = (Cool(Hearth, core - 5.01), Cool(Hearth, core - 4.99));
        Assert.Equal(CooledTo.SameCore, within.Cooling!().Until);
        Assert.Equal(CooledTo.RoomIsWarm, beyond.Cooling!().Until);
        Assert.Equal(Minutes(within), Minutes(beyond), 0.1);
        Assert.Equal(Minutes(within), Minutes(hot), 0.01 * Minutes(within));
    }

    /// <summary>After four hours the rye has cooled out at home: elsewhere it is as near the room, which takes about as long in any room.</summary>
    [Fact]
    public void LoafThatCooledOut_IsDoneAsNearTheRoom()
    {
        var rye = Read("night-boat-rye", "", "");
        foreach (var air in (double[])[12, 17, 28])
        {
            var cool = Cool(rye, air);
            Assert.Equal(CooledTo.NearRoom, cool.Cooling!().Until);
            Assert.InRange(Minutes(cool), 180, 320);
            Assert.InRange(cool.EndTemperature!.Value.Celsius, air - 1, air + 4);
        }
    }

    /// <summary>Newton's law alone would take as long for the same share of the way; what is warm throughout moves its heat faster.</summary>
    [Fact]
    public void LoafThatCooledOut_IsAsNearAWarmRoomSooner()
    {
        var rye = Read("night-boat-rye", "", "");
        double[] minutes = [.. ((double[])[14, 20, 26, 32]).Select(air => Minutes(Cool(rye, air)))];
        Assert.Equal(minutes.OrderDescending(), minutes);
    }

    [Fact]
    public void LoafInItsTin_OrUnderACloth_CoolsLessThanOnARack()
    {
        var rack = Cool(Read("tin-loaf", "", "")).EndTemperature!.Value;
        var tin = Cool(Read("tin-loaf", Cooling, Cooling + "    vessel: steel tin, 500 g\n"));
        var cloth = Cool(Read("tin-loaf", Cooling, Cooling + "    cover: cloth\n"));
        Assert.True(tin.EndTemperature > rack);
        Assert.True(tin.Cooling!().InTin);
        Assert.True(cloth.EndTemperature > rack);
    }

    /// <summary>Ten minutes in the tin and then turned out: warmer than on a rack all the time, colder than in the tin all the time.</summary>
    [Fact]
    public void TinFirstAndRackThen_LiesBetween()
    {
        const string First = "  stand:\n    name: Stand in the tin\n    kind: cool\n    of: dough\n    vessel: steel tin, 500 g\n    ends: after 40 min\n";
        var both = In(Read("tin-loaf", Cooling, First + Cooling.Replace("90 min", "50 min", StringComparison.Ordinal)));
        var (stand, cool) = (both.FindStep("stand")!, both.FindStep("cool")!);
        Assert.Equal(stand.EndTemperature!.Value.Celsius, cool.StartTemperature!.Value.Celsius, 0.15);
        Assert.InRange(
            cool.EndTemperature!.Value.Celsius,
            Cool(Read("tin-loaf", "", "")).EndTemperature!.Value.Celsius,
            Cool(Read("tin-loaf", Cooling, Cooling + "    vessel: steel tin, 500 g\n")).EndTemperature!.Value.Celsius);
    }

    /// <summary>What is cut up cools sooner: rolls of 80 g against one loaf.</summary>
    [Fact]
    public void Rolls_CoolSoonerThanALoaf() => Assert.True(
        DemoRuns.PotatoRolls.FindStep("cool")!.EndTemperature < Cool(Read("hearth-loaf", "after 90 min", "after 20 min")).EndTemperature!.Value);

    [Fact]
    public void TemperatureThatIsWritten_IsWhatItCoolsTo_AndTheAuthorsMinutesAreAPace()
    {
        var timed = Read("hearth-loaf", "ends: after 90 min", "ends: at 32 C\n    measured: 100 min");
        Assert.Equal(100, Minutes(Cool(timed)), 1e-9);
        var (untimed, away) = (Cool(Read("hearth-loaf", "ends: after 90 min", "ends: at 32 C"), 17), Cool(timed, 17));
        Assert.Equal(32, away.EndTemperature!.Value.Celsius, 0.01);
        Assert.Equal(Minutes(away) / Minutes(untimed), 100 / Minutes(Cool(Read("hearth-loaf", "ends: after 90 min", "ends: at 32 C"))), 0.02);
        Assert.Equal(CooledTo.AsWritten, away.Cooling!().Until);
    }

    [Fact]
    public void TemperatureBelowTheRoom_IsNeverReached()
    {
        var hot = In(Read("hearth-loaf", "ends: after 90 min", "ends: at 25 C"), 30);
        Assert.Null(hot.FindStep("cool")!.Time);
        Assert.Equal(30, hot.FindStep("cool")!.SettlesAt!.Value.Celsius, 1e-9);
        Assert.Null(hot.Total);
        Assert.Contains(hot.Findings, finding => finding.Place == "steps.cool" && finding.Kind.StartsWith("never-ends-here", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("    oven: 230 C static\n", "", "loaf-not-told")]
    [InlineData("    tools: rack\n", "    where: oven\n", "loaf-cools-elsewhere")]
    public void LoafThatNothingTellsOf_KeepsTheAuthorsMinutes_AndSaysWhy(string piece, string instead, string kind)
    {
        var recipe = Read("hearth-loaf", piece, instead);
        var (home, away) = (In(recipe), In(recipe, 17));
        Assert.Equal(90, Minutes(home.FindStep("cool")!), 1e-9);
        Assert.Null(home.FindStep("cool")!.Cooling);
        Assert.Null(home.FindStep("cool")!.EndTemperature);
        Assert.Equal(kind, Assert.Single(home.FindStep("cool")!.Why().Parts).Kind);
        Assert.DoesNotContain(home.Findings, finding => finding.Kind == kind);
        Assert.Contains(away.Findings, finding => finding.Kind == kind && finding.Place == "steps.cool");
    }

    /// <summary>Whatever the kitchen, a number or a reason, and a range that holds it.</summary>
    [Fact]
    public void AnyKitchen_GivesANumberOrAReason()
    {
        foreach (var name in (string[])["hearth-loaf", "potato-rolls", "night-boat-rye", "tin-loaf", "quayside-pan-bread", "pilot-ring"])
        {
            foreach (var air in (double[])[-5, 2, 12, 33, 45])
            {
                var rehearsal = In(Read(name, "", ""), air);
                var cool = rehearsal.FindStep("cool")!;
                Assert.DoesNotContain("NaN", Picture.Of(rehearsal), StringComparison.Ordinal);
                Assert.True(cool.Time is { } time ? time.Low <= time.Likely && !(time.High < time.Likely) : rehearsal.Findings.Any(finding => finding.Place.StartsWith("steps.", StringComparison.Ordinal)));
            }
        }
    }
}
