using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Doughwright.App.Commands;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Pages;

/// <summary>Notes on the readers' page: each once, with this recipe's values, and as harmless as all else.</summary>
public class PrintedNoteTests
{
    private static string Html(string text, BookNotes? notes)
    {
        var reading = RecipeText.Read(text);
        return System.Text.Encoding.UTF8.GetString(MadePage.Of(reading.Recipe!, text, reading.Findings, null, [], notes, new(Words.Shipped, MeasureSystem.Metric)).Bytes);
    }

    private static IDocument Page(string text, BookNotes? notes) => new HtmlParser().ParseDocument(Html(text, notes));

    private static BookNotes Shipped => BookNotes.Of([.. Directory.EnumerateFiles(House.PathTo("demo", "notes"), "*.md").Select(file => (Path.GetFileNameWithoutExtension(file), File.ReadAllText(file)))]);

    [Fact]
    public void LinkedNotes_StandOnceAfterTheMethod_WithTheValuesOfThisRecipe()
    {
        var page = Page(MadePages.TextOf("potato-rolls").Replace("learn: scalding", "learn: scalding, dough temperature", StringComparison.Ordinal), Shipped);
        Assert.Equal(["Scalding", "Dough temperature", "Reading a proof"], page.QuerySelectorAll(".notes h3").Select(head => head.TextContent));
        Assert.Equal(3, page.QuerySelectorAll(".notes svg").Length);
        Assert.Contains("180 g", page.QuerySelector("#note-1")!.TextContent.Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.Contains("springs back slowly", page.QuerySelector("#note-3")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("not worked out here", page.QuerySelector(".notes")!.TextContent, StringComparison.Ordinal);
        var main = page.QuerySelector("main")!.InnerHtml;
        Assert.True(main.IndexOf("class=\"sec how\"", StringComparison.Ordinal) < main.IndexOf("class=\"sec notes\"", StringComparison.Ordinal));
        // Each step says where, and the place is there.
        var links = page.QuerySelectorAll(".steps .why-note a").Select(link => link.GetAttribute("href")).ToArray();
        Assert.Equal(["#note-1", "#note-2", "#note-2", "#note-3"], links.Order(StringComparer.Ordinal));
        Assert.All(links, link => Assert.NotNull(page.QuerySelector(link!)));
    }

    [Fact]
    public void ATextOfNoBook_IsThePageItWas() => Assert.Empty(Page(MadePages.TextOf("potato-rolls"), null).QuerySelectorAll(".notes, .why-note"));

    [Fact]
    public void HostileNote_IsText()
    {
        const string Harm = "# </h3><script>alert(1)</script>\n\n<img src=x onerror=alert(1)> \"'> &amp; [<b>x</b>] \u202eturned [this cue]\n\n[picture: rise]\n";
        var html = Html(MadePages.TextOf("potato-rolls").Replace("cue: springs back slowly, ", "cue: <i>slowly</i>, ", StringComparison.Ordinal), BookNotes.Of([("reading-a-proof", Harm)]));
        Assert.DoesNotContain("<script>alert", html, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202e', html);
        var page = new HtmlParser().ParseDocument(html);
        Assert.Empty(page.QuerySelectorAll(".notes img, .notes i, .notes script"));
        Assert.Contains("<i>slowly</i>", page.QuerySelector(".notes")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void NamesOfPicturesInNotes_AreUniqueOnThePage()
    {
        var page = Page(MadePages.TextOf("potato-rolls"), BookNotes.Of([
            .. new[] { "scalding", "dough-temperature", "reading-a-proof" }.Select(name => (name, "# N\n\n[picture: strip]\n\n[picture: rise]\n\n[picture: heat]\n\n[picture: balance]\n"))]));
        var ids = page.QuerySelectorAll("[id]").Select(element => element.Id).ToArray();
        Assert.Equal(ids.Distinct().Order(StringComparer.Ordinal), ids.Order(StringComparer.Ordinal));
    }
}
