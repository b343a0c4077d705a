using System.Net;
using System.Text.Json;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Sizes;

/// <summary>A recipe in another size on the desk: what the command line says, and a text of its own.</summary>
public sealed class SizePageTests
{
    private const string Rolls = "/recipes/potato-rolls/size";

    [Theory]
    [InlineData("potato-rolls", "pieces=24", false)]
    [InlineData("potato-rolls", "pieces=24", true)]
    [InlineData("potato-rolls", "piece=110g", false)]
    [InlineData("potato-rolls", "have=potato=210g", false)]
    [InlineData("potato-rolls", "have=egg=60g", true)]
    [InlineData("potato-rolls", "pieces=24&take=egg=2", false)]
    [InlineData("hearth-loaf", "dough=1500g", false)]
    [InlineData("tin-loaf", "tin=25x11x8cm:30x11x10cm", false)]
    [InlineData("pilot-ring", "dough=2kg", true)]
    public async Task EveryFigure_IsTheCommandLines(string recipe, string query, bool us)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page($"/recipes/{recipe}/size?{Asked(query)}{(us ? "&measures=us" : "")}");
        var json = Json(recipe, query);
        var voice = new Voice(Words.Shipped, us ? MeasureSystem.Us : MeasureSystem.Metric);
        var lines = json.GetProperty("lines").EnumerateArray().ToArray();
        var rows = page.QuerySelectorAll("section[aria-labelledby=size-lines] tbody tr:not(:has(.partof))").ToArray();
        Assert.NotEmpty(lines);
        Assert.Equal(lines.Select(line => line.GetProperty("name").GetString()), rows.Select(row => row.QuerySelector("th")!.TextContent));
        Assert.Equal(
            lines.Select(line => voice.Text(Mass.FromGrams(line.GetProperty("beforeGrams").GetDouble()))),
            rows.Select(row => row.QuerySelectorAll("td")[0].TextContent));
        Assert.Equal(
            lines.Select(line => line.GetProperty("typed").GetString()!.Replace(' ', '\u00a0')),
            rows.Select(row => row.QuerySelectorAll("td")[1].TextContent));

        var answer = page.QuerySelector(".answer")!.TextContent;
        Assert.Contains(voice.Text(Mass.FromGrams(json.GetProperty("doughGrams").GetDouble())), answer, StringComparison.Ordinal);
        Assert.Contains(voice.Text(json.GetProperty("factor").GetDouble()), answer, StringComparison.Ordinal);
        if (json.GetProperty("pieces").ValueKind == JsonValueKind.Number)
        {
            Assert.Contains(voice.Text(json.GetProperty("pieces").GetInt32()), answer, StringComparison.Ordinal);
        }

