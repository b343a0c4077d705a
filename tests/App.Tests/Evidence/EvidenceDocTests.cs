using System.Text.RegularExpressions;

namespace Doughwright.App.Tests.Evidence;

/// <summary>docs/evidence.md shows texts that lie in tests/data/published, letter for letter, one of every kind.</summary>
public partial class EvidenceDocTests
{
    private static readonly string Page = File.ReadAllText(House.PathTo("docs", "evidence.md")).ReplaceLineEndings("\n");

    private static readonly string[] Texts =
        [.. Directory.EnumerateFiles(House.PathTo("tests", "data", "published"), "*.yaml", SearchOption.AllDirectories).Select(file => File.ReadAllText(file).ReplaceLineEndings("\n"))];

    [Fact]
    public void Examples_AreThePublishedTexts() => Assert.All(Block().Matches(Page), block => Assert.Contains(block.Groups["text"].Value, Texts));

    [Fact]
    public void EveryKind_HasAnExample()
    {
        var kinds = Heading().Matches(Page).Select(heading => heading.Groups["kind"].Value).ToArray();
        Assert.NotEmpty(kinds);
        var shown = Block().Matches(Page).Select(block => KindOf(block.Groups["text"].Value)).ToHashSet();
        Assert.Empty(kinds.Except(shown).Except(["warming"]));
    }

    private static string KindOf(string text) => Kind().Match(text).Groups["kind"].Value;

    [GeneratedRegex(@"```yaml\n(?<text>doughwright: 1\n(?:(?!```).*\n)*)```")]
    private static partial Regex Block();

    [GeneratedRegex(@"^### `(?<kind>[a-z ]+)`", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^kind: (?<kind>.+)$", RegexOptions.Multiline)]
    private static partial Regex Kind();
}
