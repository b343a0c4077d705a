using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Journeys;

/// <summary>What a teacher does: from the shelf to a recipe, to another kitchen, and back to the same by its address.</summary>
public class RecipeJourneys(House house)
{
    private const string Recipe = "/recipes/potato-rolls";

    [Fact(Timeout = Visit.Patience)]
    public async Task FromTheShelf_ToAnotherKitchen_AndTheSameAgainByItsAddress()
    {
        await using var visit = await house.Visit("/");
        await visit.Page.Locator($"a[href*='{Recipe[1..]}']").First.ClickAsync();
        await visit.Page.WaitForURLAsync(new Regex(Recipe));
        await visit.Circuit();
        var home = await Answer(visit).InnerTextAsync();
        var strip = await Strip(visit).InnerHTMLAsync();

        await visit.Page.Locator("input[type=radio][name=kitchen][value=mountain]").CheckAsync();

        await Assertions.Expect(Answer(visit)).Not.ToHaveTextAsync(home);
        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex(@"[?&]kitchen=mountain"));
        var away = await Answer(visit).InnerTextAsync();
        Assert.NotEqual(strip, await Strip(visit).InnerHTMLAsync());

        await visit.Page.ReloadAsync();
        Assert.Equal(away, await Answer(visit).InnerTextAsync());
        Assert.True(await visit.Page.Locator("input[type=radio][name=kitchen][value=mountain]").IsCheckedAsync());

        await using var without = await house.Visit(new Uri(visit.Page.Url).PathAndQuery, new(Script: false));
        Assert.Equal(away, await Answer(without).InnerTextAsync());
        Assert.Empty(visit.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task BackToHome_IsHomeAgain()
    {
        await using var visit = await house.Visit(Recipe);
        await visit.Circuit();
        var home = await Answer(visit).InnerTextAsync();
        await visit.Page.Locator("input[type=radio][name=kitchen][value=mountain]").CheckAsync();
        await Assertions.Expect(Answer(visit)).Not.ToHaveTextAsync(home);
        await visit.Page.Locator("input[name=kitchen]").First.CheckAsync();
        await Assertions.Expect(Answer(visit)).ToHaveTextAsync(home, new() { UseInnerText = true });
        await Assertions.Expect(visit.Page).Not.ToHaveURLAsync(new Regex("kitchen="));
    }

    [Theory(Timeout = Visit.Patience)]
    [InlineData("900")]
    [InlineData("warm")]
    [InlineData("-300")]
    public async Task RefusedValue_KeepsTheLastGoodOne_AndSaysWhy(string typed)
    {
        await using var visit = await house.Visit(Recipe);
        await visit.Circuit();
        var room = visit.Page.Locator("#field-air");
        await room.FillAsync("18");
        await room.PressAsync("Tab");
        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex("air=18"));
        var good = await Answer(visit).InnerTextAsync();

        await room.FillAsync(typed);
        await room.PressAsync("Tab");

        await Assertions.Expect(room).ToHaveAttributeAsync("aria-invalid", "true");
        var reason = visit.Page.Locator($"#{await room.GetAttributeAsync("aria-describedby")}");
        await Assertions.Expect(reason).ToContainTextAsync(typed.Replace('-', '\u2212'));
        Assert.Equal(typed, await room.InputValueAsync());
        Assert.Equal(good, await Answer(visit).InnerTextAsync());

        await room.FillAsync("18");
        await Assertions.Expect(room).Not.ToHaveAttributeAsync("aria-invalid", "true");
    }

