using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Journeys;

/// <summary>The desk goes away under an open page: a quiet line says so, and what was set is not lost.</summary>
[Trait("Category", "Slow")]
public class LostDeskTests(House house)
{
    [Fact(Timeout = Visit.Patience)]
    public async Task LostDesk_IsToldQuietly_AndThePageComesBackAsItWas()
    {
        var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/potato-rolls?kitchen=mountain", address: desk.Address);
        await visit.Circuit();
        var answer = await visit.Page.Locator(".answer").InnerTextAsync();
        var line = visit.Page.Locator("#components-reconnect-modal");
        await Assertions.Expect(line).ToBeHiddenAsync();

        await desk.Cut();

        await Assertions.Expect(line).ToBeVisibleAsync(new() { Timeout = 15_000 });
        Assert.Equal(answer, await visit.Page.Locator(".answer").InnerTextAsync());
        await Assertions.Expect(line.Locator("a, button").First).ToBeVisibleAsync();

        await using var again = await RunningDesk.Open(desk.Port);
        await desk.DisposeAsync();
        await Assertions.Expect(line).ToBeHiddenAsync(new() { Timeout = 60_000 });
        Assert.Equal(answer, await visit.Page.Locator(".answer").InnerTextAsync());
    }

    /// <summary>What was typed before is in the book; what is typed meanwhile comes back with the page, and is written down.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task WhatIsTypedWhileTheDeskIsAway_IsWrittenDownWhenItComesBack()
    {
        var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/tin-loaf/write", address: desk.Address);
        await visit.Circuit();
        await visit.Page.Locator("#make-called").FillAsync("Before the cut");
        await visit.Page.Locator("#make-called").PressAsync("Tab");
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex("title: Before the cut"));
        // A step is open, and something is typed into it and not left when the desk goes.
        await visit.Page.Locator(".edsteps .steprow .ln").First.ClickAsync();
        var cue = visit.Page.Locator(".edsteps textarea.cue, .edsteps textarea[id$='-cue']").First;
        await cue.FillAsync("no dry flour is left");
        await desk.Cut();
        await Assertions.Expect(visit.Page.Locator("#components-reconnect-modal")).ToBeVisibleAsync(new() { Timeout = 15_000 });
        var cell = visit.Page.Locator(".cell[id^='percent-dough-']").Last;
        await cell.FillAsync("2.5");
        await cell.PressAsync("Tab");

