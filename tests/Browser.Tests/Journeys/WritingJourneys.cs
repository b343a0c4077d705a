using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Journeys;

/// <summary>What an author does: types into the sheet, and finds it written down in every window and after a reload.</summary>
public class WritingJourneys(House house)
{
    private const string Sheet = "/recipes/tin-loaf/write";

    [Fact(Timeout = Visit.Patience)]
    public async Task ChangedPercentage_IsWrittenDown_AndTakenBackAcrossAReload()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Sheet, address: desk.Address);
        await visit.Circuit();
        var cell = visit.Page.Locator(".cell[id^='percent-dough-']").Last;
        var id = await cell.GetAttributeAsync("id");
        var before = await visit.Page.Locator("#write-text").InputValueAsync();
        await cell.FillAsync("2.5");
        await cell.PressAsync("Tab");
        cell = visit.Page.Locator("#" + id);
        await Assertions.Expect(cell).ToHaveClassAsync("cell typed");
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex(@": 2\.5 %"));

        await visit.Page.ReloadAsync();
        await visit.Circuit();
        Assert.Equal("2.5", await visit.Page.Locator("#" + id).InputValueAsync());
        await visit.Page.Locator(".head .btns button").First.ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(before);
        await visit.Page.ReloadAsync();
        Assert.Equal(before, await visit.Page.Locator("#write-text").InputValueAsync());
        Assert.Empty(visit.Troubles);
    }

    /// <summary>Whatever is refused says why beside its field, at once, and no more when it is put right.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task WhatIsRefused_SaysWhyBesideItsField_UntilItIsPutRight()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Sheet, address: desk.Address);
        await visit.Circuit();
        var page = visit.Page;
        await page.Locator("[aria-labelledby=write-method] .ln").First.ClickAsync();
        var hands = "#" + await page.Locator("[id^=step-][id$=-hands]").First.GetAttributeAsync("id");
        foreach (var (field, wrong, right) in new[] { ("#add-dough", "flour", ""), (hands, "long", "7 min") })
        {
            var why = page.Locator(field + "-why");
            await Assertions.Expect(why).ToHaveCountAsync(0);
            await page.Locator(field).FillAsync(wrong);
            await page.Locator(field).PressAsync("Enter");
            await Assertions.Expect(why).ToBeVisibleAsync();
            await Assertions.Expect(page.Locator(field)).ToHaveAttributeAsync("aria-describedby", field[1..] + "-why");
            if (right.Length > 0)
            {
                await page.Locator(field).FillAsync(right);
                await page.Locator(field).PressAsync("Tab");
                await Assertions.Expect(why).ToHaveCountAsync(0);
            }
        }

        Assert.Empty(visit.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task LineThatIsTypedInTheText_StandsInTheSheet_AndOneThatIsNotUnderstoodIsKept()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/quayside-pan-bread/write", address: desk.Address);
        await visit.Circuit();
        var text = visit.Page.Locator("#write-text");
        var before = await text.InputValueAsync();
        await text.FillAsync(before.Replace("  dough:\n", "  dough:\n    poppy seed: 12\n"));
        await text.PressAsync("Tab");
        await Assertions.Expect(visit.Page.Locator("#write-faults")).ToContainTextAsync("12");
        await visit.Page.ReloadAsync();
        await visit.Circuit();
        text = visit.Page.Locator("#write-text");
        Assert.Contains("poppy seed: 12", await text.InputValueAsync(), StringComparison.Ordinal);
        await text.FillAsync(before.Replace("  dough:\n", "  dough:\n    poppy seed: 12 g\n"));
        await text.PressAsync("Tab");
        await Assertions.Expect(visit.Page.Locator("#weight-dough-poppy-seed")).ToHaveValueAsync("12");
        await visit.Page.Locator(".head .btns button").First.ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#weight-dough-poppy-seed")).ToHaveCountAsync(0);
        Assert.Empty(visit.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task TwoWindows_AreBothShown_AndSettled()
    {
        await using var desk = await RunningDesk.Open();
        await using var mine = await house.Visit("/recipes/pilot-ring/write", address: desk.Address);
        await using var theirs = await house.Visit("/recipes/pilot-ring/write", address: desk.Address);
        await mine.Circuit();
        await theirs.Circuit();
        await Typed(theirs, "#make-pieces", "3");
        await Assertions.Expect(theirs.Page.Locator("#write-text")).ToHaveValueAsync(new Regex("make: 3 "));
        await Typed(mine, "#make-pieces", "4");
        await Assertions.Expect(mine.Page.Locator("#write-theirs")).ToHaveValueAsync(new Regex("make: 3 "));
        await mine.Page.Locator("section[role=alert] .btns button").First.ClickAsync();
        await Assertions.Expect(mine.Page.Locator("#make-pieces")).ToHaveValueAsync("3");
        await mine.Page.Locator(".head .btns button").First.ClickAsync();
        await Assertions.Expect(mine.Page.Locator("#make-pieces")).Not.ToHaveValueAsync("3");
    }

    /// <summary>A window is told at once, and what stands in its fields is not taken away.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task OtherWindow_IsToldAtOnce_AndShowsItWhenAsked()
    {
        await using var desk = await RunningDesk.Open();
        await using var mine = await house.Visit("/recipes/pilot-ring/write", address: desk.Address);
        await using var theirs = await house.Visit("/recipes/pilot-ring/write", address: desk.Address);
        await mine.Circuit();
        await theirs.Circuit();
        var line = mine.Page.Locator("[id^='add-']").First;
        await line.FillAsync("poppy seed 12 g");
        var before = await mine.Page.Locator("#make-pieces").InputValueAsync();
        await Typed(theirs, "#make-pieces", "3");
        var told = mine.Page.Locator(".writepage .opened");
        await Assertions.Expect(told).ToContainTextAsync("pieces 3");
        await Assertions.Expect(mine.Page.Locator("#make-pieces")).ToHaveValueAsync(before);
        await Assertions.Expect(line).ToHaveValueAsync("poppy seed 12 g");
        await Assertions.Expect(theirs.Page.Locator(".writepage .opened")).ToHaveCountAsync(0);

        await told.Locator("button").ClickAsync();
        await Assertions.Expect(mine.Page.Locator("#make-pieces")).ToHaveValueAsync("3");
        await Assertions.Expect(line).ToHaveValueAsync("poppy seed 12 g");
        await Assertions.Expect(told).ToHaveCountAsync(0);
        await Typed(mine, "#make-pieces", "4");
        await Assertions.Expect(mine.Page.Locator("#write-text")).ToHaveValueAsync(new Regex("make: 4 "));
        await Assertions.Expect(mine.Page.Locator("#write-theirs")).ToHaveCountAsync(0);
        await Assertions.Expect(theirs.Page.Locator(".writepage .opened")).ToContainTextAsync("pieces 4");
        Assert.Empty(mine.Troubles);
        Assert.Empty(theirs.Troubles);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task RecipeFromNothing_BeginsOnItsSheet_AndGrowsByLinesInWords()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/", address: desk.Address);
        await visit.Page.Locator("a[href$='new']").ClickAsync();
        await visit.Page.Locator("#new-title").FillAsync("Pier loaf");
        await visit.Page.Locator("#new-title").PressAsync("Enter");
        await visit.Page.WaitForURLAsync(new Regex("/recipes/pier-loaf/write"));
        await visit.Circuit();
        await visit.Page.Locator("#add-dough").FillAsync("water 65 %");
        await visit.Page.Locator("#add-dough").PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator("#weight-dough-water")).ToHaveValueAsync("325");
        await Assertions.Expect(visit.Page.Locator("#add-dough")).ToHaveValueAsync("");
        await Typed(visit, "#weight-dough-strong-white-flour", "400");
        await Assertions.Expect(visit.Page.Locator("#weight-dough-water")).ToHaveValueAsync("260");
        Assert.Empty(visit.Troubles);
    }

    /// <summary>The answer to one field comes while the next is typed already.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task LateAnswer_TakesNothingBack()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Sheet, address: desk.Address);
        await visit.Circuit();
        var cell = visit.Page.Locator(".cell[id^='percent-dough-']").Last;
        await cell.FocusAsync();
        await visit.Page.Keyboard.PressAsync("ControlOrMeta+a");
        await visit.Page.Keyboard.TypeAsync("2.5");
        // What a late answer does to a field.
        await cell.EvaluateAsync("field => { field.value = '1.0'; }");
        Assert.Equal("2.5", await cell.InputValueAsync());
        await cell.PressAsync("Tab");
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex(@": 2\.5 %"));
        await cell.EvaluateAsync("field => { field.value = '3.0'; }");
        Assert.Equal("3.0", await cell.InputValueAsync());
    }

    /// <summary>Whoever types fast begins the next line before the last one is answered.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task LinesTypedWithoutAPause_AreAllThere()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Sheet, address: desk.Address);
        await visit.Circuit();
        await visit.Page.Locator("#add-dough").FocusAsync();
        await visit.Page.Keyboard.TypeAsync("poppy seed 12 g");
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.Keyboard.TypeAsync("sesame seed 8 g");
        await Assertions.Expect(visit.Page.Locator("#weight-dough-poppy-seed")).ToHaveValueAsync("12");
        await Assertions.Expect(visit.Page.Locator("#add-dough")).ToHaveValueAsync("sesame seed 8 g");
        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator("#weight-dough-sesame-seed")).ToHaveValueAsync("8");
        await Assertions.Expect(visit.Page.Locator("#add-dough")).ToHaveValueAsync("");
    }

    /// <summary>A desk that is busy answers late, and what it says of several events at once in one: no line runs into the next, and none is lost.</summary>
    [Theory(Timeout = Visit.Patience)]
    [InlineData("")]
    [InlineData("flax seed")]
    public async Task LinesTypedBeforeAnyAnswer_AreAllThere(string begun)
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Sheet, address: desk.Address);
        var slow = await SlowDesk.Between(visit);
        await visit.Page.Locator("#add-dough").FocusAsync();
        slow.Hold();
        foreach (var line in (string[])["poppy seed 12 g", "sesame seed 8 g", "sunflower seed 5 g"])
        {
            await visit.Page.Keyboard.TypeAsync(line);
            await visit.Page.Keyboard.PressAsync("Enter");
        }

        await visit.Page.Keyboard.TypeAsync(begun);
        slow.Release();
        await Assertions.Expect(visit.Page.Locator("#weight-dough-sunflower-seed")).ToHaveValueAsync("5");
        await Assertions.Expect(visit.Page.Locator("#weight-dough-sesame-seed")).ToHaveValueAsync("8");
        await Assertions.Expect(visit.Page.Locator("#weight-dough-poppy-seed")).ToHaveValueAsync("12");
        await Assertions.Expect(visit.Page.Locator("#add-dough")).ToHaveValueAsync(begun);
        Assert.Empty(visit.Troubles);
    }

    /// <summary>A line that is refused is there to be mended, with what was typed behind it; an empty one leads on however late the answer is.</summary>
    [Theory(Timeout = Visit.Patience)]
    [InlineData("poppy seed twelve", "sesame", "poppy seed twelvesesame", "add-dough")]
    [InlineData("poppy seed 12 g", "", "", null)]
    public async Task WhatFollowsALateAnswer_IsAsIfItHadBeenInTime(string first, string second, string stays, string? stands)
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Sheet, address: desk.Address);
        var slow = await SlowDesk.Between(visit);
        await visit.Page.Locator("#add-dough").FocusAsync();
        slow.Hold();
        await visit.Page.Keyboard.TypeAsync(first);
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.Keyboard.TypeAsync(second);
        await visit.Page.Keyboard.PressAsync("Enter");
        slow.Release();
        await Assertions.Expect(stands is null ? visit.Page.Locator("#weight-dough-poppy-seed") : visit.Page.Locator("#add-dough-why")).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.Locator("#add-dough")).ToHaveValueAsync(stays);
        await Assertions.Expect(visit.Page.Locator(stands is null ? "[aria-labelledby=write-method] :focus" : "#add-dough:focus")).ToHaveCountAsync(1);
    }

    private static async Task Typed(Visit visit, string field, string typed)
    {
        await visit.Page.Locator(field).FillAsync(typed);
        await visit.Page.Locator(field).PressAsync("Tab");
    }
}
