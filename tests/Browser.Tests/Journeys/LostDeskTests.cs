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
