using System.Text.RegularExpressions;
using Doughwright.App.Desk.Drafting;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Drafting;

/// <summary>Everything that can be done to a recipe is said in words, with all it carries in its place.</summary>
public partial class DeedWordsTests
{
    private static readonly Voice Voice = new(Words.Shipped, MeasureSystem.Metric);

    private static string[] Kinds => [.. House.Sources("Doughwright.Engine")
        .SelectMany(file => Made().Matches(File.ReadAllText(file)))
        .SelectMany(match => new[] { match.Groups["one"].Value, match.Groups["other"].Value })
        .Where(kind => kind.Length > 0)
        .Distinct()];

    [Fact]
    public void EveryDeed_HasWords()
    {
        Assert.True(Kinds.Length > 15);
        Assert.All(Kinds, kind => Assert.True(Words.Shipped.Entries.ContainsKey("did." + kind), kind));
    }

    [Fact]
    public void Deed_SaysWhatItCarries() => Assert.Equal(
        "butter 50 g to 60 g",
        DeedWords.Of(new Deed("line-amount", new Dictionary<string, object> { ["line"] = "butter", ["from"] = "50 g", ["to"] = "60 g" }), Voice));

    [Theory]
    [InlineData("where", "fridge", "Bulk: where in the fridge")]
    [InlineData("way", "food processor", "Bulk: how in a food processor")]
    [InlineData("hands", "8 min", "Bulk: hands 8 min")]
    public void DeedOfAStep_IsSaidInTheWordsOfTheSheet(string key, string typed, string said) => Assert.Equal(
        said, DeedWords.Of(new Deed("step-said", new Dictionary<string, object> { ["step"] = "Bulk", ["what"] = key, ["to"] = typed }), Voice));

    [GeneratedRegex("""Deed\.Of\(\s*[^"]*?"(?<one>[a-z-]+)"(?:\s*:\s*"(?<other>[a-z-]+)")?""")]
    private static partial Regex Made();
}
