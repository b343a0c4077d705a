using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>A hearth loaf in ovens that are not the author's.</summary>
public class OvensTests
{
    private static readonly Recipe Loaf = RecipeText.Read(Texts.Read("tests/data/texts/hearth-loaf.yaml")).Recipe!;
    private static readonly Recipe Unsteamed = Loaf with { Steps = [.. Loaf.Steps.Select(step => step with { Steam = null })] };

    private static RehearsedStep BakeIn(Kitchen? kitchen = null) => RehearsalIn(kitchen).FindStep("bake")!;

    private static Rehearsal RehearsalIn(Kitchen? kitchen) => Rehearser.Rehearse(Loaf, Larder.Shipped, kitchen is null ? Request.Home : Request.Home with { Kitchen = kitchen });

    private static Kitchen With(Func<OvenTraits, OvenTraits> traits) => Loaf.Home with { Name = "Kestrel cottage", OvenTraits = traits(Loaf.Home.OvenTraits) };

    [Fact]
    public void Home_IsSetAsTheAuthorSetIt()
    {
        var bake = BakeIn();
        Assert.Equal((240, 210, 10), (bake.Dial!.Here.Celsius, bake.Dial.Then!.Dial.Here.Celsius, bake.Dial.Then.After.Minutes));
        Assert.Equal((BakedOn.Stone, 10.0, 35.0), (bake.On, bake.Steam!.Value.Minutes, bake.Time!.Value.Likely.Minutes));
    }

    /// <summary>The author's runs 10 K hot: 240 on its dial is 250 inside.</summary>
    [Theory]
    [InlineData(10, 240, 210)]
    [InlineData(0, 250, 220)]
    [InlineData(-15, 265, 235)]
    [InlineData(22, 230, 200)]
    public void Dial_IsMovedByWhatTheOvensDiffer(double off, int celsius, int later)
    {
        var bake = BakeIn(With(traits => traits with { OffDial = TemperatureDelta.FromKelvins(off) }));
        Assert.Equal((celsius, later), (bake.Dial!.Here.Celsius, bake.Dial.Then!.Dial.Here.Celsius));
    }

    [Fact]
    public void KitchenWithoutStoneOrSteam_SaysSo()
    {
        var here = RehearsalIn(With(traits => traits with { Hearth = null, Steam = OvenSteam.None }));
        Assert.Contains(here.Findings, finding => finding is { Kind: "no-stone-here", Grade: Grade.Warning });
        Assert.Contains(here.Findings, finding => finding.Kind == "no-steam-here" && finding.Arguments["time"].Equals(Duration.FromMinutes(10)));
        Assert.Equal((BakedOn.Tray, null), (here.FindStep("bake")!.On, here.FindStep("bake")!.Steam));
        Assert.DoesNotContain(RehearsalIn(null).Findings, finding => finding.Kind is "no-stone-here" or "no-steam-here");
    }

    /// <summary>Walls and stone of a home oven take 30 to 60 minutes, a thermometer's figure from memory (thermal reference sheet 7.3).</summary>
    [Fact]
    public void Preheating_WithAStone_TakesHalfAnHourToAnHour()
    {
        double Minutes(Func<OvenTraits, OvenTraits> traits) => RehearsalIn(With(traits)).Steps.Single(step => step.Kind == StepKind.Preheat).Time!.Value.Likely.Minutes;
        var (stone, steel) = (Minutes(traits => traits), Minutes(traits => traits with { Hearth = new(HearthMaterial.Steel, null) }));
        Assert.InRange(stone, 30, 65);
        Assert.InRange(steel, 30, stone);
        Assert.InRange(Minutes(traits => traits with { Hearth = null }), 15, 20);
        Assert.InRange(Minutes(traits => traits with { HeatsIn = Duration.FromMinutes(30) }), stone + 5, stone + 25);
    }

