using System.Net;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.Shelf;

namespace Doughwright.App.Tests.Desk.Places;

/// <summary>"How do I get 26 °C here?" says on the desk what "place" says on the command line.</summary>
public sealed class PlacePageTests
{
    private const string Asked = "/recipes/potato-rolls/place?kitchen=mountain&step=bulk&to=26C";

    [Fact]
    public async Task Page_SaysWhatTheCommandSays()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        using var output = new StringWriter();
        Assert.Equal(0, Cli.Run(["place", scratch.Folder.RecipeTexts.FileOf("potato-rolls"), "--kitchen", "mountain", "--step", "bulk", "--to", "26C"], Stream.Null, output, TextWriter.Null));
        var command = Words(output.ToString());
        var page = await desk.Page(Asked);
        var said = page.QuerySelectorAll(".placed, .placeways p, .placeways .ways li, [aria-labelledby=place-slower] p, [aria-labelledby=place-miss] li").Select(part => Words(part.TextContent)).ToArray();
        Assert.True(said.Length > 15, $"{said.Length} sentences");
        Assert.All(said, sentence => Assert.Contains(sentence, command, StringComparison.Ordinal));
        Assert.Equal("How do I get 26\u00a0°C here?", page.QuerySelector("h1")!.TextContent);
    }

    [Fact]
    public async Task EveryWay_HasItsPicture_AndTheSameInFigures()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Asked);
        var ways = page.QuerySelectorAll(".placeways > section");
        Assert.Equal(4, ways.Length);
        Assert.All(ways, way =>
        {
            Assert.NotNull(way.QuerySelector("svg title"));
            Assert.InRange(way.QuerySelectorAll("tbody tr").Length, 5, 10);
        });
        var ids = page.QuerySelectorAll("[id]").Select(element => element.Id).ToArray();
        Assert.Equal(ids.Distinct().Count(), ids.Length);
    }

    [Theory]
    [InlineData("/recipes/potato-rolls/place?step=bulk&to=26", "/recipes/potato-rolls/place?step=bulk&to=26C")]
    [InlineData("/recipes/potato-rolls/place?step=bulk&to=79&measures=us", "/recipes/potato-rolls/place?measures=us&step=bulk&to=79F")]
    public async Task BareNumber_IsInTheUnitOfItsField(string sent, string address)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        using var answer = await desk.Get(sent);
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        Assert.EndsWith(address, answer.Headers.Location!.OriginalString, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("step=bulk&to=900C", "900")]
    [InlineData("step=bulk&to=warm", "warm")]
    [InlineData("step=bake&to=26C", "bake")]
    [InlineData("step=bulk&to=26C&lamp=900W", "900")]
    public async Task WhatCannotBeAsked_IsRefused_AndNothingIsAnswered(string query, string said)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/recipes/potato-rolls/place?" + query);
        Assert.Contains(said, page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Null(page.QuerySelector(".placed"));
    }

    [Fact]
    public async Task Form_CarriesTheKitchenOn_AndWhatItHasNoUseForIsRefused()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/recipes/potato-rolls/place?kitchen=mountain&air=17C&step=bulk&to=26C&proof=30C");
        var carried = page.QuerySelectorAll("form input[type=hidden]").Cast<IHtmlInputElement>().Select(field => $"{field.Name}={field.Value}");
        Assert.Equal(["kitchen=mountain", "air=17C"], carried);
        Assert.Contains("proof", page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(page.QuerySelector(".placed"));
        Assert.Equal("/recipes/potato-rolls?kitchen=mountain&air=17C", page.QuerySelector(".head a.btn")!.GetAttribute("href"));
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get("/recipes/nobody/place?to=26C")).StatusCode);
    }

    [Fact]
    public async Task EveryRiseOfARecipe_LeadsHere_InTheSameKitchen()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/recipes/potato-rolls?kitchen=mountain&proof=28C");
        Assert.Equal(
            ["/recipes/potato-rolls/place?kitchen=mountain&step=bulk&to=26C", "/recipes/potato-rolls/place?kitchen=mountain&step=proof&to=26C"],
            page.QuerySelectorAll(".elsewhere a").Select(link => link.GetAttribute("href")));
    }

    /// <summary>One line, as the terminal's paragraphs are broken elsewhere.</summary>
    private static string Words(string text) => string.Join(' ', text.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));
}
