using System.Text;
using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Look;

/// <summary>Teaching notes that a recipe's steps link to are printed with its page for readers, with this recipe's values, on not many more sheets.</summary>
[Trait("Category", "Slow")]
public partial class PrintedNotesTests(House house)
{
    private const string NotesOnPaper = "() => [...document.querySelectorAll('.notes .teach')].filter(note => note.checkVisibility() && note.getBoundingClientRect().height > 40).map(note => note.innerText)";

    private const string Pictures = "() => [...document.querySelectorAll('.notes svg')].filter(picture => picture.checkVisibility() && picture.getBoundingClientRect().width > 100).length";

    /// <summary>What a note says of its recipe, from the recipe's text: how long the final proof was measured to be or is about to be, what is seen when it is done, and what flour and liquid of the scald weigh.</summary>
    public static TheoryData<string, string[], string[]> Linked => new()
    {
        { "potato-rolls", ["Scalding", "Dough temperature", "Reading a proof"], ["180 g", "after about 1 h 10 min", "springs back slowly, trembles when the tray is shaken"] },
        { "tin-loaf", ["Scalding", "Dough temperature", "Reading a proof"], ["180 g", "after about 55 min", "a finger's width over the rim"] },
        { "night-boat-rye", ["Reading a proof"], [] },
    };

    [Theory(Timeout = Visit.Patience)]
    [MemberData(nameof(Linked))]
    public async Task Notes_ArePrinted_WithTheRecipesValues_Whole(string recipe, string[] titles, string[] values)
    {
        await using var visit = await house.Visit($"/recipes/{recipe}/page/file", new(PrintTests.PrintedWidth));
        await visit.Page.EmulateMediaAsync(new() { Media = Media.Print });
        var notes = (await visit.Page.EvaluateAsync<string[]>(NotesOnPaper)).Select(note => note.Replace('\u00a0', ' ').Replace('’', '\'')).ToArray();
        Assert.Equal(titles, notes.Select(note => note.Split('\n')[0]));
        Assert.All(values, value => Assert.Contains(notes, note => note.Contains(value, StringComparison.Ordinal)));
        Assert.All(notes, note => Assert.DoesNotContain("not worked out here", note, StringComparison.Ordinal));
        Assert.All(notes, note => Assert.DoesNotMatch(@"\[[a-z]", note));
        Assert.Equal(titles.Length, await visit.Page.EvaluateAsync<int>(Pictures));
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>(PrintTests.Cut));
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>(ReaderPrintTests.Small));
        Assert.Empty(visit.Troubles);
    }

    /// <summary>The recipe takes two sheets at most without them; three notes, each with its picture, are one more.</summary>
    [Theory(Timeout = Visit.Patience)]
    [InlineData("potato-rolls", "A4")]
    [InlineData("potato-rolls", "Letter")]
    [InlineData("tin-loaf", "A4")]
    [InlineData("tin-loaf", "Letter")]
    [InlineData("night-boat-rye", "A4")]
    public async Task PageWithItsNotes_TakesOneSheetMoreAtMost_AndTheyAreOnIt(string recipe, string paper)
    {
        await using var visit = await house.Visit($"/recipes/{recipe}/page/file");
        var titles = await visit.Page.Locator(".notes h3").AllTextContentsAsync();
        Assert.NotEmpty(titles);
        var with = await Printed(visit, paper);
        // The heads of what is printed stand in the outline of the file.
        Assert.All(titles, title => Assert.Contains(title, Outline().Matches(with).Select(match => Plain(match.Groups[1].Value))));
        await visit.Page.EvaluateAsync("() => document.querySelector('.notes').remove()");
        var without = await Printed(visit, paper);
        Assert.All(titles, title => Assert.DoesNotContain(title, Outline().Matches(without).Select(match => Plain(match.Groups[1].Value))));
        Assert.InRange(Sheet().Count(without), 1, 2);
        Assert.InRange(Sheet().Count(with), Sheet().Count(without), Sheet().Count(without) + 1);
    }

    private static async Task<string> Printed(Visit visit, string paper) =>
        Encoding.Latin1.GetString(await visit.Page.PdfAsync(new() { Format = paper, PreferCSSPageSize = true, Outline = true, Tagged = true }));

    private static string Plain(string title) => title.Replace("\\", "", StringComparison.Ordinal);

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex Sheet();

    [GeneratedRegex(@"/Title\s*\(((?:[^()\\]|\\.)*)\)")]
    private static partial Regex Outline();
}
