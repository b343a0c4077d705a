using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Journeys;

/// <summary>What is done about a finding, and about a name that the larder does not know, where one stands on the sheet.</summary>
public class InPlaceJourneys(House house)
{
    private const string Write = "/recipes/potato-rolls/write";

    /// <summary>Takes all tools but one off the list, so that findings stand beside it, and gives the first of them that can be accepted.</summary>
    private static async Task<ILocator> Findings(Visit visit)
    {
        await visit.Circuit();
        await visit.Page.Locator("#around-tools").FillAsync("scale");
        await visit.Page.Locator("#around-tools").PressAsync("Tab");
        var part = visit.Page.Locator(".place-find .accept").First;
        await Assertions.Expect(part).ToBeAttachedAsync();
        return part;
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task FindingIsAccepted_ByKeyboardAlone()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Write, address: desk.Address);
        var (part, page) = (await Findings(visit), visit.Page);
        var all = await page.Locator(".place-find").CountAsync();
        await part.Locator("summary").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(part.GetByRole(AriaRole.Textbox)).ToBeFocusedAsync();
        // Without a reason it is not accepted, and says so in place.
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(part.GetByRole(AriaRole.Alert)).ToContainTextAsync("There is no reason yet.");
        await Assertions.Expect(part.GetByRole(AriaRole.Textbox)).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("it hangs on the wall");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".place-find")).ToHaveCountAsync(all - 1);
        await Assertions.Expect(page.Locator("#write-text")).ToHaveValueAsync(new Regex("it hangs on the wall"));
        await Assertions.Expect(page.Locator("[aria-labelledby=write-accepted]")).ToContainTextAsync("it hangs on the wall");
        // Its button is gone; the hand is at the one that steps back.
        var undo = page.Locator(".head .btns button").First;
        await Assertions.Expect(undo).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".place-find")).ToHaveCountAsync(all);
        await Assertions.Expect(page.Locator("#write-text")).Not.ToHaveValueAsync(new Regex("it hangs on the wall"));
        Assert.Empty(visit.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task FindingIsAccepted_AndAcceptedNoLonger_OnAPhone()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Write, new(320), desk.Address);
        var (part, page) = (await Findings(visit), visit.Page);
        var all = await page.Locator(".place-find").CountAsync();
        await part.Locator("summary").ClickAsync();
        var (button, field) = (await part.GetByRole(AriaRole.Button).BoundingBoxAsync(), await part.GetByRole(AriaRole.Textbox).BoundingBoxAsync());
        Assert.True(button!.Height >= 44 && field!.Height >= 44, $"{button.Height} and {field!.Height} px high");
        Assert.InRange(await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"), 1, 320);
        await part.GetByRole(AriaRole.Textbox).FillAsync("it hangs on the wall");
        await part.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(page.Locator(".place-find")).ToHaveCountAsync(all - 1);
        await page.Locator("[aria-labelledby=write-accepted] button").ClickAsync();
        await Assertions.Expect(page.Locator(".place-find")).ToHaveCountAsync(all);
        await Assertions.Expect(page.Locator("[aria-labelledby=write-accepted]")).ToHaveCountAsync(0);
        Assert.Empty(visit.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task UnknownName_LeadsToItsForm_AndBackToTheLineAsTyped_ByKeyboardAlone()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Write, address: desk.Address);
        await visit.Circuit();
        var page = visit.Page;
        await page.Locator("#add-dough").FocusAsync();
        await page.Keyboard.TypeAsync("harbour dust 30 g, sifted");
        var last = page.Locator("#add-dough-list").GetByRole(AriaRole.Option).Last;
        await Assertions.Expect(last).ToContainTextAsync("“harbour dust”");
        await page.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(last).ToHaveAttributeAsync("aria-selected", "true");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync(new Regex("/larder/new"));
        await Assertions.Expect(page.Locator("#ingredient")).ToHaveValueAsync("harbour dust");

        // Back by the browser, and the line is there; on to the form again.
        await page.GoBackAsync();
        await page.WaitForURLAsync(new Regex("/write"));
        await Assertions.Expect(page.Locator("#add-dough")).ToHaveValueAsync("harbour dust 30 g, sifted");
        await page.GoForwardAsync();
        await page.WaitForURLAsync(new Regex("/larder/new"));
        await page.Locator("#counts-as").SelectOptionAsync("sugar");
        await page.Locator("#total-carbohydrate").FillAsync("81");
        await page.Locator("form.paperform button.main").PressAsync("Enter");
        await page.WaitForURLAsync(new Regex("/write"));
        await visit.Circuit();
        var field = page.Locator("#add-dough");
        await Assertions.Expect(field).ToHaveValueAsync("harbour dust 30 g, sifted");
        await Assertions.Expect(field).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(field).ToHaveValueAsync("");
        await Assertions.Expect(page.Locator("#write-text")).ToHaveValueAsync(new Regex("own:\\s+harbour dust:[\\s\\S]*harbour dust: 30 g, sifted"));
        // What was added waits no longer.
        await page.ReloadAsync();
        await visit.Circuit();
        await Assertions.Expect(field).ToHaveValueAsync("");
        Assert.Empty(visit.Troubles);
    }
}
