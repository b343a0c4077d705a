using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Look;

/// <summary>Without a script a page is complete: everything is there when it arrives.</summary>
public class ScriptOffTests(House house)
{
    [Theory(Timeout = Visit.Patience)]
    [ClassData(typeof(EveryPage))]
    public async Task Page_SaysTheSame_WithoutScript(string path)
    {
        await using var with = await house.Visit(path);
        if (Pages.HasCircuit(path))
        {
            // A page without script is complete when it arrives: with what is known by then. What takes longer is known to both once it is computed.
            await with.Settled();
        }

        await using var without = await house.Visit(path, new(Script: false));
        // What stands in for a script is there only without one.
        await without.Page.EvaluateAsync("() => document.querySelectorAll('noscript').forEach(part => part.remove())");
        foreach (var part in new[] { "h1", "main" })
        {
            var said = await without.Page.Locator(part).First.InnerTextAsync();
            Assert.False(string.IsNullOrWhiteSpace(said));
            Assert.Equal(await with.Page.Locator(part).First.InnerTextAsync(), said);
        }

        Assert.Equal(await with.Page.Locator("svg").CountAsync(), await without.Page.Locator("svg").CountAsync());
    }

    [Theory(Timeout = Visit.Patience)]
    [ClassData(typeof(EveryPage))]
    public async Task Page_IsOutlined_ByOneHeadOfThePage_AndHeadsInOrder(string path)
    {
        await using var visit = await house.Visit(path, new(Script: false));
        var levels = await visit.Page.EvaluateAsync<int[]>("() => [...document.querySelectorAll('h1, h2, h3, h4, h5, h6')].map(head => Number(head.tagName[1]))");
        Assert.Equal(1, levels[0]);
        Assert.Single(levels, level => level == 1);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.InRange(pair.Second, 1, pair.First + 1));
        Assert.False(string.IsNullOrWhiteSpace(await visit.Page.TitleAsync()));
    }
}
