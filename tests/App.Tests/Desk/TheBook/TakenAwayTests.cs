using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Tests.Desk.Shelf;

namespace Doughwright.App.Tests.Desk.TheBook;

/// <summary>What was taken away is listed on its page for as long as it is, by what it calls itself, and comes back from there on any day.</summary>
public sealed class TakenAwayTests : IDisposable
{
    private readonly Scratch scratch = Scratch.WithTheShipped();

    public void Dispose() => scratch.Dispose();

    private BookTexts Of(string page) => page switch
    {
        "/larder" => scratch.Folder.IngredientTexts,
        "/kitchens" => scratch.Folder.KitchenTexts,
        _ => scratch.Folder.NoteTexts,
    };

    private static string Text(string page, string title) => page switch
    {
        "/larder" => $"doughwright: 1\ningredient: {title}\ncounts as: sugar\n",
        "/kitchens" => $"doughwright: 1\nkitchen: {title}\nair: 20 C\n",
        _ => $"# {title}\n\nWords.\n",
    };

    private static IElement? List(IHtmlDocument page) => page.QuerySelector("section[aria-labelledby=taken-away]");

    private static string[] Titles(IHtmlDocument page) => [.. List(page)?.QuerySelectorAll("li bdi").Select(title => title.TextContent) ?? []];

    private static IHtmlFormElement FormOf(IElement inside) => (IHtmlFormElement)inside.Closest("form")!;

    /// <param name="unread">Of a text that is not understood: it is listed by its name.</param>
    [Theory]
    [InlineData("/larder", "no text of an ingredient")]
    [InlineData("/kitchens", "no text of a kitchen")]
    [InlineData("/notes", "no note, for it has no title")]
    public async Task WhatWasTakenAway_IsListed_AndComesBack(string page, string unread)
    {
        var texts = Of(page);
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Null(List(await desk.Page(page)));
        foreach (var (name, text) in new[] { ("first", Text(page, "The <b>first</b> of all")), ("second", Text(page, "The second")), ("third", unread) })
        {
            Shelves.Put(texts, name, text);
            Assert.True(texts.TakeAway(name));
        }

        // What was taken away just now is offered above, and not a second time.
        var offered = await desk.Page(page + "?taken=second");
        Assert.Equal(["The <b>first</b> of all", "third"], Titles(offered));
        Assert.Single(offered.QuerySelectorAll("button[name=back][value=second]"));

        var listed = await desk.Page(page);
        Assert.Equal(["The <b>first</b> of all", "The second", "third"], Titles(listed));
        foreach (var (name, left) in new[] { ("third", 2), ("first", 1), ("second", 0) })
        {
            Assert.Equal(HttpStatusCode.SeeOther, (await desk.Send(FormOf(List(listed)!), ("back", name))).Status);
            Assert.NotNull(texts.Find(name));
            Assert.Equal(left, Titles(await desk.Page(page)).Length);
        }

        // Another window shows the list as it was.
        var again = await desk.Send(FormOf(List(listed)!), ("back", "first"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, again.Status);
        Assert.Contains("first", again.Words, StringComparison.Ordinal);
        Assert.Single(texts.Names(), "first");
    }
}
