using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Journeys;

/// <summary>Lists under a field by keyboard alone, rows by a handle, photos, and what stands beside the method.</summary>
public class ListJourneys(House house)
{
    [Fact(Timeout = Visit.Patience)]
    public async Task LineIsTakenFromTheList_ByKeyboardAlone()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/potato-rolls/write", address: desk.Address);
        await visit.Circuit();
        var field = visit.Page.Locator("#add-dough");
        await field.FocusAsync();
        await visit.Page.Keyboard.TypeAsync("30 g sunf");
        var list = visit.Page.Locator("#add-dough-list");
        await Assertions.Expect(list.GetByRole(AriaRole.Option).First).ToContainTextAsync("%");
        await Assertions.Expect(field).ToHaveAttributeAsync("aria-expanded", "true");
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(list.Locator("[aria-selected=true]")).ToHaveCountAsync(1);
        var active = await field.GetAttributeAsync("aria-activedescendant");
        var name = await visit.Page.Locator($"#{active} b").TextContentAsync();
        await visit.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(list).ToHaveCountAsync(0);
        await Assertions.Expect(field).ToHaveValueAsync("30 g sunf");
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(list).ToHaveCountAsync(1);
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(list.Locator("[aria-selected=true]")).ToHaveCountAsync(1);
        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(field).ToHaveValueAsync(new Regex("30 g.*" + Regex.Escape(name!.Split(',')[0]) + "|" + Regex.Escape(name) + ".*30 g"));
        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex(Regex.Escape(name) + "\"?: 30 g"));
        await Assertions.Expect(field).ToHaveValueAsync("");
        Assert.Empty(visit.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task LiveValueIsTaken_ByKeyboardAlone_AndReadsAtHome()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/potato-rolls/write", address: desk.Address);
        await visit.Circuit();
        await visit.Page.Locator(".edsteps .ln", new() { HasTextString = "Bulk" }).First.ClickAsync();
        var field = visit.Page.Locator("#step-bulk-words");
        await field.FillAsync("Cover it, about . Then look.");
        await field.EvaluateAsync("field => field.setSelectionRange(16, 16)");
        await visit.Page.Keyboard.TypeAsync("[bulk ti");
        await Assertions.Expect(visit.Page.Locator("#step-bulk-words-list [aria-selected=true]")).ToContainTextAsync("bulk time");
        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(field).ToHaveValueAsync("Cover it, about [bulk time]. Then look.");
        await visit.Page.Keyboard.TypeAsync(", or so");
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex(Regex.Escape("about [bulk time], or so. Then look.")));
        await Assertions.Expect(visit.Page.Locator(".reads b").First).ToContainTextAsync("min");
        Assert.Empty(visit.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task LineIsDraggedByItsHandle_AndMovedByItsArrows()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/potato-rolls/write", address: desk.Address);
        var (rows, grips, before) = await Dough(visit);
        var (from, to) = (await Box(grips.Last), await Box(grips.Nth(before.Count - 3)));
        await visit.Page.Mouse.MoveAsync(from.X + 20, from.Y + 20);
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(to.X + 20, to.Y + 4, new() { Steps = 6 });
        await Assertions.Expect(visit.Page.Locator("tr.dropbefore")).ToHaveCountAsync(1);
        await visit.Page.Mouse.UpAsync();
        string[] after = [.. before.Take(before.Count - 3), before[^1], before[^3], before[^2]];
        await Assertions.Expect(rows).ToHaveTextAsync(after);
        await Assertions.Expect(visit.Page.Locator("tr.lifted")).ToHaveCountAsync(0);

        await grips.Nth(before.Count - 3).FocusAsync();
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(rows).ToHaveTextAsync([.. before.Take(before.Count - 3), before[^3], before[^1], before[^2]]);
        await Assertions.Expect(visit.Page.Locator(":focus")).ToHaveClassAsync("grip");
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(rows).ToHaveTextAsync([.. before]);
        Assert.Empty(visit.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task LineIsDraggedByTouch()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/potato-rolls/write", address: desk.Address);
        var (rows, grips, before) = await Dough(visit);
        var (from, to) = (await Box(grips.Last), await Box(grips.Nth(before.Count - 2)));
        var touch = await visit.Page.Context.NewCDPSessionAsync(visit.Page);
        await Send("touchStart", from.Y + 20);
        await Send("touchMove", to.Y + 20);
        await Send("touchMove", to.Y + 4);
        await touch.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() });
        await Assertions.Expect(rows).ToHaveTextAsync([.. before.Take(before.Count - 2), before[^1], before[^2]]);

        Task Send(string type, double y) => touch.SendAsync("Input.dispatchTouchEvent", new()
        {
            ["type"] = type,
            ["touchPoints"] = new[] { new Dictionary<string, object> { ["x"] = from.X + 20, ["y"] = y } },
        });
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task PhotoIsLaidIn_AndSeenOnTheRecipesPage()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/potato-rolls/write", address: desk.Address);
        await visit.Circuit();
        var picture = await visit.Page.ScreenshotAsync();
        await visit.Page.Locator("#photo-added").SetInputFilesAsync(new FilePayload { Name = "crumb.png", MimeType = "image/png", Buffer = picture });
        await visit.Page.Locator("#photo-added-words").FillAsync("the sheet itself");
        await visit.Page.Locator(".around button", new() { HasTextString = "Add the photo" }).ClickAsync();
        var shown = visit.Page.Locator(".around img[alt='the sheet itself']");
        await Assertions.Expect(shown).ToHaveCountAsync(1);
        Assert.True(await shown.EvaluateAsync<bool>("async picture => { picture.loading = 'eager'; await picture.decode(); return picture.naturalWidth > 100; }"));
        await visit.Go("/recipes/potato-rolls");
        await Assertions.Expect(visit.Page.Locator("figure.photo img[alt='the sheet itself']")).ToHaveCountAsync(1);
        Assert.Empty(visit.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task WayOut_IsCarriedOutBesideItsPlace_AndTakenBack()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/potato-rolls/write", address: desk.Address);
        await visit.Circuit();
        var text = visit.Page.Locator("#write-text");
        var before = await text.InputValueAsync();
        await visit.Page.Locator("#around-tools").FillAsync("scale");
        await visit.Page.Locator("#around-tools").PressAsync("Tab");
        var way = visit.Page.Locator(".place-find .ways button").First;
        var verb = await way.TextContentAsync();
        var undo = visit.Page.Locator(".head .btns button").First;
        var first = await undo.TextContentAsync();
        await way.ClickAsync();
        await Assertions.Expect(undo).Not.ToHaveTextAsync(first!);
        await undo.ClickAsync();
        await Assertions.Expect(undo).ToHaveTextAsync(first!);
        await Assertions.Expect(visit.Page.Locator(".head .btns button").Nth(1)).ToContainTextAsync(verb!);
        await undo.ClickAsync();
        await Assertions.Expect(text).ToHaveValueAsync(before);
        Assert.Empty(visit.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task SentenceHoldsALine_WhileTheRestFollows()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/potato-rolls/write", address: desk.Address);
        await visit.Circuit();
        await visit.Page.Locator("#make-hold").SelectOptionAsync("dough/butter");
        await Assertions.Expect(visit.Page.Locator("#make-held-at")).ToHaveValueAsync("50");
        await visit.Page.Locator("#make-pieces").FillAsync("20");
        await visit.Page.Locator("#make-pieces").PressAsync("Tab");
        await Assertions.Expect(visit.Page.Locator("#weight-dough-sugar")).Not.ToHaveValueAsync("30");
        await Assertions.Expect(visit.Page.Locator("#weight-dough-butter")).ToHaveValueAsync("50");
        await Assertions.Expect(visit.Page.Locator("#make-hold")).ToHaveValueAsync("dough/butter");
        Assert.Empty(visit.Troubles);
    }

    /// <summary>The lines of the dough, the handles by which they are moved, and what stands there at first.</summary>
    private static async Task<(ILocator Rows, ILocator Grips, IReadOnlyList<string> Before)> Dough(Visit visit)
    {
        await visit.Circuit();
        var rows = visit.Page.Locator("tbody:has(#add-dough) tr.line .ln");
        var grips = visit.Page.Locator("tbody:has(#add-dough) tr.line .grip");
        await grips.Last.ScrollIntoViewIfNeededAsync();
        return (rows, grips, await rows.AllTextContentsAsync());
    }

    private static async Task<LocatorBoundingBoxResult> Box(ILocator grip) => (await grip.BoundingBoxAsync())!;
}
