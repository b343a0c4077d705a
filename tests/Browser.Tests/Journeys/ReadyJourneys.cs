using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Journeys;

/// <summary>"I begin at nine and they eat at half past six": asked on the page of a recipe, answered by yeast, water and both.</summary>
public class ReadyJourneys(House house)
{
    private const string Recipe = "/recipes/potato-rolls?kitchen=mountain";

    [Fact(Timeout = Visit.Patience)]
    public async Task KeyboardAlone_AsksForAnHour_AndTheAddressKeepsIt()
    {
        await using var visit = await house.Visit(Recipe);
        await visit.Circuit();
        await visit.Page.Locator("#ready-start").SelectTextAsync();
        await visit.Page.Keyboard.TypeAsync("21");
        await visit.Page.Keyboard.PressAsync("Tab");
        await visit.Page.Keyboard.TypeAsync("6.30");
        await visit.Page.Keyboard.PressAsync("Tab");
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        await visit.Page.Keyboard.PressAsync("Tab");
        await visit.Page.Keyboard.PressAsync("Enter");

        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex(@"/ready\?kitchen=mountain&start=21:00&by=6:30%2B1d$"));
        await Assertions.Expect(visit.Page.Locator(".readyways > section")).ToHaveCountAsync(3);
        Assert.Equal("6:30", await visit.Page.Locator("#ready-by").InputValueAsync());
        Assert.Equal("1", await visit.Page.Locator("#ready-later").InputValueAsync());
        var said = await visit.Page.Locator(".readyways").InnerTextAsync();
        await visit.Page.ReloadAsync();
        await Assertions.Expect(visit.Page.Locator(".readyways")).ToHaveTextAsync(said, new() { UseInnerText = true });
        Assert.Empty(visit.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task WhatIsChangedOnTheAnswer_IsAskedAgain()
    {
        await using var visit = await house.Visit("/recipes/potato-rolls/ready?start=22:00&by=5:00");
        var by = visit.Page.Locator("#ready-by");
        await by.FillAsync("4:45");
        await by.PressAsync("Tab");
        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex("by=4:45$"));
        await Assertions.Expect(visit.Page.Locator(".readyways")).ToContainTextAsync("Ready at 4:45");
        await Assertions.Expect(visit.Page.Locator("h1")).ToContainTextAsync("4:45");
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task WithoutScript_TheSameIsAnswered()
    {
        await using var visit = await house.Visit(Recipe, new(Script: false));
        await visit.Page.Locator(".readypart button").ClickAsync();
        await visit.Page.WaitForURLAsync(new Regex("/ready"));
        // What takes longer than a page waits is there when it is loaded again, as the page says itself.
        for (var again = 0; again < 10 && await visit.Page.Locator(".shelfsaid[role=status]").CountAsync() > 0; again++)
        {
            await visit.Page.ReloadAsync();
        }

        Assert.Equal(3, await visit.Page.Locator(".readyways > section").CountAsync());
    }
}
