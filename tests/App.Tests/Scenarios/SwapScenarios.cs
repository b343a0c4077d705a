using System.Text.Json;
using Doughwright.App.Text;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Scenarios;

/// <summary>What a teacher types when a reader lacks something, and what comes back.</summary>
public class SwapScenarios
{
    private static readonly string Buns = House.Text("harbour-buns.yaml");

    /// <summary>Each case a reader asks about, as a whole page: the recipe's changed lines and what it costs.</summary>
    [Theory]
    [InlineData("oil-for-butter", "potato-rolls", "butter=olive oil")]
    [InlineData("oil-for-butter-in-filling", "harbour-buns", "butter@filling=sunflower oil")]
    [InlineData("oil-for-butter-in-icing", "harbour-buns", "butter@icing=sunflower oil")]
    [InlineData("yolk-out", "harbour-buns", "egg yolk=")]
    [InlineData("dry-for-fresh-yeast", "harbour-buns", "fresh yeast=active dry yeast")]
    [InlineData("fresh-for-dry-yeast", "potato-rolls", "instant yeast=fresh yeast")]
    [InlineData("squash-for-potato", "potato-rolls", "potato=butternut squash, baked, mashed")]
    [InlineData("water-for-milk", "tin-loaf", "milk@dough=water")]
    [InlineData("honey-for-sugar", "tin-loaf", "sugar=honey")]
    [InlineData("salted-butter", "potato-rolls", "butter=salted butter")]
    [InlineData("egg-out", "potato-rolls", "egg=")]
    [InlineData("wholemeal-for-white", "hearth-loaf", "strong white flour=wholemeal flour")]
    [InlineData("plain-for-strong", "tin-loaf", "flour=plain flour")]
    [InlineData("buttermilk-for-milk", "tin-loaf", "milk@dough=buttermilk")]
    [InlineData("sugar-out", "tin-loaf", "sugar=")]
    public void AReaderLacks(string name, string recipe, string replace)
    {
        var run = Run.Of("swap", recipe == "harbour-buns" ? Buns : House.Demo(recipe + ".yaml"), "--replace", replace);
        var old = File.ReadAllLines(recipe == "harbour-buns" ? Buns : House.Demo(recipe + ".yaml"));
        var changed = run.Output.Split('\n').Where(line => line.Length > 0 && !old.Contains(line)).Select(line => $"> {line}");
        Assert.All(run.Messages.Split('\n'), line => Assert.InRange(Page.WidthOf(line), 0, Page.Width));
        Assert.DoesNotContain('{', run.Messages);
        Golden.Check("swap-" + name, string.Join('\n', [$"{recipe}: {replace}, exit {run.ExitCode}", .. changed, "", run.Messages]));
    }

    [Fact]
    public void WithoutAWish_TheOffersAreListed() => Golden.Check("swap-offers", Run.Of("swap", Buns).Output);

    [Fact]
    public void Refused_NoRecipeIsWritten_AndTheExitCodeSaysSo()
    {
        var run = Run.Of("swap", Buns, "--replace", "butter=sunflower oil");
        Assert.Equal((1, ""), (run.ExitCode, run.Output));
        var json = Json("swap", Buns, "--replace", "butter=sunflower oil");
        Assert.Equal(JsonValueKind.Null, json.GetProperty("text").ValueKind);
        Assert.Contains(json.GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("kind").GetString() == "swap-filling-stands-by-fat");
    }

    [Fact]
    public void TheTextOfAnAnswer_CanBeRehearsedAndSwappedAgain()
    {
        var text = Run.Of("swap", House.PotatoRolls, "--replace", "butter=olive oil").Output;
        Assert.NotNull(RecipeText.Read(text).Recipe);
        Assert.Equal(0, Run.WithInput(text, "rehearse", "-").ExitCode);
        Assert.Equal(0, Run.WithInput(text, "swap", "-", "--replace", "olive oil=butter").ExitCode);
    }

    [Fact]
    public void Comments_StayWhereTheyStood() =>
        Assert.Contains(
            "sugar: 30 g # brown is fine too",
            Run.WithInput(File.ReadAllText(House.PotatoRolls).Replace("sugar: 30 g", "sugar: 30 g # brown is fine too", StringComparison.Ordinal), "swap", "-", "--replace", "butter=lard").Output,
            StringComparison.Ordinal);

    [Fact]
    public void MeasuredTimes_AreCarriedToTheNewDough()
    {
        // No sugar: the yeast is not held back, so the bulk is shorter than the author's 105 min.
        var times = Json("swap", House.PotatoRolls, "--replace", "sugar=").GetProperty("times").EnumerateArray().ToArray();
        var bulk = times.Single(time => time.GetProperty("step").GetString() == "bulk");
        Assert.Equal(105, bulk.GetProperty("homeMinutes").GetDouble(), 1e-6);
        Assert.True(bulk.GetProperty("minutes").GetDouble() < 105);
    }

    [Theory]
    [InlineData("butter")]
    [InlineData("=olive oil")]
    [InlineData("butter@=olive oil")]
    [InlineData("buter=olive oil")]
    [InlineData("butter@doug=olive oil")]
    [InlineData("butter@wash=olive oil")]
    [InlineData("butter=oil: [x]")]
    [InlineData("butter=oil, 3 spoons")]
    public void WhatCannotBeMeant_IsAFaultOfTheCommandLine(string replace)
    {
        var run = Run.Of("swap", House.PotatoRolls, "--replace", replace);
        Assert.True(run.ExitCode is 2 or 1, run.Messages);
        Assert.Equal("", run.Output);
        Assert.NotEqual("", run.Messages);
    }

    [Fact]
    public void EverythingWrong_IsSaidAtOnce()
    {
        var run = Run.Of("swap", House.PotatoRolls, "--replace", "x", "--replace", "buter=lard", "--replace", "butter@doug=lard");
        Assert.Equal(2, run.ExitCode);
        Assert.Equal(3, run.Messages.Split("doughwright:").Length - 1);
        Assert.Contains("Nearest to it: butter.", run.Messages, StringComparison.Ordinal);
    }

    private static JsonElement Json(params string[] arguments)
    {
        using var json = JsonDocument.Parse(Run.Of([.. arguments, "--json"]).Output);
        return json.RootElement.Clone();
    }
}
