using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>
/// Flour and milk stirred on the hob to 65 °C: the trade's everyday scald (common practice, no source). Its heat comes from the hob, so whether its author
/// calls the step a cook or a scald, nothing that is worked out of it differs.
/// </summary>
public class ScaldOnHobTests
{
    private static readonly string Cook = Texts.Read("tests/data/texts/milk-bread.yaml")
        .Replace("    ends: at 65 C\n", "    ends: at 65 C\n    measured: 6 min\n", StringComparison.Ordinal);

    private static readonly string Scald = Cook.Replace("  tangzhong:\n    kind: cook\n", "  tangzhong:\n    kind: scald\n", StringComparison.Ordinal);

    private static readonly Request Cold = new() { Kitchen = new() { Air = AirProfile.Constant(Bake.Celsius(12)) } };

    private static readonly Request High = new() { Kitchen = new() { Air = AirProfile.Constant(Bake.Celsius(21)), Altitude = Engine.Quantities.Length.FromMetres(2500) } };

    private static Rehearsal Of(string text, Request? request = null) => Rehearser.Rehearse(RecipeText.Read(text).Recipe!, Larder.Shipped, request);

    public static TheoryData<string> Places => ["home", "cold", "high", "asked"];

    private static Request? At(string place) => place switch
    {
        "cold" => Cold,
        "high" => High,
        "asked" => new() { Kitchen = Cold.Kitchen, At = new Dictionary<string, Engine.Quantities.Temperature> { ["tangzhong"] = Bake.Celsius(40) } },
        _ => null,
    };

    [Theory]
    [MemberData(nameof(Places))]
    public void ScaldOnTheHob_IsHeatedAsACookIs(string place)
    {
        Assert.NotEqual(Cook, Scald);
        var (cook, scald) = (Of(Cook, At(place)), Of(Scald, At(place)));
        Assert.Equal(65, scald.FindStep("tangzhong")!.EndTemperature!.Value.Celsius, 1e-9);
        Assert.Equal(6, scald.FindStep("tangzhong")!.Time!.Value.Likely.Minutes, 1e-9);
        foreach (var (one, other) in cook.Steps.Zip(scald.Steps))
        {
            Assert.Equal(one.Time?.Likely.Minutes ?? double.NaN, other.Time?.Likely.Minutes ?? double.NaN, 1e-6);
            Assert.Equal(one.EndTemperature?.Celsius ?? double.NaN, other.EndTemperature?.Celsius ?? double.NaN, 1e-6);
        }

        Assert.Equal(cook.Findings.Select(finding => finding.Id).Order(), scald.Findings.Select(finding => finding.Id).Order());
    }

    /// <summary>The minimal text in which the dough came out at 8.7 °C: nothing cools the scald, nothing is measured.</summary>
    [Fact]
    public void ScaldThatGoesInHot_WarmsItsDough()
    {
        static string Text(string kind) => $"""
            doughwright: 1
            title: Least of all
            home:
              name: Kitchen
              air: 21 C
              fridge: 5 C
            parts:
              roux:
                kind: scald
                strong white flour: 25 g
                milk: 125 g, from the fridge
              dough:
                strong white flour: 425 g
                roux: all of it
                milk: 150 g, from the fridge
                salt: 8 g
                instant yeast: 6 g
            steps:
              roux:
                kind: {kind}
                of: roux
                where: hob
                ends: at 65 C
                measured: 6 min
                cue: thick
              mix:
                of: dough
                vessel: steel bowl, 900 g
                hands: 10 min
              bulk:
                of: dough
                ends: doubled
                measured: 80 min
                cue: doubled
            """;
        var (cook, scald) = (Of(Text("cook"), Cold), Of(Text("scald"), Cold));
        var warm = scald.Components.Single(component => component.Id == "dough").Mixed!.Value.Likely.Celsius;
        Assert.Equal(cook.Components.Single(component => component.Id == "dough").Mixed!.Value.Likely.Celsius, warm, 1e-9);
        Assert.InRange(warm, 20, 35);
    }

    [Fact]
    public void NoBowlIsAsked_OfAPotOnTheHob()
    {
        Assert.DoesNotContain(RecipeChecks.Of(RecipeText.Read(Scald).Recipe!), finding => finding.Kind == "bowl-not-said");
        Assert.Contains(
            RecipeChecks.Of(RecipeText.Read(Scald.Replace("    where: hob\n", "", StringComparison.Ordinal)).Recipe!), finding => finding.Kind == "bowl-not-said");
    }

    /// <summary>Elsewhere it is still what it was: poured in its bowl, and cooled from there.</summary>
    [Fact]
    public void ScaldInItsBowl_CoolsAsEver()
    {
        var home = Of(Texts.PotatoRolls);
        Assert.False(home.FindStep("scald")!.IsCooked);
        Assert.True(home.FindStep("scald")!.StartTemperature > home.FindStep("scald")!.EndTemperature);
    }

    [Theory]
    [InlineData("at 50 C", "scald-cooked-too-cool")]
    [InlineData("at 3 C", "cook-ends-cooler")]
    public void EndThatIsTooCool_IsTold(string ends, string kind) => Assert.Contains(
        Of(Scald.Replace("    ends: at 65 C\n", $"    ends: {ends}\n", StringComparison.Ordinal)).Findings,
        finding => finding.Kind == kind && finding.Place == "steps.tangzhong");

    [Fact]
    public void WhatIsToCoolOnTheHob_IsToldAsThatAlone() => Assert.DoesNotContain(
        Of(Scald.Replace("    ends: at 65 C\n", "    ends: at 3 C\n", StringComparison.Ordinal)).Findings, finding => finding.Kind == "scald-cooked-too-cool");

    [Fact]
    public void ScaldThatCools_ComesOffTheHob_InOneGo()
    {
        var text = Texts.PotatoRollsWith("    name: Scald the flour\n    of: scald\n", "    name: Scald the flour\n    of: scald\n    where: hob\n");
        var told = Assert.Single(Of(text).Findings, finding => finding.Kind == "cook-ends-cooler");
        var changed = Assert.Single(Engine.Remedies.Remedies.For(told, RecipeText.Read(text).Recipe)).CarryOut(text);
        Assert.Equal(Picture.Of(Of(Texts.PotatoRolls)), Picture.Of(Of(changed)));
    }

    [Fact]
    public void AnotherSize_KeepsItsTime()
    {
        static Resized In(string text) => Resizing.Resize(RecipeText.Read(text).Recipe!, Larder.Shipped, new(new ResizeWish.Pieces(3)));
        var (cook, scald) = (In(Cook), In(Scald));
        Assert.Equal(cook.Measures.Select(measure => (measure.Step, measure.Stands)), scald.Measures.Select(measure => (measure.Step, measure.Stands)));
        Assert.Equal(cook.Findings.Select(finding => finding.Id), scald.Findings.Select(finding => finding.Id));
    }
}