    [Fact]
    public void Oven_OfAStep_HasAllThatKitchenAndStepSay()
    {
        var home = HomeRun.Of(Formula.Balance(Loaf, Larder.Shipped), 1).Result.Stage;
        var step = Loaf.FindStep("bake")!;
        var oven = Ovens.For(step, home, OvenDials.Inside(step.Oven!, home), UnderSide.Usual);
        Assert.Equal((250, -30, 600), (oven.Celsius, oven.Change!.By, oven.Change.AfterSeconds));
        Assert.Equal((600, 0.4 * 101325), (oven.SteamSeconds, oven.Steam));
        Assert.Equal((0.015, 80, 0), (oven.Hearth!.Thick, oven.DoorSeconds, oven.LidSeconds));
        var inAPot = step.FindVariant("in-a-pot")!.Step;
        var pot = Ovens.For(inAPot, home, OvenDials.Inside(inAPot.Oven!, home), UnderSide.Usual);
        Assert.Equal((240, 1500, 0), (pot.Celsius, pot.LidSeconds, pot.SteamSeconds));
        Assert.Null(pot.Hearth);
    }

    /// <summary>Over a section the author's minutes hold at home, a stone that is not there costs time, and an oven that is off its dial none but what rounding leaves.</summary>
    [Fact]
    public void Section_BakesInTheOvenOfTheKitchen()
    {
        var home = Rehearser.BakesAtHome(Formula.Balance(Unsteamed, Larder.Shipped), TestContext.Current.CancellationToken);
        double Minutes(Kitchen? kitchen) => Rehearser.OverSections(
            home, Larder.Shipped, Request.Home with { Kitchen = kitchen }, TestContext.Current.CancellationToken).Find("bake")!.Minutes.Minutes;
        Assert.Equal(35, Minutes(null), 1e-6);
        Assert.InRange(Minutes(With(traits => traits with { Hearth = null })), 35.5, 70);
        Assert.Equal(35, Minutes(With(traits => traits with { OffDial = TemperatureDelta.FromKelvins(-20) })), 0.5);
    }

    /// <summary>Where an oven steams, the figure along one radius, which carries that, is not replaced.</summary>
    [Fact]
    public void Section_IsNotTold_OfASteamedBake() =>
        Assert.Null(Rehearser.OverSections(Rehearser.BakesAtHome(Formula.Balance(Loaf, Larder.Shipped), TestContext.Current.CancellationToken), Larder.Shipped, Request.Home, TestContext.Current.CancellationToken).Find("bake"));

    [Theory]
    [InlineData("    on: stone\n", "    on: stone\n    lid: off after 20 min\n", "lid-of-nothing")]
    [InlineData("    on: stone\n", "    on: stone\n    vessel: pot\n    lid: off after 20 min\n", "steam-under-lid")]
    [InlineData("    hands: 5 min\n", "    hands: 5 min\n    steam: 5 min\n", "oven-words-elsewhere")]
    public void WordsThatDoNothing_AreTold(string sound, string slip, string kind)
    {
        var text = Texts.Read("tests/data/texts/hearth-loaf.yaml");
        Assert.DoesNotContain(Engine.Recipes.Checks.RecipeChecks.Of(Loaf), finding => finding.Kind == kind);
        Assert.Contains(Engine.Recipes.Checks.RecipeChecks.Of(RecipeText.Read(text.Replace(sound, slip, StringComparison.Ordinal)).Recipe!), finding => finding.Kind == kind);
    }

    [Theory]
    [InlineData("210 C after 10 min", "210 C after 50 min", "dial-after-end")]
    [InlineData("    steam: 10 min\n", "    vessel: pot\n    lid: off after 50 min\n", "lid-to-the-end")]
    public void WhatComesAfterTheEnd_IsTold(string sound, string slip, string kind)
    {
        var recipe = RecipeText.Read(Texts.Read("tests/data/texts/hearth-loaf.yaml").Replace(sound, slip, StringComparison.Ordinal)).Recipe!;
        Assert.Contains(Rehearser.Rehearse(recipe, Larder.Shipped).Findings, finding => finding.Kind == kind);
    }
}
