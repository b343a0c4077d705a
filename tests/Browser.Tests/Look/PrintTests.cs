using System.Text;
using System.Text.RegularExpressions;
using Doughwright.Browser.Tests.Running;
using Microsoft.Playwright;

namespace Doughwright.Browser.Tests.Look;

/// <summary>On paper a page is whole: a few sheets of A4, nothing cut off, and no writing in a picture below 6 pt.</summary>
[Trait("Category", "Slow")]
public partial class PrintTests(House house)
{
    /// <summary>Width of what is printed on A4 within margins of 14 mm, in CSS pixels.</summary>
    internal const int PrintedWidth = 688;

    internal const string Cut = """
        () => {
          const faults = [];
          for (const part of document.querySelectorAll('main *')) {
            if (part.closest('svg') || !part.checkVisibility()) continue;
            const style = getComputedStyle(part);
            if (style.overflow !== 'visible' && style.display !== 'inline' && part.textContent.trim() && !part.matches('.vh, .vh *, .skip')
                && part.clientWidth > 1 && (part.scrollWidth > part.clientWidth + 1 || part.scrollHeight > part.clientHeight + 1)) {
              faults.push(`cut off: ${part.outerHTML.slice(0, 100)}`);
            }
          }
          for (const text of document.querySelectorAll('svg text')) {
            const [box, frame] = [text.getBoundingClientRect(), text.ownerSVGElement.getBoundingClientRect()];
            if (box.width && (box.left < frame.left - 1 || box.right > frame.right + 1) && getComputedStyle(text.ownerSVGElement).overflow !== 'visible') {
              faults.push(`cut off in its picture: ${text.textContent}`);
            }
          }
          for (const text of document.querySelectorAll('svg text, svg tspan')) {
            const picture = text.ownerSVGElement;
            if (!picture.getBoundingClientRect().width || !text.textContent.trim() || text.matches('.flagt')) continue;
            const points = parseFloat(getComputedStyle(text).fontSize) * picture.getBoundingClientRect().width / picture.viewBox.baseVal.width * 0.75;
            if (points < 6) faults.push(`${points.toFixed(2)} pt: ${text.textContent}`);
          }
          for (const table of document.querySelectorAll('table')) {
            const frame = table.closest('section.scroll, section.sec');
            if (table.checkVisibility() && frame && table.getBoundingClientRect().right > frame.getBoundingClientRect().right + 1) faults.push(`wider than its column: ${table.textContent.slice(0, 60)}`);
          }
          if (document.documentElement.scrollWidth > innerWidth) faults.push(`${document.documentElement.scrollWidth - innerWidth} px wider than the paper`);
          return faults;
        }
        """;

    [Theory(Timeout = Visit.Patience)]
    [ClassData(typeof(EveryPage))]
    public async Task Page_PrintsWhole(string path)
    {
        await using var visit = await house.Visit(path, new(PrintedWidth));
        if (Pages.HasCircuit(path))
        {
            await visit.Settled();
        }

        await visit.Page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>(Cut));
        var paper = await visit.Page.PdfAsync(new() { PreferCSSPageSize = true, Format = "A4" });
        var count = SheetOfPaper().Count(Encoding.Latin1.GetString(paper));
        Assert.InRange(count, 1, SheetsOf(path) + 1);
        Assert.All(
            MediaBox().Matches(Encoding.Latin1.GetString(paper)).Select(match => match.Groups[1].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries)),
            box =>
            {
                // A4 is 595.28 by 841.89 points; a page that says so in its own sheet is cut to whole pixels of it.
                Assert.InRange(Points(box[2]), 594.3, 596.3);
                Assert.InRange(Points(box[3]), 840.9, 842.9);
            });
    }

    /// <summary>Sheets of paper that a page takes; one more is allowed to a system with other lettering.</summary>
    private static int SheetsOf(string path) => path switch
    {
        _ when Pages.IsForReaders(path) => 2,
        _ when path.Contains("/kitchens", StringComparison.Ordinal) => 3,
        _ when path.StartsWith("/larder", StringComparison.Ordinal) => 3,
        _ when path.StartsWith("/recipes/", StringComparison.Ordinal) => path.Contains("free=", StringComparison.Ordinal) ? 5 : 4,
        _ => 1,
    };

    private static double Points(string points) => double.Parse(points, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex SheetOfPaper();

    [GeneratedRegex(@"/MediaBox\s*\[([^\]]*)\]")]
    private static partial Regex MediaBox();
}
