using System.Diagnostics;
using System.Text;
using CsCheck;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>Texts made to do harm: findings, no crash, no long wait.</summary>
public class HostileTextTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    public static TheoryData<string, string, string> HostileTexts => new()
    {
        { "empty", "", "empty-text" },
        { "only blank lines", "\n \n\n", "empty-text" },
        { "only a comment", "# nothing else\n", "empty-text" },
        { "ten megabytes of one line", new string('a', 10_000_000), "text-too-large" },
        { "ten megabytes of lines", Repeat("title: a\n", 10_000_000), "text-too-large" },
        { "one megabyte of one line", new string('a', 1_000_000), "line-too-long" },
        { "one megabyte of the same key", Repeat("title: a\n", 1_000_000), "same-key-twice" },
        { "one megabyte of bad lines", Repeat("a\n", 1_000_000), "colon-missing" },
        { "one megabyte of line ends", "title: a\n" + new string('\n', 1_000_000), "home-missing" },
        { "one megabyte of unknown keys", Lines(60_000, i => $"k{i}: a"), "unknown-key" },
        { "one megabyte of parts inside each other", "parts:\n" + Lines(28_000, i => $"  p{i}:\n    p{i + 1}: all of it"), "kind-missing" },
        { "parts in a circle", "parts:\n" + Lines(9_000, i => $"  p{i}:\n    kind: dough\n    p{(i + 1) % 9_000}: all of it"), "circle" },
        { "20,000 levels on one line", Repeat("- ", 40_000) + "a", "line-too-long" },
        { "20,000 brackets", "title: " + new string('[', 20_000), "line-too-long" },
        { "1,400 levels of keys", Lines(1_400, i => new string(' ', i) + "a:"), "too-deep" },
        { "20,000 levels of keys, one space each", Lines(20_000, i => new string(' ', Math.Min(i, 30)) + "a:"), "too-deep" },
        { "NUL", "title: a\0b\n", "control-character" },
        { "NUL bytes only", new string('\0', 100_000), "control-character" },
        { "escape sequence", "title: \u001b[2Ja\n", "control-character" },
        { "lone high surrogate", "title: a\ud800b\n", "broken-character" },
        { "lone low surrogate", "title: a\udc00\n", "broken-character" },
        { "turned writing", "title: a\u202eb\n", "direction-mark" },
        { "turned writing in a comment", "title: a # \u2066\n", "direction-mark" },
        { "byte order mark inside", "title: a\ufeff\n", "control-character" },
        { "two byte order marks", "\ufeff\ufeffdoughwright: 1\n", "control-character" },
        { "lone carriage return", "title: a\rb\n", "control-character" },
        { "line separator", "title: a\u2028b\n", "control-character" },
        { "only a colon", ":\n", "first-mark" },
        { "quote without end", "title: \"a\n", "quote-open" },
        { "backslash at the end", "title: \"a\\", "quote-open" },
    };

    [Theory]
    [MemberData(nameof(HostileTexts))]
    public void HostileText_GivesAFindingAndNoWait(string what, string text, string kind)
    {
        var clock = Stopwatch.StartNew();
        var recipe = RecipeText.Read(text);
        var kitchen = KitchenText.Read(text);
        Assert.True(clock.Elapsed < 2 * Patience, $"{what}: {clock.Elapsed}");
        Assert.Contains(recipe.Findings, finding => finding.Kind == kind);
        Assert.False(recipe.Sound);
        Assert.False(kitchen.Sound);
        Assert.True(recipe.Findings.Count <= TextCaps.Findings + 1);
        Assert.All(recipe.Findings, AssertQuoteIsHarmless);
    }

    [Fact]
    public void TooManyFaults_AreCounted()
    {
        var more = RecipeText.Read(Repeat("a\n", 4_000)).Findings[^1];
        Assert.Equal("more-faults", more.Kind);
        Assert.True((int)more.Arguments["count"] >= 1_000);
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\n")]
    public void LineEnds_MakeNoDifference(string lineEnd)
    {
        var reading = RecipeText.Read("\ufeff" + Texts.PotatoRolls.Replace("\n", lineEnd));
        Assert.Empty(reading.Findings);
        Assert.Equal(Texts.PotatoRolls, RecipeText.Write(reading.Recipe!));
    }

    /// <summary>
    /// The potato rolls with some characters exchanged: whatever comes of it, every finding has a place in the text and nothing throws.
    /// </summary>
    [Fact]
    public void SpoiledText_NeverThrows()
    {
        var text = Texts.PotatoRolls;
        var slip = Gen.Select(Gen.Int[0, text.Length - 1], Pick.From(Slips));
        slip.Array[1, 6].Sample(slips =>
        {
            var spoiled = new StringBuilder(text);
            foreach (var (at, instead) in slips.OrderByDescending(one => one.Item1))
            {
                spoiled.Remove(at, 1).Insert(at, instead);
            }

            var reading = RecipeText.Read(spoiled.ToString());
            Assert.All(reading.Findings, finding => Assert.InRange(finding.Position.Line, 1, text.Length));
            if (reading.Recipe is { } recipe && reading.Understood)
            {
                Assert.True(RecipeText.Read(RecipeText.Write(recipe)).Understood);
            }
        });
    }

    /// <summary>What the own reader takes without a fault, a general YAML parser takes too, and reads to the same tree.</summary>
    [Fact]
    public void SpoiledTextWithoutFaults_IsStillYaml()
    {
        var text = Texts.PotatoRolls;
        Gen.Select(Gen.Int[0, text.Length - 1], Pick.From(Slips)).Sample(slip =>
        {
            var spoiled = text.Remove(slip.Item1, 1).Insert(slip.Item1, slip.Item2);
            var (document, log) = TreeReader.Read(spoiled);
            if (document is not null && log.Findings.Count == 0 && !HasDoubleKey(document.Root))
            {
                YamlOracleTests.AssertSameTree(spoiled);
            }
        });
    }

    /// <summary>The short ones of the texts above.</summary>
    internal static IEnumerable<string> Harmful() => HostileTexts.Select(row => row.Data.Item2).Where(text => text.Length < 100_000);

    private static string[] Slips =>
    [
        "", " ", "\n", ":", ": ", "-", "- ", "#", " #", "\"", "'", "|", "&", "*", "!", "[", "{", "\t", "0", ",", "é", "\0", "%", "? ",
        "\n\n", "\n  ", "\\", "@",
    ];

    private static bool HasDoubleKey(TextNode node) => node is TextMapping mapping
        && (mapping.Entries.DistinctBy(entry => entry.Key).Count() < mapping.Entries.Count
            || mapping.Entries.Any(entry => HasDoubleKey(entry.Value)));

    private static void AssertQuoteIsHarmless(Finding finding) => Assert.DoesNotContain(
        finding.Quoted ?? "",
        c => char.IsControl(c) || c is (>= '\u2066' and <= '\u2069') or (>= '\u202a' and <= '\u202e'));

    private static string Repeat(string piece, int length) => new StringBuilder().Insert(0, piece, length / piece.Length).ToString();

    private static string Lines(int count, Func<int, string> line) => string.Join('\n', Enumerable.Range(0, count).Select(line));
}
