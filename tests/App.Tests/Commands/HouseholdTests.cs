using System.Text.Json;
using AngleSharp.Html.Parser;
using Doughwright.App.Tests.Pages;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Commands;

/// <summary>Recipes measured by spoons, sticks and sachets, on the command line: what was typed is seen again, and means what it means where it was written.</summary>
public class HouseholdTests
{
    private const string Text = """
        doughwright: 1
        title: Quay buns
        region: US
        make: 10 buns of 95 g
        home:
          air: 21 C
        parts:
          dough:
            strong white flour: 500 g
            water: 320 g
            butter: 4 tbsp, soft
            sugar: 2 tbsp
            salt: 2 tsp
            instant yeast: 1 sachet
        steps:
          mix:
            of: dough
            hands: 10 min
            way: by hand
        """;

    [Theory]
    [InlineData("butter: 6 tbsp, soft")]
    [InlineData("sugar: 3 tbsp")]
    [InlineData("salt: 3 tsp")]
    [InlineData("strong white flour: 750 g")]
    [InlineData("region: US")]
    public void Resized_StaysInTheMeasuresThatWereTyped(string line)
    {
        var run = Run.WithInput(Text, "resize", "-", "--pieces", "15");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains(line + "\n", run.Output, StringComparison.Ordinal);
        Assert.Empty(RecipeText.Read(run.Output).Findings);
    }

    /// <summary>Half a sachet cannot be had: it is weighed, and the two whole numbers beside it are told.</summary>
    [Fact]
    public void HalfASachet_IsTold()
    {
        var run = Run.WithInput(Text, "resize", "-", "--pieces", "15");
        Assert.DoesNotContain("1.5 sachet", run.Output, StringComparison.Ordinal);
        Assert.Contains("sachet", run.Messages, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Run.WithInput(Text, "resize", "-", "--pieces", "15", "--json").Output);
        var choice = Assert.Single(json.RootElement.GetProperty("choices").EnumerateArray());
        Assert.Equal("instant-yeast", choice.GetProperty("line").GetString());
    }

    [Fact]
    public void Formula_ShowsWhatWasTyped_BesideTheGrams()
    {
        var run = Run.WithInput(Text, "formula", "-");
        Assert.Contains("4 tbsp, 56.8", run.Output.Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.Contains("2 tbsp, 25.2", run.Output.Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.DoesNotContain("500 g, ", run.Output.Replace('\u00a0', ' '), StringComparison.Ordinal);
    }

    /// <summary>In Australia a tablespoon holds 20 ml; the page of a reader in the United States says it in spoons of 14.8 ml, or not at all.</summary>
    [Fact]
    public void Page_SaysSpoonsOfTheReader_NotThoseOfTheAuthor()
    {
        var here = MadePages.Of(Text).Html.Replace('\u00a0', ' ');
        Assert.Contains("2 tbsp", here, StringComparison.Ordinal);
        var there = MadePages.Of(Text.Replace("region: US", "region: AU", StringComparison.Ordinal)).Html.Replace('\u00a0', ' ');
        Assert.DoesNotContain("2 tbsp", there, StringComparison.Ordinal);
    }

    [Fact]
    public void StampOfARecipe_HoldsItsRegionAndItsOwnIngredients()
    {
        string[] larders = [.. new[] { Text, Text.Replace("region: US\n", "", StringComparison.Ordinal).Replace("sachet", "US sachet", StringComparison.Ordinal), Text.Replace("parts:\n", "own:\n  cottage spread:\n    counts as: fat\n    fat: 60 g\nparts:\n", StringComparison.Ordinal) }
            .Select(text =>
            {
                using var json = JsonDocument.Parse(Run.WithInput(text, "formula", "-", "--json").Output);
                return json.RootElement.GetProperty("stamp").GetProperty("larder").GetString()!;
            })];
        Assert.Equal(3, larders.Distinct().Count());
        Assert.Equal(Engine.Ingredients.Larder.Shipped.Version, larders[1]);
    }

    private const string Swaps = "swaps:\n  - butter by sunflower oil, tried on 3 May\n  - lard by butter, not tried\nwithout:\n  butter: Take oil.\n  thermometer: Put a finger in.\n";

    [Fact]
    public void EntriesOfNothing_AreTold()
    {
        var run = Run.WithInput(Text + "\n" + Swaps, "findings", "-");
        Assert.Contains("The swap of lard by butter is of nothing that goes in.", run.Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.DoesNotContain("swap of butter", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void SwapThatWasCarriedOut_TellsTheEntriesItLeavesOver()
    {
        var run = Run.WithInput(Text + "\n" + Swaps, "swap", "-", "--replace", "butter=sunflower oil");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("The entry “butter by sunflower oil” under “swaps”", run.Messages, StringComparison.Ordinal);
        Assert.Contains("The entry “butter” under “without”", run.Messages, StringComparison.Ordinal);
        Assert.DoesNotContain("The entry “lard", run.Messages, StringComparison.Ordinal);
    }

    private const string Ways = "\n    words: Mix [butter] in, then [rest].\n    cue: smooth, with [water]\n    variants:\n      machine:\n        way: machine\n        hands: 3 min\n";

    /// <summary>What a variant has from its step is printed once; a name in a step means the step's part.</summary>
    [Fact]
    public void Page_PrintsWordsOfAVariantOnce_WithValuesOfItsStep()
    {
        // The structured data says the same again, for programs.
        var page = new HtmlParser().ParseDocument(MadePages.Of(Text + Ways).Html).Body!.TextContent.Replace('\u00a0', ' ');
        Assert.Equal(2, page.Split("in, then [rest].").Length);
        Assert.Contains("Mix 57 g", page, StringComparison.Ordinal);
        Assert.Contains("smooth, with 320 g", page, StringComparison.Ordinal);
        Assert.Equal(2, page.Split("smooth, with").Length);
    }
}
