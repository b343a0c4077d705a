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
}
