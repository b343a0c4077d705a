using System.Text.RegularExpressions;

namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>What a reader makes of the page's words: what a figure rests on, what belongs to what, and that one figure has one reading.</summary>
public sealed partial class PageWordsTests(OpenRecipes desk) : IClassFixture<OpenRecipes>
{
    [Theory]
    [InlineData("/recipes/potato-rolls")]
    [InlineData("/recipes/tin-loaf")]
    [InlineData("/recipes/hearth-loaf")]
    [InlineData("/recipes/potato-rolls?kitchen=mountain")]
    public async Task AShareOfWater_ReadsAlikeWhereverItStands(string address)
    {
        var page = await desk.Page(address);
        var said = page.QuerySelector(".formnote data[data-of='formula.percent.trueWater']")!.TextContent;
        var beside = page.QuerySelectorAll("data[data-of='formula.percent.trueWater']").Select(data => data.TextContent.Split('\u00a0')[0]).Distinct();
        Assert.Equal(said.Split('\u00a0')[0], Assert.Single(beside));
        var picture = page.QuerySelector("section[aria-labelledby=balance-head]")!;
        var shares = picture.QuerySelectorAll("tfoot tr").Last().QuerySelectorAll("td").Select(cell => cell.TextContent).ToArray();
        Assert.Equal(said.Split('\u00a0')[0], shares[1]);
        var total = page.QuerySelectorAll("table.formula tfoot td").Where(cell => cell.ClassList.Contains("g0")).Select(cell => cell.TextContent).Last();
        Assert.Equal(total, shares[^1]);
    }

    [Theory]
    [InlineData("/recipes/potato-rolls")]
    [InlineData("/recipes/tin-loaf")]
    [InlineData("/recipes/hearth-loaf")]
    public async Task Nothing_IsADash(string address)
    {
        var page = await desk.Page(address);
        Assert.DoesNotContain(page.QuerySelectorAll("table.fig.formula td, .smalls td"), cell => cell.TextContent is "0.0" or "0");
        Assert.DoesNotMatch(@"[^\d.]0\.0\u00a0%", page.QuerySelector("section[aria-labelledby=balance-head]")!.TextContent);
    }

    [Fact]
    public async Task EveryTime_SaysWhereItComesFrom()
    {
        var page = await desk.Page("/recipes/tin-loaf?kitchen=summer");
        foreach (var section in page.QuerySelectorAll("section[aria-labelledby^='sec-rise'], section[aria-labelledby^='sec-bake'], section[aria-labelledby='sec-cooling']"))
        {
            Assert.All(section.QuerySelectorAll(".bigfact"), fact => Assert.Matches("(measured|computed|as the recipe states)$", fact.TextContent.Trim()));
        }

        var cooling = page.QuerySelector("section[aria-labelledby='sec-cooling']")!;
        Assert.Contains("Scald the flour with milk", cooling.QuerySelectorAll("h3").Select(head => head.TextContent));
        Assert.Equal(cooling.QuerySelectorAll(".matter").Length, cooling.QuerySelectorAll("h3").Length);
    }

    [Fact]
    public async Task AMeasuredFigure_RestsOnItsMeasurementFirst()
    {
        var page = await desk.Page("/recipes/potato-rolls");
        var first = page.QuerySelector("section[aria-labelledby='sec-rise-bulk'] .reasons > li")!.TextContent;
        Assert.StartsWith("As the author measured it in Ropewalk, winter term", first, StringComparison.Ordinal);
        Assert.Contains("1 h 45 min", first.Split("What follows")[0].Replace('\u00a0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sources_AreNamed_AndTheBowlHasItsShare()
    {
        var page = await desk.Page("/recipes/potato-rolls?kitchen=mountain&dough=26C&free=scald,potato");
        var reasons = page.QuerySelectorAll(".why").Select(why => why.TextContent).ToArray();
        Assert.DoesNotContain(reasons, text => Key().IsMatch(text));
        Assert.Contains(reasons, text => text.Contains(", 1995]", StringComparison.Ordinal));
        var heat = page.QuerySelector("section[aria-labelledby='sec-heat'] .reasons")!.TextContent;
        var shares = Share().Matches(heat).Sum(match => double.Parse(match.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture));
        Assert.InRange(shares, 99.5, 100.5);
    }

    [Fact]
    public async Task WhatAFigureWas_StandsInItsOwnBracket()
    {
        var page = await desk.Page("/recipes/potato-rolls?kitchen=mountain");
        foreach (var was in page.QuerySelectorAll(".answer .was"))
        {
            Assert.Equal(")", was.NextSibling!.TextContent[..1]);
            Assert.Matches(@"[(;] ?$", was.PreviousSibling!.TextContent);
        }

        Assert.NotEmpty(page.QuerySelectorAll(".answer .was"));
    }

    [Fact]
    public async Task WhatCannotSetTheDough_IsNotToldToBeTaken()
    {
        var page = await desk.Page("/recipes/potato-rolls?free=salt&dough=26C");
        var answer = page.QuerySelector(".answer")!.TextContent;
        Assert.DoesNotContain("Take salt", answer, StringComparison.Ordinal);
        Assert.Contains("cannot be set by the warmth of salt", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/recipes/potato-rolls", false)]
    [InlineData("/recipes/potato-rolls?kitchen=mountain&dough=26C&free=scald,potato", true)]
    public async Task TheFrame_IsTold_OnlyWhenSomethingIsSolvedFor(string address, bool told)
    {
        var text = (await desk.Page(address)).QuerySelector("main")!.TextContent;
        Assert.Equal(told, text.Contains("What is solved for has a frame.", StringComparison.Ordinal));
        Assert.DoesNotContain("violet", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ALongTitle_IsWhole_AndSetSmaller()
    {
        var title = string.Join(' ', Enumerable.Repeat("bread of the long quay", 28));
        desk.Bench.WriteRecipe("lengthy", $"doughwright: 1\ntitle: {title}\nhome:\n  air: 21 C\nparts:\n  dough:\n    strong white flour: 500 g\n    water: 300 g\n");
        var head = (await desk.Page("/recipes/lengthy")).QuerySelector("h1")!;
        Assert.Equal(title, head.TextContent);
        Assert.Contains("lengthy", head.ClassList);
        Assert.DoesNotContain("lengthy", (await desk.Page("/recipes/potato-rolls")).QuerySelector("h1")!.ClassList);
    }

    [GeneratedRegex(@"\[[a-z0-9]+(-[a-z0-9]+)+\]")]
    private static partial Regex Key();

    [GeneratedRegex(@"bowl can hold: ([\d.]+)")]
    private static partial Regex Share();
}
