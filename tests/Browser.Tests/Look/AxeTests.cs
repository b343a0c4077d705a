using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Look;

/// <summary>axe finds nothing at any width, light and dark, with everything opened; what it leaves open is lettering of pictures, which has its own test.</summary>
[Trait("Category", "Slow")]
public class AxeTests(House house)
{
    private const string Contrast = "color-contrast";

    private static readonly AxeRunOptions Rules = new()
    {
        RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
    };

    [Theory]
    [ClassData(typeof(EveryPage))]
    public async Task Axe_FindsNothing(string path)
    {
        var found = new List<string>();
        foreach (var view in from width in View.Widths from dark in new[] { false, true } select new View(width, dark))
        {
            await using var visit = await house.Visit(path, view);
            await visit.OpenAll();
            var result = await visit.Page.RunAxe(Rules);
            found.AddRange(result.Violations.SelectMany(rule => rule.Nodes, (rule, node) => $"{view}: {rule.Id}: {node.Html}"));
            foreach (var node in result.Incomplete.Where(rule => rule.Id == Contrast).SelectMany(rule => rule.Nodes))
            {
                if (!await visit.Page.EvaluateAsync<bool>("target => document.querySelector(target)?.closest('svg') !== null", node.Target.ToString()))
                {
                    found.Add($"{view}: contrast not known: {node.Html}");
                }
            }

            Assert.True(result.Passes.Length > 10, $"{view}: axe looked at next to nothing.");
        }

        Assert.Empty(found);
    }
}
