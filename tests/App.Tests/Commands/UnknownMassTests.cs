using System.Text.Json;
using Doughwright.App.Tests.Pages;

namespace Doughwright.App.Tests.Commands;

/// <summary>A measure that nobody can weigh is no nought; and what everybody must know stands on the page of a reader.</summary>
public class UnknownMassTests
{
    internal const string Text = """
        doughwright: 1
        title: Quay loaf
        make: 1 loaf of 860 g
        home:
          air: 21 C
        parts:
          dough:
            strong white flour: 500 g
            water: 320 g
            honey: 10 g
            flaxseed: 2 tbsp
            salt: 9 g
            instant yeast: 2 tsp
        steps:
          mix:
            of: dough
            hands: 10 min
            way: by hand
        """;

    [Fact]
    public void Formula_SaysNotKnown_AndThatTotalsAreWithoutIt()
    {
        var output = Run.WithInput(Text, "formula", "-").Output.ReplaceLineEndings(" ");
        Assert.Contains("What is written of flaxseed cannot be weighed. All totals are without it.", output, StringComparison.Ordinal);
        Assert.Matches(@"flaxseed +not known +2 tbsp, not known", output.Replace('\u00a0', ' '));
        using var json = JsonDocument.Parse(Run.WithInput(Text, "formula", "-", "--json").Output);
        var line = json.RootElement.GetProperty("components")[0].GetProperty("lines").EnumerateArray().Single(each => each.GetProperty("id").GetString() == "flaxseed");
        Assert.Equal(JsonValueKind.Null, line.GetProperty("grams").ValueKind);
    }

    [Fact]
    public void Findings_OfferNoWeightFromASumThatIsNotWhole() => Assert.DoesNotContain("make-differs", Run.WithInput(Text, "findings", "-", "--json").Output, StringComparison.Ordinal);

    /// <summary>A level teaspoon of dry yeast is 4 g: USDA SR28, household weights of NDB 18375, which stands for instant yeast too.</summary>
    [Fact]
    public void SpoonsOfInstantYeast_AreWeighed()
    {
        using var json = JsonDocument.Parse(Run.WithInput(Text, "formula", "-", "--json").Output);
        var line = json.RootElement.GetProperty("components")[0].GetProperty("lines").EnumerateArray().Single(each => each.GetProperty("id").GetString() == "instant-yeast");
        Assert.Equal(8, line.GetProperty("grams").GetDouble(), 1e-9);
    }

    [Fact]
    public void Page_SaysThatHoneyIsNotForInfants()
    {
        Assert.Contains("Honey is not for children under one year", MadePages.Of(Text.Replace("2 tbsp", "20 g", StringComparison.Ordinal)).Html, StringComparison.Ordinal);
        Assert.DoesNotContain("under one year", MadePages.Of(Text.Replace("2 tbsp", "20 g", StringComparison.Ordinal).Replace("honey", "sugar", StringComparison.Ordinal)).Html, StringComparison.Ordinal);
    }
}
