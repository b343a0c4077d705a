using System.Security.Cryptography;
using System.Text;
using Doughwright.Publishing.Pages.Style;

namespace Doughwright.App.Tests.Pages;

/// <summary>A page carries the rules that it uses, of the desk's sheets and its own, and its policy allows just those.</summary>
public class StyleSheetTests
{
    private static readonly MarkupNames Used = MarkupNames.Of("""<main class="a b"><p class="c">x</p><stop offset="0" class="w21"/></main>""");

    [Theory]
    [InlineData(".a { x: y; }", ".a{x: y;}\n")]
    [InlineData(".z { x: y; }", "")]
    [InlineData(".a, .z { x: y; }", ".a{x: y;}\n")]
    [InlineData(".a .z { x: y; }", "")]
    [InlineData("p { x: y; } table { x: y; }", "p{x: y;}\n")]
    [InlineData(".a:not(.z, .y) > p:hover { x: y; }", ".a:not(.z, .y) > p:hover{x: y;}\n")]
    [InlineData("#id { x: y; }", "")]
    [InlineData(":root { --x: y; }", ":root{--x: y;}\n")]
    [InlineData("stop[class^=\"w\"] { x: y; }", "stop[class^=\"w\"]{x: y;}\n")]
    [InlineData("@media print { .a { x: y; } .z { x: y; } }", "@media print{.a{x: y;}\n}\n")]
    [InlineData("@media print { .z { x: y; } }", "")]
    [InlineData("@font-face { src: url(x); } @page { size: A4; } /* .a { } */", "")]
    public void Rules_AreKeptWhereTheyAreUsed(string css, string kept) => Assert.Equal(kept, StyleSheet.Used(css, Used));

    [Fact]
    public void BlockThatIsNotClosed_IsRefused() => Assert.Throws<FormatException>(() => StyleSheet.Used(".a { x: y;", Used));

    [Theory]
    [MemberData(nameof(PageTests.Pages), MemberType = typeof(PageTests))]
    public void Policy_AllowsTheStyleOfThePage_AndNothingElse(string name)
    {
        var page = MadePages.Named(name).Document;
        var style = page.QuerySelector("style")!.TextContent;
        var policy = page.QuerySelector("meta[http-equiv='Content-Security-Policy']")!.GetAttribute("content")!;
        Assert.Contains($"style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}'", policy, StringComparison.Ordinal);
        Assert.StartsWith("default-src 'none';", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryWarmthOfThePage_HasItsColour()
    {
        var page = MadePages.Named("potato-rolls").Document;
        var style = page.QuerySelector("style")!.TextContent;
        var classes = page.All.SelectMany(part => part.ClassList).Where(name => System.Text.RegularExpressions.Regex.IsMatch(name, "^w[0-9]+$")).Distinct().ToArray();
        Assert.True(classes.Length > 15);
        Assert.All(classes, name => Assert.Contains($".{name}{{", style, StringComparison.Ordinal));
    }
}
