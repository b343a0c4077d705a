using System.Text.RegularExpressions;

namespace Doughwright.App.Tests.Wording;

/// <summary>A component drops blanks that stand beside its code: one that a reader needs is written as a value.</summary>
public partial class BlankTests
{
    [Fact]
    public void NoBlank_StandsWhereItIsDropped() => Assert.Equal([], Components().SelectMany(file => File.ReadAllLines(file).SelectMany((line, index) =>
        Dropped(line).Select(blank => $"{Path.GetFileName(file)}:{index + 1}: {blank}"))));

    [Theory]
    [InlineData("<p>@Shown @if (Filter) {<a>x</a>}</p>", true)]
    [InlineData("{<text> </text><a>x</a>}", true)]
    [InlineData("{<text> @Words </text>@foreach", true)]
    [InlineData("{<b>x</b>} <i>and</i>", true)]
    [InlineData("<p>@Shown@if (Filter) {@(\" \")<a>x</a>}</p>", false)]
    [InlineData("        @if (View is { } view)", false)]
    [InlineData("<i>@a</i> <b>@b</b>", false)]
    public void ADroppedBlank_IsFound(string line, bool isDropped) => Assert.Equal(isDropped, Dropped(line).Any());

    private static IEnumerable<string> Dropped(string line) => Blank().Matches(line).Select(match => match.Value);

    private static IEnumerable<string> Components() => Directory.EnumerateFiles(House.PathTo("src", "Doughwright.App"), "*.razor", SearchOption.AllDirectories)
        .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    /// <summary>At an edge of text in code, before code in a line of words, and behind code that ended with an element of a line.</summary>
    [GeneratedRegex(@"<text>\s|\s</text>|[^\s>{}(] +@(?:if|foreach|for|switch)\b|</(?:a|b|i|em|span|bdi|data|strong)>\} +<(?:a|b|i|em|span|bdi|data|strong)\b")]
    private static partial Regex Blank();
}
