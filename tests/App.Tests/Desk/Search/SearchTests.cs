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

    [Theory]
    [InlineData("doughwright")]
    [InlineData("measured")]
    [InlineData("altitude")]
    public void KeysOfTheForm_AreNotFound(string words)
    {
        var all = scratch.Folder.RecipeTexts.Names();
        Assert.Contains(all, recipe => scratch.Text(recipe).Contains(words, StringComparison.Ordinal));
        Assert.DoesNotContain(Finder.Find(scratch.Folder, words), found => found.Name == "potato-rolls");
    }

    [Theory]
    [InlineData("instant yeast")]
    [InlineData("harbour rye")]
    [InlineData("fork")]
    [InlineData("by the machine")]
    [InlineData("ropewalk bowl")]
    [InlineData("cover: the lid")]
    public void KeysThatAreNames_AndWordsOfProse_AreFound(string words)
    {
        scratch.Put("crossing", """
            doughwright: 1
            title: Crossing
            home:
              air: 21 C
              vessels:
                ropewalk bowl: steel bowl, 500 g
            own:
              harbour rye:
                counts as: flour
                protein: 9 g
            parts:
              dough:
                harbour rye: 500 g
                instant yeast: 4 g
            steps:
              mix:
                of: dough
                words: |
                  cover: the lid goes on last
                variants:
                  by the machine:
                    hands: 4 min
            without:
              fork: a spoon will do
            """);
        Assert.Contains(Finder.Find(scratch.Folder, words), found => found.Name == "crossing");
        Assert.DoesNotContain(Finder.Find(scratch.Folder, "protein"), found => found.Name == "crossing");
        Assert.DoesNotContain(Finder.Find(scratch.Folder, "hands"), found => found.Name == "crossing");
    }

    [Theory]
    [InlineData("puree brulee", "Purée brûlée")]
    [InlineData("PURÉE", "a puree of it")]
    [InlineData("puree", "pure\u0301e")]
    [InlineData("strasse", "Straße")]
    public void Accents_MakeNoDifference(string words, string written)
    {
        scratch.Put("crossing", $"doughwright: 1\ntitle: Crossing\nwords: {written}\n");
        Assert.Contains(Finder.Find(scratch.Folder, words), found => found.Name == "crossing");
    }

    [Theory]
    [InlineData("came out right")]
    [InlineData("soft dozens")]
    [InlineData("regatta")]
    [InlineData("lighter crumb")]
    [InlineData("thirty minutes")]
    [InlineData("second printing")]
    public void WhatIsSaidOfARecipe_AndOfItsStates_IsFound(string words)
    {
        Assert.DoesNotContain(Finder.Find(scratch.Folder, words), found => found.Name == "potato-rolls");
        var (book, sort) = (scratch.Folder.Book, PaperSort.Recipe);
        Assert.True(book.Said.Say(sort, "potato-rolls", Saying.Standing, "right"));
        Assert.True(book.Said.Say(sort, "potato-rolls", Saying.Family, "soft dozens"));
        var kept = book.Kept.Keep(sort, "potato-rolls", book.Papers.Find(sort, "potato-rolls")!.State, "for the regatta", "a lighter crumb", published: true)!;
        Assert.True(book.Corrections.Add(kept.Id, "it takes thirty minutes", "second printing"));
        var found = Assert.Single(Finder.Find(scratch.Folder, words), found => found.Name == "potato-rolls");
        Assert.NotEmpty(found.Lines);
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
