using System.Text;
using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Look;

/// <summary>A readers' page goes onto one or two sheets of A4 or US Letter, in letters that can be read.</summary>
[Trait("Category", "Slow")]
public partial class ReaderPrintTests(House house)
{
    internal const string Small = """
        () => [...document.querySelectorAll('main *')]
          .filter(part => !part.closest('svg') && part.checkVisibility() && [...part.childNodes].some(node => node.nodeType === 3 && node.data.trim()))
          .filter(part => part.getBoundingClientRect().width > 1)
          .map(part => [part, parseFloat(getComputedStyle(part).fontSize) * 0.75])
          .filter(([, points]) => points < 7.49)
          .map(([part, points]) => `${points.toFixed(2)} pt: ${part.outerHTML.slice(0, 80)}`)
        """;

    /// <summary>Every recipe that comes with the program, on both papers.</summary>
    public static TheoryData<string, string, int, int> Everyone()
    {
        var all = new TheoryData<string, string, int, int>();
        foreach (var name in new[] { "hearth-loaf", "night-boat-rye", "pilot-ring", "potato-rolls", "quayside-pan-bread", "tin-loaf" })
        {
            all.Add(ReaderPages.Prefix + name, "A4", 595, 842);
            all.Add(ReaderPages.Prefix + name, "Letter", 612, 792);
        }

        return all;
    }

    [Theory(Timeout = Visit.Patience)]
    [MemberData(nameof(Everyone))]
    public async Task Page_TakesTwoSheetsAtMost(string page, string paper, int width, int height)
    {
        await using var visit = await house.Visit(page);
        await visit.Page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>(Small));
        var printed = Encoding.Latin1.GetString(await visit.Page.PdfAsync(new() { Format = paper, PreferCSSPageSize = true }));
        Assert.InRange(Sheet().Count(printed), 1, 2);
        Assert.All(MediaBox().Matches(printed).Select(match => match.Groups[1].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries)), box => Assert.Equal((width, height), (Points(box[2]), Points(box[3]))));
    }

    private static int Points(string text) => (int)double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex Sheet();

    [GeneratedRegex(@"/MediaBox\s*\[([^\]]*)\]")]
    private static partial Regex MediaBox();
}
