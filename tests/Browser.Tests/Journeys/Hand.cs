using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Journeys;

/// <summary>
/// A person's hand on a page, counted: a click, a touch and a key that is no sign of the recipe each count one; to choose from a list counts two, opening it
/// and picking. The recipe's own signs do not count.
/// </summary>
internal sealed class Hand(Visit visit)
{
    public int Interactions { get; private set; }

    private IPage Page => visit.Page;

    public async Task Click(string place)
    {
        Interactions++;
        await Page.Locator(place).ClickAsync();
    }

    /// <summary>Goes to a field if it is not there, types, and ends with a key.</summary>
    public async Task Type(string field, string words, string end = "Tab")
    {
        if (!await Page.Locator(field).EvaluateAsync<bool>("field => field === document.activeElement"))
        {
            await Click(field);
        }

        Interactions++;
        await Page.Locator(field).FillAsync(words);
        await Page.Locator(field).PressAsync(end);
    }

    public async Task Choose(string list, string value)
    {
        Interactions += 2;
        await Page.Locator(list).SelectOptionAsync(value);
    }

    /// <summary>A key without a sign of the recipe.</summary>
    public async Task Press(string key)
    {
        Interactions++;
        await Page.Keyboard.PressAsync(key);
    }

    /// <summary>By the Tab key alone to a place, forward or back as it is seen to lie.</summary>
    public async Task TabTo(string place)
    {
        for (var stops = 0; stops < 200; stops++)
        {
            var way = await Page.EvaluateAsync<string>(
                """
                place => {
                  const [on, to] = [document.activeElement, document.querySelector(place)];
                  if (on?.matches(place)) return '';
                  return to && on && on !== document.body && to.compareDocumentPosition(on) & Node.DOCUMENT_POSITION_FOLLOWING ? 'Shift+Tab' : 'Tab';
                }
                """,
                place);
            if (way.Length == 0)
            {
                return;
            }

            await Press(way);
        }

        Assert.Fail($"No way by the Tab key to {place}.");
    }

    /// <summary>The recipe's own signs, typed where the hand is; what stood there is replaced.</summary>
    public async Task Write(string words, string? end = null)
    {
        await Page.Keyboard.PressAsync("ControlOrMeta+a");
        await Page.Keyboard.TypeAsync(words);
        if (end is not null)
        {
            await Press(end);
        }
    }
}
