using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Journeys;

/// <summary>"That bake was good; what did I change since?": a state is kept, the recipe changed, the two set side by side, and one thing brought back.</summary>
public class StateJourneys(House house)
{
    [Fact(Timeout = Visit.Patience)]
    public async Task KeepChangeCompareBringBack()
    {
        await using var visit = await house.Visit("/recipes/potato-rolls");
        var page = visit.Page;
        await page.Locator(".head a[href$='/states']").ClickAsync();
        await page.Locator("#keep-name").FillAsync("dark crust");
        await page.Locator("#keep-note").FillAsync("two minutes too long");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("section[aria-labelledby=kept-states] li h3").First).ToContainTextAsync("dark crust");

        // What another recipe has is taken over: a change that the desk makes itself.
        await page.GotoAsync("/recipes/potato-rolls/sides?left=tin-loaf");
        await page.RunAndWaitForResponseAsync(() => page.Locator(".changes2 tr", new() { HasText = "Sugar (Dough)" }).Locator("button").ClickAsync(), answer => answer.Request.Method == "POST");
        await page.GotoAsync("/recipes/potato-rolls/sides");
        await Assertions.Expect(page.Locator("#left option:checked")).ToContainTextAsync("dark crust");
        var rows = page.Locator(".changes2 tbody tr");
        var before = await rows.CountAsync();
        Assert.True(before > 0);
        await page.Locator(".bring button").First.ClickAsync();
        await Assertions.Expect(rows).ToHaveCountAsync(before - 1);
        Assert.Empty(visit.Troubles);
    }

    /// <summary>A recipe is taken off the shelf while it is open in another window: that is told there, and what is typed there is not lost.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task RecipeTakenOffTheShelf_IsToldInItsOpenSheet_AndWhatIsTypedThereBecomesARecipe()
    {
        await using var desk = await RunningDesk.Open();
        await using var sheet = await house.Visit("/recipes/tin-loaf/write", address: desk.Address);
        await using var visit = await house.Visit("/recipes/tin-loaf/states", address: desk.Address);
        await sheet.Circuit();
        await visit.Page.Locator("section[aria-labelledby=off-shelf] button").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("main [role=status]")).ToContainTextAsync("is taken off the shelf");
        await Assertions.Expect(sheet.Page.Locator(".writepage .opened")).ToContainTextAsync("taken off the shelf in another window");

        await sheet.Page.Locator("#make-called").FillAsync("Pier loaf");
        await sheet.Page.Locator("#make-called").PressAsync("Tab");
        await Assertions.Expect(sheet.Page.Locator("#write-ours")).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("title: Pier loaf"));
        await sheet.Page.GetByRole(AriaRole.Button, new() { Name = "Make a recipe of its own of it" }).ClickAsync();
        await sheet.Page.WaitForURLAsync("**/recipes/pier-loaf/write");
        await Assertions.Expect(sheet.Page.Locator("h1")).ToHaveTextAsync("Pier loaf");

        await visit.Page.Locator("main .opened button").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("h1")).ToContainTextAsync("loaf", new() { IgnoreCase = true });
        await visit.Go("/");
        await Assertions.Expect(visit.Page.Locator("main a[href*='pier-loaf']").First).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.Locator("main a[href*='tin-loaf']").First).ToBeVisibleAsync();
        Assert.Empty(sheet.Troubles);
        Assert.Empty(visit.Troubles);
    }
}