        Assert.Equal(json.GetProperty("choices").GetArrayLength(), page.QuerySelectorAll("section[aria-labelledby=size-choices] > p").Length);
        Assert.Equal(json.GetProperty("fits").GetArrayLength(), page.QuerySelectorAll("section[aria-labelledby=size-fits] li").Length);
        Assert.Equal(json.GetProperty("measures").GetArrayLength(), page.QuerySelectorAll("section[aria-labelledby=size-measures] tbody tr").Length);
    }

    [Theory]
    [InlineData("pieces=0", "0")]
    [InlineData("pieces=many", "many")]
    [InlineData("dough=1500", "g, kg")]
    [InlineData("dough=501kg", "500")]
    [InlineData("have=purree=210g", "purree")]
    [InlineData("tin=big", "30x11x10cm")]
    [InlineData("trays=3", "trays: 2")]
    [InlineData("pieces=24&dough=1kg", "More than one size")]
    [InlineData("pieces=24&take=egg=two", "two")]
    [InlineData("pieces=24&kitchen=atick", "atick")]
    public async Task WhatCannotBe_IsRefusedInWords_WithoutOptions(string query, string said)
    {
        using var scratch = Scratch.WithTheShipped();
        var text = scratch.Folder.Recipe("potato-rolls")!;
        scratch.Put("bare", System.Text.Encoding.UTF8.GetString(text).Replace("    trays: 2\n", "", StringComparison.Ordinal).Replace("Potato rolls", "Bare rolls", StringComparison.Ordinal));
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page($"/recipes/bare/size?{Asked(query)}");
        var main = page.QuerySelector("main")!.TextContent;
        Assert.Contains(said, main.Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.DoesNotContain("--", main, StringComparison.Ordinal);
        Assert.Null(page.QuerySelector("form.keepform"));
        Assert.Empty(page.QuerySelectorAll("section[aria-labelledby=size-lines]"));
    }

    [Theory]
    [InlineData("by=pieces&amount=24", "?pieces=24")]
    [InlineData("by=dough&amount=1500", "?dough=1500g")]
    [InlineData("by=dough&amount=1.5kg", "?dough=1.5kg")]
    [InlineData("by=dough&amount=40&measures=us", "?dough=40oz&measures=us")]
    [InlineData("by=have%3Dpotato&amount=210", "?have=potato%3D210g")]
    [InlineData("by=tin&amount=30x11x10cm", "?tin=30x11x10cm")]
    public async Task SentForm_LeadsToTheAddressOfTheCommandLine(string sent, string address)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        using var answer = await desk.Get($"{Rolls}?{sent}");
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.EndsWith(Rolls + address, answer.Headers.Location!.OriginalString, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Form_StandsAsAsked_AndAsksForItselfAgain()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        foreach (var (query, by, amount) in new[] { ("", "pieces", "10"), ("?have=potato%3D210g", "have=potato", "210g"), ("?piece=110g&measures=us", "piece", "110g") })
        {
            var page = await desk.Page(Rolls + query);
            Assert.Equal(amount, page.QuerySelector("#amount")!.GetAttribute("value"));
            Assert.Equal(by, page.QuerySelector("#by option[selected]")!.GetAttribute("value"));
            Assert.Equal(Rolls, page.QuerySelector("form[method=get]")!.GetAttribute("action"));
        }
    }

    [Fact]
    public async Task Kept_IsATextOfItsOwn_AndTheOldOneStays()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var old = scratch.Folder.Recipe("potato-rolls");
        var answer = await Keep(desk, Rolls + "?pieces=24", "Rolls for the harbour");
        Assert.Equal((HttpStatusCode.SeeOther, "/recipes/rolls-for-the-harbour"), (answer.Status, answer.Location));
        Assert.Equal(old, scratch.Folder.Recipe("potato-rolls"));
        var said = Json("potato-rolls", "pieces=24").GetProperty("text").GetString()!;
        Assert.Equal(
            said.Replace("title: Potato rolls", "title: Rolls for the harbour", StringComparison.Ordinal),
            System.Text.Encoding.UTF8.GetString(scratch.Folder.Recipe("rolls-for-the-harbour")!));
        Assert.Contains("24 rolls", (await desk.Page(answer.Location!)).QuerySelector(".facts")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Title_IsOffered_AndTheSameOneTwice_LaysTwoTexts()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var title = (await desk.Page(Rolls + "?pieces=24")).QuerySelector("#keep-title")!.GetAttribute("value")!;
        Assert.Equal("Potato rolls, 24 rolls", title);
        var first = await Keep(desk, Rolls + "?pieces=24", title);
        var bytes = scratch.Folder.Recipe("potato-rolls-24-rolls");
        var second = await Keep(desk, Rolls + "?pieces=30", title);
        Assert.NotEqual(first.Location, second.Location);
        Assert.Equal(bytes, scratch.Folder.Recipe("potato-rolls-24-rolls"));
    }

    [Theory]
    [InlineData("", "no title")]
    [InlineData("a\u202eb", "cannot be seen")]
    [InlineData("101", "101")]
    public async Task TitleThatCannotBe_IsRefused_AndNothingIsWritten(string title, string reason)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = scratch.Folder.Recipes;
        var answer = await Keep(desk, Rolls + "?pieces=24", title == "101" ? new string('a', 101) : title);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(reason, answer.Page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(before, scratch.Folder.Recipes);
    }

    [Fact]
    public async Task MarkupInATitle_IsText()
    {
        const string Title = "<script>alert(1)</script> & : # \"rolls\"";
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await Keep(desk, Rolls + "?pieces=24", Title);
        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        var page = await desk.Page(answer.Location! + "/size");
        Assert.Contains(Title, page.QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(page.Scripts, script => script.Text.Contains("alert", StringComparison.Ordinal));
        Assert.Equal(Title, RecipeText.Read(System.Text.Encoding.UTF8.GetString(scratch.Folder.Recipe(answer.Location!.Split('/')[^1])!)).Recipe!.Title);
    }

    [Fact]
    public async Task WholePieces_AreOneLinkAway()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Rolls + "?pieces=24");
        var link = page.QuerySelector("section[aria-labelledby=size-choices] a")!.GetAttribute("href")!;
        Assert.Contains("take=egg", link, StringComparison.Ordinal);
        var taken = await desk.Page(link);
        Assert.Empty(taken.QuerySelectorAll(".refusals"));
        Assert.Contains(taken.QuerySelectorAll("section[aria-labelledby=size-lines] td"), cell => cell.TextContent == Words.Shipped["resize.whole"]);
    }

    [Fact]
    public async Task UnknownRecipe_IsNotThere()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get("/recipes/nobody/size?pieces=24")).StatusCode);
    }

    private static string Asked(string query) => string.Join('&', query.Split('&').Select(pair => pair[..(pair.IndexOf('=', StringComparison.Ordinal) + 1)] + Uri.EscapeDataString(pair[(pair.IndexOf('=', StringComparison.Ordinal) + 1)..])));

    private static JsonElement Json(string recipe, string query)
    {
        using var json = JsonDocument.Parse(Run.Of(["resize", House.Demo(recipe + ".yaml"), .. query.Split('&').Select(pair => "--" + pair), "--json"]).Output);
        return json.RootElement.Clone();
    }

    private static async Task<LiveDesk.Answer> Keep(LiveDesk desk, string address, string title) =>
        await desk.Send((IHtmlFormElement)(await desk.Page(address)).QuerySelector("form.keepform")!, ("title", title));
}
