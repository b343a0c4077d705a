using System.Net;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book.Papers;

namespace Doughwright.App.Tests.Desk.Search;

/// <summary>How a recipe stands is said beside its text, seen on the shelf, and asked for there.</summary>
public sealed class StandingTests : IDisposable
{
    private const string Page = "/recipes/potato-rolls/standing";

    private readonly Scratch scratch = Scratch.WithTheShipped();

    [Fact]
    public async Task WhatIsSaid_StandsOnTheShelf_AndItsTextStaysAsItWas()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var before = scratch.Folder.RecipeTexts.Find("potato-rolls");
        Assert.Equal(HttpStatusCode.SeeOther, (await Say(desk, "right", "2026-11-09", "  soft   rolls ", "autumn")).Status);
        Assert.Equal(before, scratch.Folder.RecipeTexts.Find("potato-rolls"));
        var shelf = await desk.Page("/?day=2026-11-28&time=16:00");
        Assert.Contains("Came out right; last baked Monday 9 November.", shelf.Body!.TextContent, StringComparison.Ordinal);
        var links = shelf.QuerySelectorAll(".onlyline a").Select(link => link.TextContent).ToArray();
        Assert.Equal(["came out right", "soft rolls", "autumn"], links);
        Assert.Equal($"All {scratch.Folder.Recipes.Count} are here. Show only came out right, soft rolls, autumn.", shelf.QuerySelector(".onlyline")!.TextContent);
        var only = await desk.Page(shelf.QuerySelector(".onlyline a")!.GetAttribute("href")!);
        Assert.Equal("Potato rolls", Assert.Single(only.QuerySelectorAll("ol.rows h2")).TextContent.Trim());
        Assert.Contains("came out right. Show all", only.QuerySelector(".onlyline")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("1 of ", only.QuerySelector(".onlyline")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(scratch.Folder.Recipes.Count, (await desk.Page(only.QuerySelector(".onlyline a")!.GetAttribute("href")!)).QuerySelectorAll("ol.rows h2").Length);
    }

    [Theory]
    [InlineData("best", "", "“best” is no standing")]
    [InlineData("trying", "9 November", "is no day")]
    [InlineData("trying", "2999-01-01", "is not over yet")]
    public async Task WhatCannotBe_IsRefused_AndNothingIsSaid(string standing, string baked, string reason)
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var answer = await Say(desk, standing, baked, "x", "");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(reason, answer.Words, StringComparison.Ordinal);
        Assert.Equal("x", ((IHtmlInputElement)answer.Page.QuerySelector("#family")!).Value);
        Assert.Empty(scratch.Folder.Book.Said.All(PaperSort.Recipe));
    }

    [Fact]
    public async Task WhatIsTakenBack_IsNoLongerSaid()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        await Say(desk, "idea", "", "", "");
        await Say(desk, "", "", "", "");
        Assert.Empty(scratch.Folder.Book.Said.All(PaperSort.Recipe));
        Assert.Null((await desk.Page(Page)).QuerySelector("main [role=status]"));
    }

    /// <summary>Two forms that were shown the same: the second says what was said meanwhile, keeps what was typed, and is taken when it is sent again.</summary>
    [Fact]
    public async Task WhatWasSaidMeanwhile_IsTold_AndWhatIsTypedStays()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var mine = (IHtmlFormElement)(await desk.Page(Page)).QuerySelector("main form")!;
        await Say(desk, "trying", "", "", "spring");
        var refused = await desk.Send(mine, ("standing", "right"), ("baked", ""), ("family", "soft rolls"), ("season", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("How it stands was said otherwise meanwhile, perhaps in another window: “trying”, and here “came out right”", refused.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("The season was said otherwise", refused.Words, StringComparison.Ordinal);
        Assert.Equal("soft rolls", ((IHtmlInputElement)refused.Page.QuerySelector("#family")!).Value);
        // What was not typed shows what is said now.
        Assert.Equal("spring", ((IHtmlInputElement)refused.Page.QuerySelector("#season")!).Value);
        Assert.False(scratch.Folder.Book.Said.All(PaperSort.Recipe)["potato-rolls"].ContainsKey(Saying.Family));

        var again = (IHtmlFormElement)refused.Page.QuerySelector("main form")!;
        Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(again, ("standing", "right"), ("baked", ""), ("family", "soft rolls"), ("season", "spring"))).Status);
        var said = scratch.Folder.Book.Said.All(PaperSort.Recipe)["potato-rolls"];
        Assert.Equal(("right", "soft rolls", "spring"), (said[Saying.Standing], said[Saying.Family], said[Saying.Season]));
    }

    [Fact]
    public async Task RecipeThatIsNotThere_HasNoStanding()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Equal(HttpStatusCode.NotFound, (await desk.Get("/recipes/nobody/standing")).StatusCode);
    }

    public void Dispose() => scratch.Dispose();

    private static async Task<LiveDesk.Answer> Say(LiveDesk desk, string standing, string baked, string family, string season) => await desk.Send(
        (IHtmlFormElement)(await desk.Page(Page)).QuerySelector("main form")!, ("standing", standing), ("baked", baked), ("family", family), ("season", season));
}