    [Theory(Timeout = Visit.Patience)]
    [InlineData("#field-air", "63F", "air=63F", "17.22")]
    [InlineData("#field-altitude", "1200ft", "altitude=1200ft", "366")]
    public async Task FastTyping_LosesNoKey(string field, string typed, string asked, string shown)
    {
        await using var visit = await house.Visit(Recipe);
        await visit.Circuit();
        await visit.Page.Locator(field).SelectTextAsync();
        await visit.Page.Keyboard.TypeAsync(typed);
        await visit.Page.WaitForTimeoutAsync(1000);
        Assert.Equal(typed, await visit.Page.Locator(field).InputValueAsync());
        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex($"[?&]{asked}(&|$)"));
        await Assertions.Expect(visit.Page.Locator(field)).ToHaveValueAsync(shown);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task WhatIsTypedBeforeThePageAnswers_StaysAndCounts()
    {
        await using var visit = await house.Visit(Recipe);
        await visit.Page.RouteAsync("**/_blazor/negotiate*", async route =>
        {
            await Task.Delay(1500);
            await route.ContinueAsync();
        });
        await visit.Go(Recipe);
        var tap = visit.Page.Locator("#field-tap");
        await tap.SelectTextAsync();
        await visit.Page.Keyboard.TypeAsync("9");
        await visit.Circuit();
        await Assertions.Expect(tap).ToBeFocusedAsync();
        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex("tap=9C"));
        await visit.Page.Keyboard.TypeAsync(".5");
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex("tap=9.5C"));
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task KeyboardAlone_GetsFromTheShelf_ToAnotherKitchensAnswer()
    {
        await using var visit = await house.Visit("/");
        await TabTo(visit, on => on.StartsWith('A') && on.Contains(Recipe[1..], StringComparison.Ordinal));
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.WaitForURLAsync(new Regex(Recipe));
        await visit.Circuit();
        var home = await Answer(visit).InnerTextAsync();
        await TabTo(visit, on => on.StartsWith("INPUT kitchen", StringComparison.Ordinal));
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(Answer(visit)).Not.ToHaveTextAsync(home);
        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex("kitchen="));
        Assert.StartsWith("INPUT kitchen", await Focused(visit), StringComparison.Ordinal);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task SkipLink_LeadsToTheContent()
    {
        await using var visit = await house.Visit(Recipe);
        await visit.Page.Keyboard.PressAsync("Tab");
        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator("main")).ToBeFocusedAsync();
        Assert.Contains(Recipe, visit.Page.Url, StringComparison.Ordinal);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task MeasuresChosen_KeepWhatIsSet()
    {
        await using var visit = await house.Visit($"{Recipe}?kitchen=mountain");
        await visit.Page.Locator("header a[href*='measures=us']").ClickAsync();
        await visit.Page.WaitForURLAsync(new Regex("measures=us"));
        Assert.Contains("kitchen=mountain", visit.Page.Url, StringComparison.Ordinal);
        Assert.Contains("°F", await visit.Page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task KitchenPickedBeforeThePageAnswers_IsKept()
    {
        await using var visit = await house.Visit(Recipe);
        await visit.Page.Locator(".also a[href*='/kitchens']").ClickAsync();
        await visit.Page.WaitForURLAsync(new Regex("/kitchens"));
        await visit.Page.Locator("main select").Nth(1).SelectOptionAsync("summer");
        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex("second=summer"));
        await Assertions.Expect(visit.Page.Locator("main select").Nth(1)).ToHaveValueAsync("summer");
        Assert.Empty(visit.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task KitchensSideBySide_FollowWhatIsPicked()
    {
        await using var recipe = await house.Visit(Recipe);
        var link = await recipe.Page.Locator(".also a[href*='/kitchens']").GetAttributeAsync("href");
        await using var visit = await house.Visit(link!);
        await visit.Circuit();
        var table = visit.Page.Locator("main table").First;
        var before = await table.InnerTextAsync();
        await visit.Page.Locator("main select").Nth(1).SelectOptionAsync("summer");
        await Assertions.Expect(table).Not.ToHaveTextAsync(before, new() { UseInnerText = true });
        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex("second=summer"));
        var after = await table.InnerTextAsync();
        await visit.Page.ReloadAsync();
        Assert.Equal(after, await table.InnerTextAsync());
        Assert.Empty(visit.Troubles);
    }

    private static ILocator Answer(Visit visit) => visit.Page.Locator(".answer[role=status]");

    private static ILocator Strip(Visit visit) => visit.Page.Locator("main svg").First;

    private static Task<string> Focused(Visit visit) => visit.Page.EvaluateAsync<string>(
        "() => { const on = document.activeElement; return `${on.tagName} ${on.name ?? ''} ${on.href ?? ''}`; }");

    private static async Task TabTo(Visit visit, Func<string, bool> wanted)
    {
        for (var stop = 0; stop < 60; stop++)
        {
            await visit.Page.Keyboard.PressAsync("Tab");
            if (wanted(await Focused(visit)))
            {
                return;
            }
        }

        Assert.Fail("The keyboard did not get there in 60 steps.");
    }
}
