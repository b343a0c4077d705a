using System.Text.Json;
using System.Xml;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pages.Structured;

namespace Doughwright.App.Tests.Pages;

/// <summary>The structured data of a page says nothing that a reader does not see.</summary>
public class StructuredDataTests
{
    [Theory]
    [MemberData(nameof(PageTests.Pages), MemberType = typeof(PageTests))]
    public void EveryFact_IsSeen(string name)
    {
        var page = MadePages.Named(name);
        using var data = Data(name);
        var seen = Plain(page.Document.QuerySelector("main")!.TextContent);
        var recipe = data.RootElement;
        Assert.Equal("Recipe", recipe.GetProperty("@type").GetString());
        Assert.Equal(page.Document.QuerySelector("h1")!.TextContent, recipe.GetProperty("name").GetString());
        Assert.Contains(recipe.GetProperty("recipeYield").GetString()!, seen, StringComparison.Ordinal);
        var total = XmlConvert.ToTimeSpan(recipe.GetProperty("totalTime").GetString()!);
        Assert.Contains(Plain($"about {Show.Duration(Duration.FromMinutes(total.TotalMinutes))}"), Plain(page.Document.QuerySelector(".keyfacts")!.TextContent), StringComparison.Ordinal);
        var lines = page.Document.QuerySelectorAll(".ing tbody tr").Select(row => (Name: Plain(row.QuerySelector("th")!.TextContent), Weight: Plain(row.QuerySelector("td")!.TextContent))).ToArray();
        Assert.All(Strings(recipe, "recipeIngredient"), text => Assert.Contains(lines, line => string.Equals($"{line.Weight} {line.Name}", text, StringComparison.OrdinalIgnoreCase)));
        Assert.All(recipe.GetProperty("tool").EnumerateArray(), tool => Assert.Contains(tool.GetProperty("name").GetString()!, seen, StringComparison.Ordinal));
        Assert.Contains(recipe.GetProperty("image").GetProperty("caption").GetString()!, seen, StringComparison.Ordinal);
        if (recipe.TryGetProperty("description", out var description))
        {
            Assert.Equal(string.Join(' ', page.Document.QuerySelectorAll("p.lead").Select(part => part.TextContent)), description.GetString());
        }
    }

    [Theory]
    [MemberData(nameof(PageTests.Pages), MemberType = typeof(PageTests))]
    public void EveryStep_SaysWhatItsPlaceOnThePageSays(string name)
    {
        var page = MadePages.Named(name).Document;
        using var data = Data(name);
        var steps = data.RootElement.GetProperty("recipeInstructions").EnumerateArray().ToArray();
        Assert.Equal(page.QuerySelectorAll(".steps > li").Length, steps.Length);
        foreach (var step in steps)
        {
            Assert.Equal("HowToStep", step.GetProperty("@type").GetString());
            var place = page.QuerySelector(step.GetProperty("url").GetString()!)!;
            Assert.Equal(place.QuerySelector("h3")!.TextContent, step.GetProperty("name").GetString());
            var text = step.GetProperty("text").GetString()!;
            Assert.NotEmpty(text);
            Assert.Contains(text, Plain(string.Join(' ', place.QuerySelectorAll("p").Select(part => part.TextContent))), StringComparison.Ordinal);
        }
    }

    /// <summary>A page that nobody has photographed shows its own drawing, and says that it is one; what is not known is not said at all.</summary>
    [Theory]
    [MemberData(nameof(PageTests.Pages), MemberType = typeof(PageTests))]
    public void Image_IsTheDrawingOfThePage(string name)
    {
        using var data = Data(name);
        var image = data.RootElement.GetProperty("image");
        Assert.Contains("drawing", image.GetProperty("caption").GetString()!, StringComparison.Ordinal);
        Assert.NotNull(MadePages.Named(name).Document.QuerySelector(image.GetProperty("url").GetString()!)!.QuerySelector("svg"));
        Assert.Empty(data.RootElement.EnumerateObject().Select(property => property.Name).Intersect(["aggregateRating", "review", "author", "datePublished", "nutrition", "video"]));
    }

    [Fact]
    public void TotalThatIsNotKnown_IsLeftOut()
    {
        var text = MadePages.TextOf("potato-rolls").Replace("    ends: after 20 min\n    cue: a knife slides in\n", "    cue: a knife slides in\n", StringComparison.Ordinal);
        var page = MadePages.Of(text);
        Assert.Null(page.Run.Here.Total);
        using var data = JsonDocument.Parse(page.Document.QuerySelector("script")!.TextContent);
        Assert.False(data.RootElement.TryGetProperty("totalTime", out _));
        Assert.Contains("not known", page.Document.QuerySelector(".keyfacts")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>Against the platform's own reader of such durations.</summary>
    [Theory]
    [InlineData(0, "PT0M")]
    [InlineData(45, "PT45M")]
    [InlineData(60, "PT1H")]
    [InlineData(105.4, "PT1H45M")]
    [InlineData(840, "PT14H")]
    [InlineData(1440, "P1D")]
    [InlineData(1590, "P1DT2H30M")]
    [InlineData(44640, "P31D")]
    public void Duration_IsWrittenAsIso(double minutes, string iso)
    {
        Assert.Equal(iso, IsoDuration.Of(Duration.FromMinutes(minutes)));
        Assert.Equal(Math.Round(minutes), XmlConvert.ToTimeSpan(iso).TotalMinutes);
    }

    [Fact]
    public void DurationBelowZero_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => IsoDuration.Of(Duration.FromMinutes(-1)));

    internal static JsonDocument Data(string name) => JsonDocument.Parse(MadePages.Named(name).Document.QuerySelector("script[type='application/ld+json']")!.TextContent);

    private static IEnumerable<string> Strings(JsonElement element, string property) => element.GetProperty(property).EnumerateArray().Select(item => item.GetString()!);

    private static string Plain(string text) => text.Replace('\u00a0', ' ');
}
