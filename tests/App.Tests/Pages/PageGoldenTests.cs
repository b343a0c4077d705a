using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Dom;

namespace Doughwright.App.Tests.Pages;

/// <summary>The words of a page, block by block, as they were approved. Pictures have goldens of their own.</summary>
public class PageGoldenTests
{
    [Theory]
    [MemberData(nameof(PageTests.Pages), MemberType = typeof(PageTests))]
    public void Page_SaysWhatWasApproved(string name)
    {
        var text = new StringBuilder();
        foreach (var part in MadePages.Named(name).Document.QuerySelectorAll("main h1, main h2, main h3, main p, main figcaption, main tr, main li, main dt, main dd").Where(IsBlock))
        {
            var cells = part.LocalName == "tr" ? part.Children : null;
            var words = cells is null ? part.TextContent : string.Join(" | ", cells.Select(cell => string.Join(' ', cell.ChildNodes.Select(node => node.TextContent))));
            text.Append(part.LocalName is "h1" or "h2" or "h3" ? "\n" : "").Append(part.LocalName).Append(": ").Append(Regex.Replace(words.Replace('\u00a0', ' '), @"\s+", " ").Trim()).Append('\n');
        }

        var state = new Regex("state [0-9a-f]{12}");
        Golden.Check("page-" + name, state.Replace(text.ToString().TrimStart('\n'), "state ..."));
    }

    /// <summary>A step is told by its own blocks.</summary>
    private static bool IsBlock(IElement part) => part.LocalName != "li" || part.QuerySelector("p") is null;
}
