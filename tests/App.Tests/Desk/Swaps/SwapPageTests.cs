using System.Net;
using System.Text.Json;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Swaps;

/// <summary>Something swapped on the desk: what the command line says, in sentences, and a text of its own.</summary>
public sealed class SwapPageTests
{
    private const string Rolls = "/recipes/potato-rolls/swaps";

    public static TheoryData<string, string, bool> Asked => new()
    {
        { "potato-rolls", "butter=olive oil", false },
        { "potato-rolls", "butter=olive oil", true },
        { "potato-rolls", "egg=", false },
        { "potato-rolls", "potato=butternut squash, baked, mashed", false },
        { "potato-rolls", "sugar=|instant yeast=fresh yeast", false },
        { "tin-loaf", "milk@dough=water", true },
        { "hearth-loaf", "strong white flour=wholemeal flour", false },
        { "harbour-buns", "egg yolk=", false },
    };

    [Theory]
    [MemberData(nameof(Asked))]
    public async Task EveryFigure_IsTheCommandLines(string recipe, string swaps, bool us)
    {
        using var scratch = WithBuns();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Address(recipe, swaps) + (us ? "&measures=us" : ""));
        var json = Json(recipe, swaps);
        var voice = new Voice(Words.Shipped, us ? MeasureSystem.Us : MeasureSystem.Metric);
        var rows = page.QuerySelectorAll("section[aria-labelledby=swap-lines] tbody tr:not(:has(.partof))").Select(row => row.QuerySelectorAll("td").Select(cell => cell.TextContent).ToArray());
        var lines = json.GetProperty("lines").EnumerateArray().Select(line => new[] { "beforeGrams", "afterGrams" }.Select(name => Weight(line.GetProperty(name), voice)).ToArray()).ToArray();
        Assert.NotEmpty(lines);
        Assert.Equal(lines, rows);

        var residual = json.GetProperty("residuals").EnumerateArray().Select(each => new[] { "trueWater", "trueSugar", "trueFat", "salt" }.Select(name => each.GetProperty(name).GetDouble()).ToArray()).ToArray();
        var left = page.QuerySelector("section[aria-labelledby=swap-left]")!;
        Assert.Equal(residual.Length, left.QuerySelectorAll(":scope > p:not(.note)").Length);
        Assert.Equal(residual.Count(each => each.Any(value => Math.Abs(value) >= 0.05)), left.QuerySelectorAll("svg[role=img]").Length);
        for (var i = 0; i < residual.Length; i++)
        {
            foreach (var value in residual[i].Where(value => Math.Abs(value) >= 0.05))
            {
                Assert.Contains($"{Show.Number(Math.Abs(value), 1)} {(value > 0 ? "more" : "less")}", left.QuerySelectorAll(":scope > p:not(.note)")[i].TextContent, StringComparison.Ordinal);
            }
        }

        Assert.Equal(json.GetProperty("times").GetArrayLength(), page.QuerySelectorAll("section[aria-labelledby=swap-times] li").Length);
        var buy = json.GetProperty("buy").EnumerateArray().Count(each => Weight(each.GetProperty("beforeGrams"), voice) != Weight(each.GetProperty("afterGrams"), voice));
        Assert.Equal(buy, page.QuerySelectorAll("section[aria-labelledby=swap-buy] li").Length);
        var allergens = page.QuerySelector("section[aria-labelledby=swap-allergens]")!.TextContent;
        foreach (var name in new[] { "after", "gained", "lost" }.SelectMany(each => json.GetProperty("allergens").GetProperty(each).EnumerateArray()))
        {
            Assert.Contains(name.GetString()!, allergens, StringComparison.Ordinal);
        }

