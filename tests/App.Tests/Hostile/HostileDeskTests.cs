using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Doughwright.App.Tests.Desk.Shelf;

namespace Doughwright.App.Tests.Hostile;

/// <summary>What an author or a stranger wrote into a recipe stays words on every page of the desk.</summary>
public class HostileDeskTests
{
    private const string Name = "stranger";

    public static TheoryData<string> Prose =>
    [
        "<script>alert(1)</script><img src=x onerror=alert(2)>",
        "</title></h1><style>*{display:none}</style>",
        "\" onmouseover=\"alert(1)\" x='",
        "javascript:alert(1) &lt;b&gt; &amp; ]]> @(1 + 1) {{7 * 7}}",
        "zero\u200bwidth \u200djoined soft\u00adhyphen",
    ];

    [Theory]
    [MemberData(nameof(Prose))]
    public async Task HostileWords_StayWords_OnEveryPageOfARecipe(string prose)
    {
        using var scratch = Scratch.WithTheShipped().Put(Name, HostileRecipe.With(prose));
        await using var desk = await LiveDesk.On(scratch.Data);
        var recipe = await desk.Page($"/recipes/{Name}");
        foreach (var address in Addresses(recipe))
        {
            IsHarmless(await desk.Page(address), address);
        }

        Assert.Contains(prose, (await desk.Page("/")).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(prose, (await desk.Page($"/recipes/{Name}/size")).QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(prose, recipe.QuerySelector("h1")!.TextContent);
    }

    /// <summary>A mark that turns the direction of what comes after it is refused with its line, and no page repeats it.</summary>
    [Theory]
    [InlineData('\u202e')]
    [InlineData('\u2066')]
    [InlineData('\u001b')]
    public async Task MarksThatTurnText_AreOnNoPage(char mark)
    {
        using var scratch = Scratch.WithTheShipped().Put(Name, HostileRecipe.With($"over{mark}turned"));
        await using var desk = await LiveDesk.On(scratch.Data);
        foreach (var address in new[] { "/", $"/recipes/{Name}", $"/recipes/{Name}/kitchens" })
        {
            var page = await desk.Page(address);
            IsHarmless(page, address);
            Assert.DoesNotContain(mark, page.DocumentElement.OuterHtml);
        }
    }

    /// <summary>Words of another direction turn nothing beside them.</summary>
    [Fact]
    public async Task WordsOfAnotherDirection_KeepToThemselves()
    {
        const string title = "\u0644\u0641\u0627\u0626\u0641 12 (a)";
        using var scratch = Scratch.WithTheShipped().Put(Name, HostileRecipe.With(title));
        await using var desk = await LiveDesk.On(scratch.Data);
        Assert.Equal("auto", (await desk.Page($"/recipes/{Name}")).QuerySelector("h1")!.GetAttribute("dir"));
        var row = (await desk.Page("/")).QuerySelectorAll(".row h2 bdi").First(name => name.TextContent.Contains(title, StringComparison.Ordinal));
        Assert.Equal(title, row.TextContent);
    }

    private static IEnumerable<string> Addresses(IHtmlDocument recipe) =>
        recipe.QuerySelectorAll<IHtmlAnchorElement>($"a[href^='/recipes/{Name}']")
            .Select(link => link.GetAttribute("href")!)
            // Files that are saved are no pages of the desk; they have tests of their own.
            .Where(address => !address.EndsWith("/kitchen", StringComparison.Ordinal) && !address.Contains("/page/file", StringComparison.Ordinal) && !address.Contains("/picture", StringComparison.Ordinal))
            .Append($"/recipes/{Name}/size?dough=1kg")
            .Append($"/recipes/{Name}/kitchens")
            .Append("/")
            .Append("/kitchens")
            .Append($"/recipes/{Name}?measures=us")
            .Distinct();

    private static void IsHarmless(IHtmlDocument page, string address)
    {
        Assert.All(page.Scripts, script => Assert.True(script.TextContent.Length == 0 && script.Source?.Contains(':', StringComparison.Ordinal) == false, $"{address}: {script.OuterHtml}"));
        Assert.Empty(page.QuerySelectorAll("style, iframe:not([sandbox='']), object, embed, base:not([href='/']), foreignObject, main script, img[src='x']"));
        Assert.DoesNotContain(page.All, part => part.Attributes.Any(said => said.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase)));
        Assert.DoesNotContain(page.All, part => new[] { "href", "src", "action" }.Any(name => part.GetAttribute(name)?.StartsWith("javascript:", StringComparison.OrdinalIgnoreCase) == true));
        Assert.Single(page.QuerySelectorAll("h1"));
    }
}
