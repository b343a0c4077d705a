using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Engine.Ingredients;

namespace Doughwright.App.Tests.Desk.Ingredients;

/// <summary>What the desk says of an ingredient is what the command says of it.</summary>
public sealed class LarderPageTests : IDisposable
{
    private readonly Scratch scratch = Scratch.WithTheShipped();

    [Theory]
    [InlineData("strong white flour")]
    [InlineData("butter")]
    [InlineData("potato boiled")]
    [InlineData("honey")]
    [InlineData("egg")]
    public async Task EveryFigure_IsTheCommands(string words)
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var hit = JsonNode.Parse(Run.Of("larder", words, "--json").Output)!["hits"]![0]!;
        var page = await desk.Page("/larder/" + Uri.EscapeDataString((string)hit["ingredient"]!));
        var figures = page.QuerySelectorAll("data[data-of]").Where(figure => !figure.GetAttribute("data-of")!.Contains(':', StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(figures);
        foreach (var figure in figures)
        {
            var node = figure.GetAttribute("data-of")!.Split('.').Aggregate(hit, (at, name) => at is JsonArray list ? list[int.Parse(name, CultureInfo.InvariantCulture)]! : at[name]!);
            Assert.Equal((double)node, double.Parse(figure.GetAttribute("value")!, CultureInfo.InvariantCulture));
        }

        var known = hit["composition"]!.AsObject().Count(part => part.Value is not null && (part.Key != "alcohol" || (double)part.Value > 0));
        Assert.Equal(known, page.QuerySelectorAll("table.holds data").Length);
        Assert.Equal(hit["measures"]!.AsArray().Count, page.QuerySelectorAll("table.measures tbody tr").Length);
        var told = Run.Of("larder", words).Output.ReplaceLineEndings(" ");
        Assert.All(page.QuerySelectorAll(".knowit"), fact => Assert.Contains(Plain(fact.TextContent), Plain(told), StringComparison.Ordinal));
    }

    [Fact]
    public async Task WhereItIsUsed_IsEveryLineOfEveryRecipe_WithTheFiguresOfItsFormula()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/larder/butter-unsalted");
        var shown = page.QuerySelectorAll("table.uses data").ToDictionary(figure => figure.GetAttribute("data-of")!, figure => double.Parse(figure.GetAttribute("value")!, CultureInfo.InvariantCulture));
        var expected = new Dictionary<string, double>();
        foreach (var name in scratch.Folder.Recipes)
        {
            var formula = JsonNode.Parse(Run.Of("formula", House.Demo(name + ".yaml"), "--json").Output)!;
            foreach (var part in formula["components"]!.AsArray())
            {
                foreach (var line in part!["lines"]!.AsArray().Where(line => (string?)line!["ingredient"] == "butter-unsalted"))
                {
                    expected.Add($"{name}:components.{part["id"]}.lines.{line!["id"]}.grams", (double)line["grams"]!);
                    if (line["overallPercent"] is { } percent)
                    {
                        expected.Add($"{name}:components.{part["id"]}.lines.{line["id"]}.overallPercent", (double)percent);
                    }
                }
            }
        }

        Assert.NotEmpty(expected);
        Assert.Equal(expected.OrderBy(pair => pair.Key, StringComparer.Ordinal), shown.OrderBy(pair => pair.Key, StringComparer.Ordinal));
    }

    [Fact]
    public async Task RecipeTakenAway_IsNoUse()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Contains("Potato rolls", (await desk.Page("/larder/butter-unsalted")).QuerySelector("table.uses")!.TextContent, StringComparison.Ordinal);
        Assert.True(scratch.Folder.RecipeTexts.TakeAway("potato-rolls"));
        Assert.DoesNotContain("Potato rolls", (await desk.Page("/larder/butter-unsalted")).QuerySelector("#main")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("strong flour")]
    [InlineData("potatoe")]
    [InlineData("butter")]
    public async Task Words_FindTheFirstThatTheCommandFinds(string words)
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var first = (string)JsonNode.Parse(Run.Of("larder", words, "--json").Output)!["hits"]![0]!["ingredient"]!;
        var page = await desk.Page("/larder?measures=us&words=" + Uri.EscapeDataString(words));
        Assert.Equal($"/larder/{first}?measures=us", page.QuerySelector(".found h2 a")!.GetAttribute("href"));
        Assert.Contains(Plain(page.QuerySelector("main [role=status]")!.TextContent), Plain(Run.Of("larder", words).Output), StringComparison.Ordinal);
    }

    [Fact]
    public async Task WithoutWords_EveryIngredientIsThere_AndLeadsToItsPage()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/larder");
        Assert.Equal(Larder.Shipped.Ingredients.Select(row => "/larder/" + row.Id).Order(StringComparer.Ordinal), page.QuerySelectorAll(".names a").Select(link => link.GetAttribute("href")!).Order(StringComparer.Ordinal));
        Assert.Equal("page", page.QuerySelector(".mast a[href='/larder']")!.GetAttribute("aria-current"));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\" onfocus=alert(1) x=\"")]
    [InlineData("' OR 1=1 --")]
    public async Task HostileWords_AreWords(string words)
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/larder?words=" + Uri.EscapeDataString(words));
        Assert.Equal(words, ((IHtmlInputElement)page.QuerySelector("#words")!).Value);
        Assert.DoesNotContain(page.Scripts, script => script.Text.Contains("alert", StringComparison.Ordinal));
        Assert.Empty(page.QuerySelectorAll("[onfocus]"));
    }

    [Theory]
    [InlineData("/larder/nobody")]
    [InlineData("/larder/%3Cscript%3E")]
    public async Task NoSuchIngredient_IsNotFound(string address)
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get(address)).StatusCode);
    }

    public void Dispose() => scratch.Dispose();

    private static string Plain(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
