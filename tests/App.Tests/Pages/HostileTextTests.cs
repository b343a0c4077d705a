using System.Text.RegularExpressions;
using Doughwright.Publishing.Pages.Markup;

namespace Doughwright.App.Tests.Pages;

/// <summary>Prose that means harm comes out as the text that was typed.</summary>
public class HostileTextTests
{
    [Fact]
    public void Page_OfHostileProse_HasNoElementOfTheAuthor()
    {
        var (sound, hostile) = (MadePages.Named("potato-rolls").Document, MadePages.Named(MadePages.Hostile).Document);
        string[] names = [.. hostile.All.Select(part => part.LocalName).Distinct().Except(sound.All.Select(part => part.LocalName))];
        Assert.Empty(names);
        Assert.Single(hostile.QuerySelectorAll("script"));
        Assert.Single(hostile.QuerySelectorAll("style"));
        Assert.Equal("Potato rolls </title><script>alert(1)</script>", hostile.Title);
        Assert.Equal(hostile.Title, hostile.QuerySelector("h1")!.TextContent);
        Assert.Contains("</style><script>alert(2)</script> & \"quoted\" 'so'.", hostile.QuerySelector("p.lead")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(hostile.QuerySelectorAll("a[href*=javascript]"));
    }

    [Theory]
    [MemberData(nameof(PageTests.Pages), MemberType = typeof(PageTests))]
    public void Page_HasNothingUnseenThatTurnsText(string name)
    {
        var page = MadePages.Named(name);
        Assert.DoesNotMatch("[\u202a-\u202e\u2066-\u2069]", page.Html);
        // Nor as an escape, in the structured data.
        Assert.DoesNotMatch(new Regex(@"\\u20(2[a-e]|6[6-9])", RegexOptions.IgnoreCase), page.Html);
    }

    /// <summary>A text with such marks is refused where it is read; a recipe may come another way.</summary>
    [Fact]
    public void MarksThatTurnText_AreLeftOut_InMarkupPicturesAndData()
    {
        const string turned = "turned \u202eover\u202c \u2067again\u2069";
        var page = MadePages.Of(MadePages.TextOf("potato-rolls"), change: recipe => recipe with
        {
            Title = turned,
            Words = turned,
            Steps = [.. recipe.Steps.Select(step => step with { Name = turned, Cue = turned, Words = turned })],
            Components = [.. recipe.Components.Select(part => part with { Name = turned })],
        });
        Assert.Equal("turned over again", page.Document.QuerySelector("h1")!.TextContent);
        Assert.DoesNotMatch("[\u202a-\u202e\u2066-\u2069]", page.Html);
        Assert.DoesNotMatch(new Regex(@"\\u20(2[a-e]|6[6-9])", RegexOptions.IgnoreCase), page.Html);
    }

    [Fact]
    public void Author_IsKeptInItsOwnDirection()
    {
        var page = MadePages.Named("potato-rolls").Document;
        Assert.All(page.QuerySelectorAll("h1, p.lead, .steps h3, .ing tbody th, .fine li"), part => Assert.True(part.GetAttribute("dir") == "auto" || part.QuerySelector("bdi") is not null, part.OuterHtml));
    }

    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("a\u202eb\u202cc", "abc")]
    [InlineData("a\u2066b\u2069", "ab")]
    [InlineData("a\0b\u0007c", "abc")]
    [InlineData("line\nbreak", "line\nbreak")]
    [InlineData("שלום \u200f", "שלום \u200f")]
    [InlineData("é 🍞", "é 🍞")]
    [InlineData("\ufeffx\ufffe", "x")]
    public void Clean_LeavesOutOnlyWhatNobodySees(string text, string clean) => Assert.Equal(clean, Harmless.Clean(text));

    [Fact]
    public void HalfACharacter_BecomesTheMarkOfOne() => Assert.Equal("\ufffd", Harmless.Clean("\ud83c"));

    [Theory]
    [InlineData("<b>", "&lt;b&gt;")]
    [InlineData("\"'&", "&quot;&#39;&amp;")]
    [InlineData("80\u00a0g", "80&#160;g")]
    public void Escape_LeavesNoMark(string text, string escaped) => Assert.Equal(escaped, Html.Escape(text));

    [Fact]
    public void OpenElement_IsNoPage()
    {
        var html = new Html();
        html.In("p");
        Assert.Throws<InvalidOperationException>(html.ToString);
    }
}
