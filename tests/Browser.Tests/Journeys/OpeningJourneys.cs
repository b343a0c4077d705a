using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Journeys;

/// <summary>A recipe gets onto the shelf, and what it says stays text.</summary>
public class OpeningJourneys(House house)
{
    /// <summary>Title of a recipe that tries to be more than text.</summary>
    private const string Hostile = "<script>window.ran = true</script><img src=x onerror='window.ran = true'> & \"rolls\"";

    [Fact(Timeout = Visit.Patience)]
    public async Task PastedRecipe_LiesOnTheShelf_AndWhatItSaysIsHarmless()
    {
        await using var desk = await RunningDesk.Open();
        var text = await File.ReadAllTextAsync(ReaderPages.TextOf("potato-rolls"), TestContext.Current.CancellationToken);
        var hostile = Regex.Replace(text, "(?m)^title: .*$", $"title: \"{Hostile.Replace("\"", "\\\"", StringComparison.Ordinal)}\"");
        Assert.NotEqual(text, hostile);
        await using var visit = await house.Visit("/", address: desk.Address);
        var before = await visit.Page.Locator("ol.rows > li").CountAsync();
        await visit.Go("/open");
        await visit.Page.Locator("textarea").FillAsync(hostile);
        await visit.Page.Locator("form button[type=submit]").ClickAsync();
        await visit.Page.WaitForURLAsync(new Regex("/recipes/"));
        await Assertions.Expect(visit.Page.Locator("h1")).ToHaveTextAsync(Hostile);
        await visit.Circuit();
        await visit.Go("/");
        await Assertions.Expect(visit.Page.GetByText(Hostile).First).ToBeVisibleAsync();
        Assert.False(await visit.Page.EvaluateAsync<bool>("() => 'ran' in window"));
        Assert.Empty(visit.Troubles);
        await Assertions.Expect(visit.Page.Locator("ol.rows > li")).ToHaveCountAsync(before + 1);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task TextThatIsNotUnderstood_StaysInTheField_WithEveryReason()
    {
        await using var visit = await house.Visit("/open");
        const string Typed = "doughwright: 1\ntitle: Half a recipe\nflour 500 g\n";
        await visit.Page.Locator("textarea").FillAsync(Typed);
        await visit.Page.Locator("form button[type=submit]").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("main")).ToContainTextAsync("flour 500 g");
        await Assertions.Expect(visit.Page.Locator(".finds li").First).ToBeVisibleAsync();
        Assert.Equal(Typed.Trim(), (await visit.Page.Locator("textarea").InputValueAsync()).Trim());
        Assert.Contains("/open", visit.Page.Url, StringComparison.Ordinal);
    }
}
