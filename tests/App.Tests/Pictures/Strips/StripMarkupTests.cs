using System.Text.RegularExpressions;
using System.Xml.Linq;
using Doughwright.Publishing.Pictures.Strips;
using Picture = Doughwright.Publishing.Pictures.Strips.Strips;

namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>Strips are markup that a strict page can carry: sound, without script and inline style, in classes that the stylesheet knows.</summary>
public partial class StripMarkupTests
{
    /// <summary>Wide and tall together, of the richest recipe there is, unpacked.</summary>
    private const int Heaviest = 70_000;

    private static readonly HashSet<string> Known = [.. new[] { "tokens.css", "desk.css" }
        .SelectMany(sheet => ClassInSheet().Matches(File.ReadAllText(House.PathTo("src", "Doughwright.App", "wwwroot", sheet))))
        .Select(match => match.Groups["class"].Value)];

    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void EveryClass_IsKnownToTheStylesheet(string recipe, string kitchen) => Assert.All(All(recipe, kitchen), strip =>
        Assert.Equal([], strip.Root.DescendantsAndSelf().SelectMany(DrawnStrip.Classes).Distinct().Except(Known).ToArray()));

    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void NoScript_NoStyle_NoBrokenNumber(string recipe, string kitchen) => Assert.All(All(recipe, kitchen), strip =>
    {
        Assert.DoesNotContain(strip.Root.DescendantsAndSelf(), element => element.Name.LocalName is "script" or "style" or "foreignObject" or "a");
        Assert.DoesNotContain(strip.Root.DescendantsAndSelf().SelectMany(element => element.Attributes()), attribute => attribute.Name.LocalName is "style" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.DoesNotContain("NaN", strip.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", strip.Markup, StringComparison.Ordinal);
        Assert.DoesNotMatch(Exponent(), strip.Markup);
    });

    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void TitleAndDescription_AreNamed(string recipe, string kitchen) => Assert.All(StripCases.Of(Rehearsed.Of(recipe, kitchen)), strip =>
    {
        var ids = strip.Root.Attribute("aria-labelledby")!.Value.Split(' ');
        Assert.Equal("img", strip.Root.Attribute("role")!.Value);
        Assert.Equal(["title", "desc"], ids.Select(id => strip.Root.Elements().Single(element => element.Attribute("id")?.Value == id).Name.LocalName));
        Assert.All(["title", "desc"], name => Assert.NotEqual("", strip.Root.Element(name)!.Value.Trim()));
    });

    [Fact]
    public void IdsOfTwoStripsOnAPage_AreTheirOwn_AndEveryPaintIsThere()
    {
        var rehearsal = Rehearsed.Of("potato-rolls");
        var course = rehearsal.Course();
        var page = XElement.Parse("<div>"
            + Picture.Wide(rehearsal, course, StripCases.Metric, new() { Id = "a" })
            + Picture.Wide(rehearsal, course, StripCases.Metric, new() { Id = "b" })
            + Picture.Tall(rehearsal, course, StripCases.Metric, new() { Id = "c" })
            + Picture.Mini(rehearsal, course, StripCases.Metric, new() { Id = "d", Span = rehearsal.Total!.Value.Likely, PixelsPerGram = 0.02 })
            + "</div>");
        var ids = page.Descendants().Attributes("id").Select(id => id.Value).ToArray();
        Assert.Equal(ids.Distinct(), ids);
        var used = page.Descendants().Attributes("fill").Select(fill => Reference().Match(fill.Value)).Where(match => match.Success).Select(match => match.Groups["id"].Value).ToArray();
        Assert.NotEmpty(used);
        Assert.Equal([], used.Except(ids));
    }

    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void StopsOfAGradient_AreInOrder(string recipe, string kitchen) => Assert.All(All(recipe, kitchen).SelectMany(strip => strip.All("linearGradient")), gradient =>
    {
        var offsets = gradient.Elements("stop").Select(stop => DrawnStrip.At(stop, "offset")).ToArray();
        Assert.NotEmpty(offsets);
        Assert.Equal(offsets.Order(), offsets);
        Assert.All(offsets, offset => Assert.InRange(offset, 0, 1));
        Assert.All(gradient.Elements("stop"), stop => Assert.Matches(WarmthClass(), stop.Attribute("class")!.Value));
    });

    [Theory]
    [MemberData(nameof(StripCases.Runs), MemberType = typeof(StripCases))]
    public void WideAndTall_AreLight(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        Assert.InRange(StripCases.Wide(rehearsal).Markup.Length + StripCases.Tall(rehearsal).Markup.Length, 1, Heaviest);
    }

    /// <summary>With marks, and the row of the shelf.</summary>
    private static IEnumerable<DrawnStrip> All(string recipe, string kitchen)
    {
        var rehearsal = Rehearsed.Of(recipe, kitchen);
        var mini = new MiniOptions { Id = "m", Span = Engine.Quantities.Duration.FromHours(24), PixelsPerGram = 0.02 };
        return StripCases.Of(rehearsal)
            .Append(new(Picture.Mini(rehearsal, rehearsal.Course(), StripCases.Metric, mini)))
            .Append(new(Picture.Nights([new(Engine.Quantities.Duration.FromHours(17), Engine.Quantities.Duration.FromHours(10))], mini.Span)));
    }

    [GeneratedRegex(@"\.(?<class>[a-z][a-z0-9-]*)")]
    private static partial Regex ClassInSheet();

    [GeneratedRegex(@"^url\(#(?<id>[^)]+)\)$")]
    private static partial Regex Reference();

    [GeneratedRegex(@"^w\d+$")]
    private static partial Regex WarmthClass();

    [GeneratedRegex(@"""[^""<>]*\d[eE][+-]\d[^""<>]*""")]
    private static partial Regex Exponent();
}
