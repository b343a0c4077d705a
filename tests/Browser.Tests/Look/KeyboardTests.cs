using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Look;

/// <summary>The keyboard reaches everything, in sight.</summary>
[Trait("Category", "Slow")]
public class KeyboardTests(House house)
{
    /// <summary>Where the focus is: what it is on, and what is wrong with that.</summary>
    private const string Look = """
        () => {
          const on = document.activeElement;
          if (!on || on === document.body) return null;
          on.dataset.reached = 'yes';
          const name = `${on.tagName.toLowerCase()} "${(on.textContent.trim() || on.value || on.getAttribute('aria-label') || '').slice(0, 40)}"`;
          const faults = [];
          const target = on.type === 'radio' || on.type === 'checkbox' ? on.closest('label') ?? on.labels?.[0] ?? on : on;
          // What is taller than the window is seen where it lies in it.
          const seen = [...target.getClientRects()].some(box => [[0.5, 0.5], [0.1, 0.5], [0.9, 0.5]].some(([x, y]) => {
            const [top, bottom] = [Math.max(box.top, 0), Math.min(box.bottom, innerHeight)];
            const hit = top < bottom && document.elementFromPoint(box.left + box.width * x, top + (bottom - top) * y);
            return hit && target.contains(hit);
          }));
          if (!seen) faults.push('hidden or out of the window');
          const marked = part => { const s = getComputedStyle(part); return s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2 || s.boxShadow !== 'none'; };
          // In a frame, what has the focus is marked by the page inside, which is looked at by itself.
          if (on.tagName !== 'IFRAME' && !marked(on) && !marked(target)) faults.push('focus cannot be seen');
          return { name, faults };
        }
        """;

    /// <summary>The larder as a whole is a list of four hundred names.</summary>
    private const int Most = 700;

    private const string NotReached = """
        () => {
          const groups = new Set();
          return [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')]
            .filter(part => !part.disabled && part.type !== 'hidden' && part.checkVisibility({ visibilityProperty: true }) && !part.closest('dialog:not([open])'))
            .filter(part => part.type !== 'radio' || !document.querySelector(`input[type=radio][name="${part.name}"][data-reached]`))
            .filter(part => !part.dataset.reached)
            .map(part => part.outerHTML.slice(0, 120));
        }
        """;

    [Theory(Timeout = Visit.Patience)]
    [ClassData(typeof(EveryPage))]
    public async Task Focus_ReachesEverything_AndIsNeverHidden(string path)
    {
        var faults = new List<string>();
        foreach (var width in View.Widths)
        {
            await using var visit = await house.Visit(path, new(width));
            if (Pages.HasCircuit(path))
            {
                await visit.Settled();
            }

            await visit.OpenAll();
            var stops = 0;
            for (; stops < Most; stops++)
            {
                await visit.Page.Keyboard.PressAsync("Tab");
                if (await visit.Ask<Stop?>(Look) is not { } stop)
                {
                    break;
                }

                faults.AddRange(stop.Faults.Select(fault => $"{width} px: {stop.Name}: {fault}"));
            }

            // A page for readers has next to nothing to press: its tables are what a key must reach.
            Assert.InRange(stops, path.StartsWith('/') ? 3 : 1, Most - 1);
            faults.AddRange((await visit.Page.EvaluateAsync<string[]>(NotReached)).Select(part => $"{width} px: not reached: {part}"));
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>One stop of the focus.</summary>
    private sealed record Stop(string Name, IReadOnlyList<string> Faults);
}
