using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>What is not known stays unknown: null and a finding, never a guess and never a NaN.</summary>
public class UnknownTests
{
    private static Rehearsal Of(string piece, string instead, Request? request = null) =>
        Rehearser.Rehearse(RecipeText.Read(Texts.PotatoRollsWith(piece, instead)).Recipe!, Larder.Shipped, request);

    private static readonly Request Cold = new() { Kitchen = new() { Air = AirProfile.Constant(Bake.Celsius(17)) } };

    [Fact]
    public void UnknownIngredient_GivesNullAndAFinding()
    {
        var away = Of("sugar: 30 g", "moon dust: 30 g", Cold);
        Assert.Null(away.Formula.Percent.TrueWater);
        Assert.Null(away.FindStep("bulk")!.Time);
        Assert.Null(away.Total);
        Assert.Contains(away.Findings, finding => finding.Place == "steps.bulk");
        Assert.Contains(away.Findings, finding => finding.Place == "parts.dough.moon-dust");
        Assert.DoesNotContain("NaN", Picture.Of(away), StringComparison.Ordinal);
    }

    [Fact]
    public void UnknownIngredient_AtHome_LeavesTheAuthorsMinutes()
    {
        var home = Of("sugar: 30 g", "moon dust: 30 g");
        Assert.Equal(105, home.FindStep("bulk")!.Time!.Value.Likely.Minutes, 1e-9);
        Assert.Equal(70, home.FindStep("proof")!.Time!.Value.Likely.Minutes, 1e-9);
        Assert.DoesNotContain("NaN", Picture.Of(home), StringComparison.Ordinal);
    }

    [Fact]
    public void MissingScaldBowl_GivesNullElsewhere()
    {
        var away = Of("    hands: 3 min\n    vessel: steel bowl, 150 g\n", "    hands: 3 min\n", Cold);
        Assert.Null(away.Components.Single(component => component.Id == "scald").Mixed);
        Assert.Null(away.FindStep("scald")!.Time);
        Assert.Null(away.FindStep("scald")!.StartTemperature);
        Assert.Null(away.Total);
        Assert.DoesNotContain("NaN", Picture.Of(away), StringComparison.Ordinal);
    }

    [Fact]
    public void NoYeast_NothingIsComputed()
    {
        var away = Of("    instant yeast: 4 g\n", "", Cold);
        Assert.Contains(away.Findings, finding => finding is { Kind: "rise-not-computed", Place: "steps.bulk" });
        Assert.DoesNotContain("NaN", Picture.Of(away), StringComparison.Ordinal);
    }

    /// <summary>What is wanting is told by its name, and nothing else beside it.</summary>
    [Theory]
    [InlineData("sugar: 30 g", "moon dust: 30 g", "lines", "moon dust")]
    [InlineData("    strong white flour: 80 g", "    star flour: 80 g", "lines", "star flour")]
    [InlineData(
        "    vessel: steel bowl, 150 g\n    cover: covered\n    ends: at 28 C\n    measured: 100 min on 9 November\n", "    ends: after 100 min\n", "cold", "Dough")]
    [InlineData("    instant yeast: 4 g\n", "", "dead", "Dough")]
    [InlineData("    instant yeast: 4 g\n", "    instant yeast: 400 g\n", "yeasty", "Dough")]
    public void WhatIsWanting_IsToldByItsName(string piece, string instead, string wanting, string name)
    {
        var told = Assert.Single(Of(piece, instead, Cold).Findings, finding => finding is { Kind: "rise-not-computed", Place: "steps.bulk" });
        var named = Assert.Single(told.Arguments, argument => argument is { Key: not "step", Value: not "" });
        Assert.Equal((wanting, name), (named.Key, named.Value is string[] lines ? string.Join(", ", lines) : named.Value));
    }
}
