using CsCheck;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>Where the warmth of a mix comes from.</summary>
public class HeatOfTests
{
    private static void Hold(Rehearsal rehearsal)
    {
        foreach (var step in rehearsal.Steps)
        {
            var balance = rehearsal.HeatOf(step.Id);
            if (step.Kind != StepKind.Mix)
            {
                Assert.Null(balance);
                continue;
            }

            Assert.NotNull(balance);
            Assert.Equal(step.EndTemperature, balance.Mixed);
            // A glaze is stirred from things all as warm as the room: then a thousandth of a joule is nothing.
            var largest = Math.Max(1e-6, balance.Shares.Max(share => Math.Abs(share.Kilojoules)));
            Assert.Equal(0, balance.Shares.Sum(share => share.Kilojoules), 1e-6 * largest);
            foreach (var share in balance.Shares.Where(share => share.KilojoulesPerKelvin is not null))
            {
                var degrees = (share.GoesIn!.Value - balance.Mixed).Kelvins;
                Assert.True(share.KilojoulesPerKelvin > 0);
                Assert.Equal(share.KilojoulesPerKelvin!.Value * degrees, share.Kilojoules, 1e-9 * largest);
            }
        }
    }

    [Fact]
    public void EveryDemoInEveryKitchen_AddsUpToNothing() => Assert.All(DemoRuns.All.Append(DemoRuns.Warmed).Append(DemoRuns.Iced), Hold);

    [Fact]
    public void AnyBakeInAnyKitchen_AddsUpToNothing() => Gen.Select(Bake.Any, Bake.AnyKitchen).Sample(
        (bake, kitchen) => Hold(Rehearser.Rehearse(bake.Recipe, Larder.Shipped, new() { Kitchen = kitchen })), iter: 60);

    /// <summary>Melting takes 334 J/g and warming the melt 4.19 J/(g K) (handbook values, from memory).</summary>
    [Fact]
    public void Ice_StandsApartFromTheWater_AndNothingIsColderThanIt()
    {
        var iced = DemoRuns.Iced;
        var balance = iced.HeatOf("mix")!;
        var ice = balance.Shares.Single(share => share.Giver == HeatGiver.Ice);
        var water = balance.Shares.Single(share => share.Giver == HeatGiver.Ingredient && share.Line == "water");
        Assert.Equal(iced.Solutions[0].Ice!.Value.Likely, ice.Mass);
        Assert.Equal(168, (ice.Mass!.Value + water.Mass!.Value).Grams, 1e-9);
        Assert.Equal((0.0, iced.Kitchen.Tap.Celsius), (ice.GoesIn!.Value.Celsius, water.GoesIn!.Value.Celsius));
        Assert.Equal(-(334 + (4.19 * balance.Mixed.Celsius)) * ice.Mass.Value.Grams / 1000, ice.Kilojoules, 0.01 * -ice.Kilojoules);
        var entry = iced.Course().Entries.Single(entry => entry.Step == "mix");
        Assert.Equal(0, entry.Coldest!.Value.Celsius);
    }

    [Fact]
    public void Shares_StandInTheOrderOfAdding_ThenWorkThenBowl()
    {
        var balance = DemoRuns.PotatoRolls.HeatOf("mix")!;
        Assert.Equal(
            ["scald", "potato", "egg", "sugar", "instant yeast", "salt", "butter", "strong white flour", null, null],
            balance.Shares.Select(share => share.Line?.Replace('-', ' ')));
        Assert.Equal([HeatGiver.Part, HeatGiver.Part], balance.Shares.Take(2).Select(share => share.Giver));
        Assert.Equal([HeatGiver.Work, HeatGiver.Vessel], balance.Shares.TakeLast(2).Select(share => share.Giver));
        Assert.DoesNotContain(balance.Shares, share => share.IsFree);
    }

    [Fact]
    public void Butter_TakesItsMeltingHeat()
    {
        var butter = DemoRuns.PotatoRolls.HeatOf("mix")!.Shares.Single(share => share.Line == "butter");

        // Without melting 50 g of butter hold about 0.1 kJ/K; from 21 to 24 °C a sixth of the fat melts.
        Assert.InRange(butter.KilojoulesPerKelvin!.Value, 0.13, 0.25);
    }

    [Fact]
    public void WhatWasAskedFor_IsFreeAndGoesInAsAnswered()
    {
        var warmth = DemoRuns.Warmed.Solutions[0].Warmth!.Value.Likely.Celsius;
        var free = DemoRuns.Warmed.HeatOf("mix")!.Shares.Where(share => share.IsFree).ToList();
        Assert.Equal(["potato", "scald"], free.Select(share => share.Line).Order());
        Assert.All(free, share => Assert.Equal(warmth, share.GoesIn!.Value.Celsius, 1e-9));
        Assert.Equal(26, DemoRuns.Warmed.HeatOf("mix")!.Mixed.Celsius, 0.02);
    }

    [Fact]
    public void StepThatDoesNotMix_HasNoBalance()
    {
        Assert.Null(DemoRuns.PotatoRolls.HeatOf("bake"));
        Assert.Null(DemoRuns.PotatoRolls.HeatOf("no such step"));
    }
}
