using System.Diagnostics;
using System.Net;
using AngleSharp.Html.Dom;
using Doughwright.App.Desk.Search;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Book.Papers;

namespace Doughwright.App.Tests.Desk.Search;

/// <summary>Everything that is written in the book is found again.</summary>
public sealed class SearchTests(ITestOutputHelper output) : IDisposable
{
    private readonly Scratch scratch = Scratch.WithTheShipped();

    [Theory]
    [InlineData("scald potato", "potato-rolls")]
    [InlineData("POTATO", "potato-rolls")]
    [InlineData("night-boat", "night-boat-rye")]
    [InlineData("potato rolls", "potato-rolls")]
    [InlineData("kestrel", "mountain")]
    public void PaperWithEveryWord_IsFound(string words, string name) => Assert.Contains(Finder.Find(scratch.Folder, words), found => found.Name == name);

    [Theory]
    [InlineData("26 °C")]
    [InlineData("26\u00a0°c")]
    [InlineData("26 C")]
    public void Warmth_IsFound_HoweverItIsTyped(string words) =>
        Assert.Equal(Finder.Find(scratch.Folder, "26 c").Select(found => found.Name), Finder.Find(scratch.Folder, words).Select(found => found.Name));

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("scald zzzz")]
    public void NothingThatHasAllWords_IsNothing(string words) => Assert.Empty(Finder.Find(scratch.Folder, words));

    [Fact]
    public void WordsOfTheTitle_ComeFirst_AndLinesAreTheRecipesOwn()
    {
        var found = Finder.Find(scratch.Folder, "rye")[0];
        Assert.Equal("night-boat-rye", found.Name);
        Assert.All(found.Lines, line => Assert.Contains(line, scratch.Text("night-boat-rye"), StringComparison.Ordinal));
        Assert.All(found.Lines, line => Assert.Contains("rye", line, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void WhatWasTakenAway_IsNotFound()
    {
        Assert.True(scratch.Folder.RecipeTexts.TakeAway("night-boat-rye"));
        Assert.DoesNotContain(Finder.Find(scratch.Folder, "rye"), found => found.Name == "night-boat-rye");
    }

    [Fact]
    public async Task Page_LeadsToWhatIsFound_AndSaysWhenThereIsNothing()
    {
        await using var desk = await LiveDesk.On(scratch.Data);
        var page = await desk.Page("/find?words=scald%20potato&measures=us");
        Assert.Contains(page.QuerySelectorAll(".found h2 a"), link => link.GetAttribute("href")!.StartsWith("/recipes/potato-rolls", StringComparison.Ordinal));
        Assert.Equal("scald potato", ((IHtmlInputElement)page.QuerySelector("#words")!).Value);
        Assert.Contains("“zzzz”", (await desk.Page("/find?words=zzzz")).QuerySelector("main [role=status]")!.TextContent, StringComparison.Ordinal);
        Assert.Null((await desk.Page("/find")).QuerySelector("main [role=status]"));
        using var answer = await desk.Get("/find?words=" + Uri.EscapeDataString("<script>alert(1)</script>"));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.DoesNotContain("<script>alert", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    /// <summary>Fifty milliseconds are asked of a thousand recipes; the time is printed, and ten times as long fails.</summary>
    [Fact]
    [Trait("Category", "Slow")]
    public void ThousandRecipes_AreSearchedWhileOneLooks()
    {
        var text = scratch.Text("potato-rolls");
        scratch.Folder.Book.Papers.LayAll(Enumerable.Range(0, 1000).Select(i => (PaperSort.Recipe, $"copy-{i}", text + $"# copy {i}\n")), "laid by a test");
        _ = Finder.Find(scratch.Folder, "scald");
        var watch = Stopwatch.StartNew();
        Assert.Equal("copy-777", Assert.Single(Finder.Find(scratch.Folder, "scald copy 777")).Name);
        output.WriteLine($"1,000 recipes of {text.Length} letters in {watch.Elapsed.TotalMilliseconds:F0} ms");
        Assert.InRange(watch.Elapsed.TotalMilliseconds, 0, 500);
    }

    public void Dispose() => scratch.Dispose();
}
