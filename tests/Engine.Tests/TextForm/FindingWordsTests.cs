using System.Reflection;
using System.Text.Json;
using System.Text.RegularExpressions;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>Every kind of finding has words, and every word in braces is an argument the finding carries.</summary>
public partial class FindingWordsTests
{
    /// <summary>What is said of the form, and of amounts and what stands on labels.</summary>
    private static readonly string[] Files = ["findings.text.json", "findings.amounts.json"];

    private static readonly Dictionary<string, Dictionary<string, string>> Words = Files
        .SelectMany(file => JsonSerializer.Deserialize<Dictionary<string, Dictionary<string, string>>>(Texts.Read("src/Doughwright.Publishing/Words/" + file))!)
        .ToDictionary(entry => entry.Key, entry => entry.Value);

    [Fact]
    public void EveryKind_HasWords_AndNoWordsAreLeftOver() =>
        Assert.Equal(Kinds().Order(StringComparer.Ordinal), Words.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void Words_ArePlain() => Assert.All(Words, entry =>
    {
        Assert.Equal(["message", "wayOut"], entry.Value.Keys);
        Assert.All(entry.Value.Values, text => Assert.DoesNotMatch("(?i)please|oops|sorry|!|invalid|error", text));
        Assert.All(entry.Value.Values, text => Assert.EndsWith(".", text, StringComparison.Ordinal));
    });

    [Fact]
    public void EveryArgumentInTheWords_IsCarried()
    {
        var told = Spoiled().SelectMany(text => RecipeText.Read(text).Findings.Concat(KitchenText.Read(text).Findings)).ToList();
        Assert.All(told, finding => Assert.All(Words[finding.Kind].Values, text => Assert.All(
            Argument().Matches(text),
            name => Assert.Contains(name.Groups[1].Value, finding.Arguments.Keys))));
        Assert.True(told.DistinctBy(finding => finding.Kind).Count() > 60);
    }

    private static IEnumerable<string> Kinds() => typeof(TextFaults).GetFields().Concat(typeof(FormFaults).GetFields())
        .Select(field => (string)field.GetRawConstantValue()!)
        .Concat(Enum.GetValues<QuantityFault>().Select(QuantityFaults.KindOf))
        .Concat(typeof(Limits).GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Select(property => property.GetValue(null))
            .Where(limit => limit is not Mass)
            .Select(limit => (string)limit!.GetType().GetProperty("Kind")!.GetValue(limit)!));

    private static IEnumerable<string> Spoiled() =>
        [Texts.Read("tests/data/texts/potato-rolls-twelve-faults.yaml"), .. FormFaultTests.Slips(), .. HostileTextTests.Harmful()];

    [GeneratedRegex(@"\{(\w+)\}")]
    private static partial Regex Argument();
}
