using Deque.AxeCore.Commons;
using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Look;

/// <summary>axe finds nothing at any width, light and dark, with everything opened; what it leaves open is lettering of pictures, which has its own test.</summary>
[Trait("Category", "Slow")]
public class AxeTests(House house)
{
    private const string Contrast = "color-contrast";

    /// <summary>
    /// Where axe cannot tell (a rule drawn as a gradient, a mark over a letter): text of a picture has its own test; other text is readable when it
    /// has one of the colours of text on one of the grounds, and no picture under it: all pairs of those are readable (TokenTests).
    /// </summary>
    private const string ByTokens = """
        target => {
          const part = document.querySelector(target);
          if (!part) return false;
          if (part.closest('svg')) return true;
          const probe = document.body.appendChild(document.createElement('span'));
          const token = name => { probe.style.color = getComputedStyle(document.documentElement).getPropertyValue(name).trim(); return getComputedStyle(probe).color; };
          const text = ['--ink', '--ink-2', '--ink-3', '--hand'].map(token);
          const grounds = ['--paper', '--sheet', '--hand-tint'].map(token);
          probe.remove();
          let under = part;
          while (under && getComputedStyle(under).backgroundColor === 'rgba(0, 0, 0, 0)') {
            if (getComputedStyle(under).backgroundImage.includes('url(')) return false;
            under = under.parentElement;
          }
          return text.includes(getComputedStyle(part).color) && (under === null || grounds.includes(getComputedStyle(under).backgroundColor));
        }
        """;

    /// <summary>What is in a frame is a page by itself: it runs no script, axe's neither, and is looked at as a file (<see cref="Pages.Readers"/>).</summary>
    private static readonly AxeRunOptions Rules = new()
    {
        RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
        Iframes = false,
    };

    /// <summary>The one rule for which it matters whether a page is light or dark.</summary>
    private static readonly AxeRunOptions Colours = new() { RunOnly = new() { Type = "rule", Values = [Contrast] }, Iframes = false };

    [Theory(Timeout = Visit.Patience)]
    [ClassData(typeof(EveryPage))]
    public async Task Axe_FindsNothing(string path)
    {
        var found = new List<string>();
        await foreach (var (visit, view) in Pages.Looks(house, path))
        {
            var result = await visit.Axe(view.Dark ? Colours : Rules);
            found.AddRange(result.Violations.SelectMany(rule => rule.Nodes, (rule, node) => $"{view}: {rule.Id}: {node.Html}"));
            foreach (var node in result.Incomplete.Where(rule => rule.Id == Contrast).SelectMany(rule => rule.Nodes))
            {
                if (!await visit.Page.EvaluateAsync<bool>(ByTokens, node.Target.ToString()))
                {
                    found.Add($"{view}: contrast not known: {node.Html}");
                }
            }

            Assert.True(result.Passes.Length + result.Violations.Length + result.Incomplete.Length >= (view.Dark ? 1 : 10), $"{view}: axe looked at next to nothing.");
        }

        Assert.True(found.Count == 0, string.Join('\n', found));
    }
}
