using System.Text.Json;

namespace Doughwright.App.Tests.Scenarios;

/// <summary>The same scald in other bowls, and a puree that was weighed. Numbers and tolerances were set before the model was written.</summary>
public class BowlAndPureeScenarios
{
    /// <summary>80 g flour at 21 °C and 100 g water; computed by hand in the corrections sheet, 2, from handbook heats.</summary>
    [Theory]
    [InlineData("none", "100C", 79.8)]
    [InlineData("steel:150g", "100C", 72.8)]
    [InlineData("glass:350g", "100C", 59.6)]
    [InlineData("none", "93C", 74.6)]
    [InlineData("steel:150g", "93C", 68.2)]
    [InlineData("glass:350g", "93C", 56.2)]
    public void SameScald_OtherBowl(string bowl, string poured, double expected) =>
        Assert.Equal(expected, Scene.Rehearse("--bowl", $"scald={bowl}", "--pour", poured).Mixed("scald")!.Value, 0.3);

    [Fact]
    public void BoilingAtHome_IsNearlyAHundred() => Assert.Equal(72.8, Scene.Rehearse().Mixed("scald")!.Value, 0.3);

    [Fact]
    public void ColdGlassBowl_IsOfferedAWarmOne()
    {
        var cool = Scene.Rehearse("--bowl", "scald=glass:350g");
        Assert.Contains("Warm the bowl", cool.Finding("scald-too-cool", "steps.scald").GetProperty("wayOut").GetString(), StringComparison.Ordinal);
        var warmed = Scene.Rehearse("--bowl", "scald=glass:350g,warmed");
        Assert.True(warmed.Mixed("scald") > cool.Mixed("scald") + 5);
        Assert.DoesNotContain("scald-too-cool", warmed.Kinds);
    }

    [Fact]
    public void NoBowlNamed_IsNullAndAFinding_NotAGuess()
    {
        var scene = Scene.RehearseFile(House.Text("potato-rolls-no-bowl.yaml"));
        Assert.Null(scene.Mixed("scald"));
        Assert.Equal("warning", scene.Finding("bowl-not-said", "steps.scald").GetProperty("grade").GetString());
        Assert.Equal(JsonValueKind.Null, scene.Step("scald").GetProperty("startCelsius").ValueKind);
    }

    /// <summary>200 g peeled and raw gave 170 g cooked; the solids of the table's raw potato stay, 25 % of what is bought is peel (USDA).</summary>
    [Fact]
    public void MyPuree_ReplacesTheTable()
    {
        var mine = Scene.Formula(House.PotatoRolls, "--weighed", "potato=200g:170g");
        var table = Scene.Formula(House.PotatoRolls);
        var water = mine.Line("potato", "potato").GetProperty("waterGrams").GetDouble();
        Assert.Equal(75.6, water / 160 * 100, 0.05);
        Assert.Equal(3.0, table.Line("potato", "potato").GetProperty("waterGrams").GetDouble() - water, 0.05);
        var said = mine.Finding("weighed-drier", "parts.potato.potato").GetProperty("message").GetString();
        Assert.Contains("3\u00a0g more water", said, StringComparison.Ordinal);

        // Said, not done.
        Assert.Equal(100, mine.Line("scald", "water").GetProperty("grams").GetDouble());
        Assert.Equal(801, mine["doughGrams"].GetDouble(), 1e-9);
    }

    [Fact]
    public void MyPuree_SaysWhatToBuy()
    {
        foreach (var mine in new[]
        {
            Scene.Formula(House.Text("potato-rolls-weighed-puree.yaml")),
            Scene.Formula(House.PotatoRolls, "--weighed", "potato=200g:170g"),
        })
        {
            var potato = mine["buy"].EnumerateArray().Single(item => item.GetProperty("name").GetString() == "potato");
            Assert.Equal(251, potato.GetProperty("grams").GetDouble(), 0.5);
            Assert.Contains("188\u00a0g peeled", potato.GetProperty("note").GetString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void RawOrCookedNotSaid_IsAFinding()
    {
        var scene = Scene.RehearseWith("potato: 160 g, boiled, peeled, mashed", "potato: 160 g, peeled");
        var finding = Assert.Single(scene.Findings, finding => finding.GetProperty("place").GetString() == "parts.potato.potato");
        Assert.Contains("raw", finding.GetProperty("message").GetString(), StringComparison.OrdinalIgnoreCase);
    }
}
