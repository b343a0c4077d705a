using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Journeys;

/// <summary>What is typed is worked out and stored while the hand is still in its field, and stays typed however its page is left.</summary>
public class RestingJourneys(House house)
{
    private const string Sheet = "/recipes/tin-loaf/write";

    [Fact(Timeout = Visit.Patience)]
    public async Task TypedWeight_ShowsWhatFollows_BeforeItsFieldIsLeft()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Sheet, address: desk.Address);
        await visit.Circuit();
        await visit.Page.Locator("#weight-dough-strong-white-flour").FocusAsync();
        await visit.Page.Keyboard.PressAsync("ControlOrMeta+a");
        await visit.Page.Keyboard.TypeAsync("400");
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex("strong white flour: 400 g"));
        await visit.Page.Keyboard.PressAsync("Backspace");
        await visit.Page.Keyboard.PressAsync("Backspace");
        await visit.Page.Keyboard.TypeAsync("50");
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex("strong white flour: 450 g"));
        await Assertions.Expect(visit.Page.Locator("#weight-dough-strong-white-flour")).ToBeFocusedAsync();
        await visit.Page.ReloadAsync();
        await Assertions.Expect(visit.Page.Locator("#weight-dough-strong-white-flour")).ToHaveValueAsync("450");
        Assert.Empty(visit.Troubles);
    }

    /// <summary>An emptied field is one that is being typed into; only when it is left like that, that is said.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task EmptiedWeight_IsNoAnswerYet()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Sheet, address: desk.Address);
        await visit.Circuit();
        var weight = visit.Page.Locator("#weight-dough-strong-white-flour");
        await weight.FocusAsync();
        await visit.Page.Keyboard.PressAsync("ControlOrMeta+a");
        await visit.Page.Keyboard.PressAsync("Delete");
        await visit.Page.WaitForTimeoutAsync(1500);
        await Assertions.Expect(weight).Not.ToHaveAttributeAsync("aria-invalid", "true");
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(weight).ToHaveAttributeAsync("aria-invalid", "true");
    }

    /// <summary>A page that is loaded again by hand, while words are typed and a line is begun.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task PageLoadedAgain_HasWhatWasJustTyped()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Sheet, address: desk.Address);
        await visit.Circuit();
        await visit.Page.Locator("#add-dough").FocusAsync();
        await visit.Page.Keyboard.TypeAsync("poppy seed 12");
        await visit.Page.Locator(".edsteps .steprow .ln").First.ClickAsync();
        await visit.Page.Locator(".edsteps textarea.cue").First.FocusAsync();
        await visit.Page.Keyboard.PressAsync("ControlOrMeta+a");
        await visit.Page.Keyboard.TypeAsync("no dry flour is left");
        await visit.Page.ReloadAsync();
        await Assertions.Expect(visit.Page.Locator("#write-text")).ToHaveValueAsync(new Regex("cue: no dry flour is left"));
        await Assertions.Expect(visit.Page.Locator("#add-dough")).ToHaveValueAsync("poppy seed 12");
        await Assertions.Expect(visit.Page.Locator("#write-text")).Not.ToHaveValueAsync(new Regex("poppy seed"));
        Assert.Empty(visit.Troubles);
    }

    /// <summary>A list is pasted from a page: every line goes in by itself, and the first that is not understood stays with all behind it.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task PastedList_GoesInLineByLine()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Sheet, address: desk.Address);
        await visit.Circuit();
        var add = visit.Page.Locator("#add-dough");
        await add.EvaluateAsync("""
            field => {
              field.focus();
              const list = new DataTransfer();
              list.setData('text', 'poppy seed 12 g\r\n\r\nsesame seed eight\nsunflower seed 5 g\n');
              field.dispatchEvent(new ClipboardEvent('paste', { clipboardData: list, bubbles: true, cancelable: true }));
            }
            """);
        await Assertions.Expect(add).ToHaveValueAsync("poppy seed 12 g ⏎ sesame seed eight ⏎ sunflower seed 5 g");
        await add.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator("#weight-dough-poppy-seed")).ToHaveValueAsync("12");
        await Assertions.Expect(add).ToHaveValueAsync("sesame seed eight ⏎ sunflower seed 5 g");
        await Assertions.Expect(visit.Page.Locator("#add-dough-why")).ToBeVisibleAsync();
        await add.FillAsync("sesame seed 8 g ⏎ sunflower seed 5 g");
        await add.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator("#weight-dough-sunflower-seed")).ToHaveValueAsync("5");
        await Assertions.Expect(visit.Page.Locator("#weight-dough-sesame-seed")).ToHaveValueAsync("8");
        await Assertions.Expect(add).ToHaveValueAsync("");
        await Assertions.Expect(visit.Page.Locator("#add-dough-why")).ToHaveCountAsync(0);
        Assert.Empty(visit.Troubles);
    }

    /// <summary>Why a line was refused is said until it is taken, or given up.</summary>
    [Fact(Timeout = Visit.Patience)]
    public async Task RefusedLine_ThatIsGivenUp_IsNotToldAnyMore()
    {
        await using var desk = await RunningDesk.Open();
        await using var visit = await house.Visit(Sheet, address: desk.Address);
        await visit.Circuit();
        var add = visit.Page.Locator("#add-dough");
        await add.FocusAsync();
        await visit.Page.Keyboard.TypeAsync("pinch of nutmeg");
        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator("#add-dough-why")).ToBeVisibleAsync();
        await Assertions.Expect(add).ToHaveValueAsync("pinch of nutmeg");
        await visit.Page.Keyboard.PressAsync("ControlOrMeta+a");
        await visit.Page.Keyboard.PressAsync("Delete");
        await Assertions.Expect(visit.Page.Locator("#add-dough-why")).ToHaveCountAsync(0);
    }
}