        await using var again = await RunningDesk.Open(desk.Port, desk.Folder);
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex(@": 2\.5 %"), new() { Timeout = 60_000 });
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex("title: Before the cut"));
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex("cue: no dry flour is left"));
        await visit.Page.ReloadAsync();
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex(@": 2\.5 %"));
        await desk.DisposeAsync();
    }

    /// <summary>Whoever asks for the page while nobody answers keeps it, with what was typed.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task PageAskedForWhileTheDeskIsAway_StaysUntilItAnswers()
    {
        var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/tin-loaf/write", address: desk.Address);
        await visit.Circuit();
        await desk.Cut();
        var line = visit.Page.Locator("#components-reconnect-modal");
        await Assertions.Expect(line).ToBeVisibleAsync(new() { Timeout = 15_000 });
        var cell = visit.Page.Locator(".cell[id^='percent-dough-']").Last;
        await cell.FillAsync("2.5");
        await cell.PressAsync("Tab");
        await line.Locator("a").ClickAsync();
        await Assertions.Expect(line.Locator("[data-still]")).ToBeVisibleAsync();
        Assert.Equal("2.5", await cell.InputValueAsync());

        await using var again = await RunningDesk.Open(desk.Port, desk.Folder);
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex(@": 2\.5 %"), new() { Timeout = 60_000 });
        await desk.DisposeAsync();
    }

    /// <summary>A choice is made while the desk is away, and a line and a way in an opened step are begun: the choice is written down, what is begun stands in its field.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task WhatIsPickedAndBegunWhileTheDeskIsAway_ComesBack_AlsoInWhatWasOpen()
    {
        var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/tin-loaf/write", address: desk.Address);
        await visit.Circuit();
        var text = visit.Page.Locator("#write-text");
        await visit.Page.Locator(".edsteps .steprow .ln").First.ClickAsync();
        var ways = visit.Page.Locator("[id^='step-'][id$='-other-way']").First;
        await ways.FillAsync("by lamplight");
        await ways.PressAsync("Enter");
        await visit.Page.Locator(".otherways .ln", new() { HasTextString = "By lamplight" }).ClickAsync();
        var hands = visit.Page.Locator("[id*='.variants.by-lamplight-hands']");
        await Assertions.Expect(hands).ToBeVisibleAsync();
        await desk.Cut();
        await Assertions.Expect(visit.Page.Locator("#components-reconnect-modal")).ToBeVisibleAsync(new() { Timeout = 15_000 });
        await visit.Page.Locator(".stepedit select[id$='-where']").First.SelectOptionAsync("fridge");
        await hands.FillAsync("23 min");
        await hands.PressAsync("Tab");
        await visit.Page.Locator("#add-dough").FillAsync("poppy seed 12 g");

        await using var again = await RunningDesk.Open(desk.Port, desk.Folder);
        await Assertions.Expect(text).ToHaveValueAsync(new Regex("where: fridge"), new() { Timeout = 60_000 });
        await Assertions.Expect(text).ToHaveValueAsync(new Regex("hands: 23 min"));
        await Assertions.Expect(visit.Page.Locator("#add-dough")).ToHaveValueAsync("poppy seed 12 g");
        await Assertions.Expect(text).Not.ToHaveValueAsync(new Regex("poppy seed"));
        await Assertions.Expect(visit.Page.Locator("#typed-away")).ToBeHiddenAsync();
        await desk.DisposeAsync();
    }

    /// <summary>Something is typed while the desk is away into a step that is taken out at another desk of the same book: what was typed is shown, to be copied.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task WhatFindsNoFieldAnyMore_IsShown()
    {
        var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/tin-loaf/write", address: desk.Address);
        await visit.Circuit();
        await visit.Page.Locator(".edsteps .steprow .ln").Last.ClickAsync();
        var cue = visit.Page.Locator(".edsteps textarea[id$='-cue']");
        await Assertions.Expect(cue).ToBeVisibleAsync();
        await desk.Cut();
        await Assertions.Expect(visit.Page.Locator("#components-reconnect-modal")).ToBeVisibleAsync(new() { Timeout = 15_000 });
        await cue.FillAsync("it sounds hollow");

        await using (var elsewhere = await RunningDesk.Open(folder: desk.Folder))
        {
            await using var other = await house.Visit("/recipes/tin-loaf/write", address: elsewhere.Address);
            await other.Circuit();
            await other.Page.Locator(".edsteps .steprow .ln").Last.ClickAsync();
            await other.Page.Locator(".stepbtns button").Last.ClickAsync();
            await Assertions.Expect(other.Page.Locator(".stepbtns")).ToHaveCountAsync(0);
        }

        await using var again = await RunningDesk.Open(desk.Port, desk.Folder);
        var told = visit.Page.Locator("#typed-away[role=alert]");
        await Assertions.Expect(told).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await Assertions.Expect(told.Locator("li")).ToHaveTextAsync(["it sounds hollow"]);
        await desk.DisposeAsync();
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task CtrlC_EndsQuickly_WithAPageOpen()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit("/recipes/potato-rolls", address: desk.Address);
        await visit.Circuit();
        var (code, took) = await desk.PressCtrlC();
        Assert.Equal(0, code);
        Assert.InRange(took, TimeSpan.Zero, TimeSpan.FromSeconds(4));
        Assert.Equal("", desk.Messages.Trim());
    }
}
