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
        await visit.Page.Locator("#components-reconnect-modal :is(a, button)").First.ClickAsync();
        await visit.Page.WaitForLoadStateAsync(LoadState.Load);
        await Assertions.Expect(line).ToBeHiddenAsync();
        Assert.Equal(answer, await visit.Page.Locator(".answer").InnerTextAsync());
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