        Assert.Contains("ask the supplier", allergens, StringComparison.Ordinal);
        var words = page.QuerySelector("main")!.TextContent;
        Assert.All(json.GetProperty("consequences").EnumerateArray().Where(_ => !us), each => Assert.Contains(each.GetProperty("message").GetString()!, words, StringComparison.Ordinal));
        Assert.DoesNotContain('{', words);
    }

    [Fact]
    public async Task OtherFlour_IsToldByItsRange_AndTheFeel()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var thirst = (await desk.Page(Address("hearth-loaf", "strong white flour=wholemeal flour"))).QuerySelector("section[aria-labelledby=swap-thirst]")!;
        var json = Json("hearth-loaf", "strong white flour=wholemeal flour").GetProperty("thirst").EnumerateArray().ToArray();
        Assert.NotEmpty(json);
        Assert.Contains(Show.Number(json[0].GetProperty("pointsHigh").GetDouble(), 0), thirst.TextContent, StringComparison.Ordinal);
        Assert.Contains("feels", thirst.QuerySelector("i.cue")!.TextContent, StringComparison.Ordinal);
    }

    /// <summary>What is answered first agrees with what is told further down.</summary>
    [Theory]
    [InlineData("butter=olive oil", "within half a point")]
    [InlineData("sugar=", "Not all of it")]
    [InlineData("strong white flour=wholemeal flour", "It weighs the same")]
    public async Task Answer_SaysHowFarItIsMadeGood(string swap, string said)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Contains(said, (await desk.Page(Address("potato-rolls", swap))).QuerySelector(".answer")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("harbour-buns", "butter=sunflower oil", "firm when cold")]
    [InlineData("potato-rolls", "strong white flour=butter", "Flour is held")]
    [InlineData("potato-rolls", "buter=lard", "Nearest to it: butter")]
    [InlineData("potato-rolls", "butter@doug=lard", "no part")]
    [InlineData("potato-rolls", "butter", "what by what")]
    [InlineData("potato-rolls", "butter=oil: [x]", "")]
    public async Task WhatCannotBe_IsRefusedWithItsReason_AndNothingIsOffered(string recipe, string swaps, string said)
    {
        using var scratch = WithBuns();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Address(recipe, swaps));
        var refused = page.QuerySelector("#swap-refused")!.TextContent;
        Assert.NotEqual("", refused.Trim());
        Assert.Contains(said, refused, StringComparison.Ordinal);
        Assert.DoesNotContain("--", refused, StringComparison.Ordinal);
        Assert.Null(page.QuerySelector("form.keepform"));
        Assert.Equal("true", page.QuerySelector("#by-0")!.GetAttribute("aria-invalid"));
    }

    [Fact]
    public async Task UnknownName_IsOfferedWhatIsNear_OneLinkAway()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Address("potato-rolls", "egg=|butter=oliv oyl"));
        Assert.Equal("oliv oyl", page.QuerySelector("#by-1")!.GetAttribute("value"));
        Assert.Equal([null, "true"], page.QuerySelectorAll("[name=by]").Select(field => field.GetAttribute("aria-invalid")));
        var link = page.QuerySelectorAll(".near a").First(each => each.TextContent == "Take olive oil");
        Assert.Equal("/recipes/potato-rolls/swaps?replace=egg%3D&replace=butter%3Dolive%20oil", link.GetAttribute("href"));
        Assert.NotNull((await desk.Page(link.GetAttribute("href")!)).QuerySelector("form.keepform"));
    }

    [Theory]
    [InlineData("what=butter&by=olive+oil&part=", "?replace=butter%3Dolive%20oil")]
    [InlineData("what=butter&by=+olive+oil+&part=dough", "?replace=butter@dough%3Dolive%20oil")]
    [InlineData("what=egg&by=&part=", "?replace=egg%3D")]
    [InlineData("what=butter&by=lard&part=&what=egg&by=&part=dough", "?replace=butter%3Dlard&replace=egg@dough%3D")]
    [InlineData("what=butter&by=lard&part=&what=&by=&part=", "?replace=butter%3Dlard")]
    [InlineData("what=butter&by=lard&part=&another=yes", "?replace=butter%3Dlard&another=yes")]
    [InlineData("what=butter&by=lard&part=&measures=us", "?replace=butter%3Dlard&measures=us")]
    [InlineData("what=&by=lard&part=", "")]
    public async Task SentForm_LeadsToTheAddressOfTheCommandLine(string sent, string address)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        using var answer = await desk.Get($"{Rolls}?{sent}");
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.EndsWith(Rolls + address, answer.Headers.Location!.OriginalString, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sentences_StandAsAsked_AndOneMoreOnRequest()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Address("potato-rolls", "butter@dough=olive oil|flour=wholemeal flour") + "&another=yes");
        Assert.Equal(["butter", "strong white flour", ""], page.QuerySelectorAll("[name=what]").Select(each => each.QuerySelector("option[selected]")!.GetAttribute("value")));
        Assert.Equal(["olive oil", "wholemeal flour", ""], page.QuerySelectorAll("[name=by]").Select(each => each.GetAttribute("value")));
        Assert.Equal(["dough", "", ""], page.QuerySelectorAll("[name=part]").Select(each => each.QuerySelector("option[selected]")!.GetAttribute("value")));
        Assert.Equal("/recipes/potato-rolls/swaps?replace=flour%3Dwholemeal%20flour", page.QuerySelector("a.drop")!.GetAttribute("href"));
        var names = page.QuerySelectorAll("#what-0 optgroup option").Select(option => option.TextContent).ToArray();
        Assert.Equal(9, names.Length);
        Assert.Equal("strong white flour (Scald and Dough)", names[0]);
        Assert.Equal(names.Distinct(), names);
    }

    [Fact]
    public async Task AuthorsOwnSwaps_AreListedWithTheirCost_OneLinkAway()
    {
        using var scratch = WithBuns();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/recipes/harbour-buns/swaps");
        using var json = JsonDocument.Parse(Run.Of("swap", House.Text("harbour-buns.yaml"), "--json").Output);
        var offers = json.RootElement.GetProperty("offers").EnumerateArray().ToArray();
        var shown = page.QuerySelectorAll("section[aria-labelledby=swap-offers] section");
        Assert.Equal(offers.Length, shown.Length);
        foreach (var (offer, section) in offers.Zip(shown))
        {
            Assert.Contains(offer.GetProperty("what").GetString()!, section.QuerySelector("h3")!.TextContent, StringComparison.OrdinalIgnoreCase);
            Assert.Equal(offer.GetProperty("refused").GetBoolean(), section.QuerySelector("a") is null);
            if (section.QuerySelector("a") is { } link)
            {
                Assert.NotNull((await desk.Page(link.GetAttribute("href")!)).QuerySelector("form.keepform"));
            }
        }

        Assert.Contains("Tried on 5 November: a softer crumb", shown[0].TextContent, StringComparison.Ordinal);
        Assert.Empty((await desk.Page(Rolls)).QuerySelectorAll("section[aria-labelledby=swap-offers] section"));
    }

    [Fact]
    public async Task Kept_IsATextOfItsOwn_AndTheOldOneStays()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var old = scratch.Folder.Recipe("potato-rolls");
        var page = await desk.Page(Address("potato-rolls", "butter=olive oil"));
        Assert.Equal("Potato rolls with olive oil", page.QuerySelector("#keep-title")!.GetAttribute("value"));
        var answer = await Keep(desk, Address("potato-rolls", "butter=olive oil"), "Potato rolls with olive oil");
        Assert.Equal((HttpStatusCode.SeeOther, "/recipes/potato-rolls-with-olive-oil"), (answer.Status, answer.Location));
        Assert.Equal(old, scratch.Folder.Recipe("potato-rolls"));
        Assert.Equal(
            Json("potato-rolls", "butter=olive oil").GetProperty("text").GetString()!.Replace("title: Potato rolls", "title: Potato rolls with olive oil", StringComparison.Ordinal),
            System.Text.Encoding.UTF8.GetString(scratch.Folder.Recipe("potato-rolls-with-olive-oil")!));
    }

    [Theory]
    [InlineData("egg=", "Potato rolls without egg")]
    [InlineData("egg=|butter=lard|sugar=honey", "Potato rolls with lard and honey, without egg")]
    [InlineData("potato=butternut squash, baked, mashed", "Potato rolls with butternut squash")]
    public async Task Title_NamesWhatIsSwapped(string swaps, string title)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Equal(title, (await desk.Page(Address("potato-rolls", swaps))).QuerySelector("#keep-title")!.GetAttribute("value"));
    }

    [Theory]
    [InlineData("", "no title")]
    [InlineData("a\u202eb", "cannot be seen")]
    public async Task TitleThatCannotBe_IsRefused_AndNothingIsWritten(string title, string reason)
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = scratch.Folder.Recipes;
        var answer = await Keep(desk, Address("potato-rolls", "butter=olive oil"), title);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(reason, answer.Page.QuerySelector("#keep-refused")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(before, scratch.Folder.Recipes);
    }

    [Fact]
    public async Task MarkupInAnAddress_IsText()
    {
        const string Typed = "<script>alert(1)</script>";
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Address("potato-rolls", $"butter={Typed}|{Typed}@{Typed}=x"));
        Assert.DoesNotContain(page.Scripts, script => script.Text.Contains("alert", StringComparison.Ordinal));
        Assert.Equal(Typed, page.QuerySelector("#by-0")!.GetAttribute("value"));
    }

    [Fact]
    public async Task MoreThanAnybodyLacks_IsRefused()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page(Address("potato-rolls", string.Join('|', Enumerable.Repeat("butter=lard", 40))));
        Assert.Contains("More than 12", page.QuerySelector("#swap-refused")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(12, page.QuerySelectorAll("[name=by]").Length);
    }

    [Fact]
    public async Task RecipePage_LeadsHere_InItsMeasures()
    {
        using var scratch = Scratch.WithTheShipped();
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.NotNull((await desk.Page("/recipes/potato-rolls?measures=us")).QuerySelector($"section[aria-labelledby=formula] a[href='{Rolls}?measures=us']"));
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get("/recipes/nobody/swaps")).StatusCode);
    }

    private static Scratch WithBuns() => Scratch.WithTheShipped().Put("harbour-buns", File.ReadAllText(House.Text("harbour-buns.yaml")));

    private static string Address(string recipe, string swaps) => $"/recipes/{recipe}/swaps?" + string.Join('&', swaps.Split('|').Select(swap => "replace=" + Uri.EscapeDataString(swap)));

    private static string Weight(JsonElement grams, Voice voice) => grams.ValueKind == JsonValueKind.Null ? voice.Words["swap.none"] : voice.Text(Mass.FromGrams(grams.GetDouble()));

    private static JsonElement Json(string recipe, string swaps)
    {
        var file = recipe == "harbour-buns" ? House.Text("harbour-buns.yaml") : House.Demo(recipe + ".yaml");
        using var json = JsonDocument.Parse(Run.Of(["swap", file, .. swaps.Split('|').SelectMany(swap => new[] { "--replace", swap }), "--json"]).Output);
        return json.RootElement.Clone();
    }

    private static async Task<LiveDesk.Answer> Keep(LiveDesk desk, string address, string title) =>
        await desk.Send((IHtmlFormElement)(await desk.Page(address)).QuerySelector("form.keepform")!, ("title", title));
}
