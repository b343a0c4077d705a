using System.Text.Json;
using System.Text.RegularExpressions;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Warming;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Wording;

/// <summary>Everything the program can say has words, and the words are in its voice.</summary>
public partial class WordsTests
{
    private static readonly Voice Metric = new(Words.Shipped, MeasureSystem.Metric);

    [Fact]
    public void ARangeOfOneFigure_IsToldOnce()
    {
        Assert.Equal(Metric.Text(Duration.FromMinutes(9)), Metric.Range(Duration.FromMinutes(8.9), Duration.FromMinutes(9.1), inSentence: true));
        Assert.Contains(" to ", Metric.Range(Duration.FromMinutes(9), Duration.FromMinutes(11), inSentence: true), StringComparison.Ordinal);
        Assert.DoesNotContain(" to ", Metric.Range(Temperature.FromCelsius(21), Temperature.FromCelsius(21.01), asked: false), StringComparison.Ordinal);
    }

    [Fact]
    public void EveryFinding_HasMessageAndWayOut() => Missing(KindScan.Findings().Keys.SelectMany(kind => new[] { kind + ".message", kind + ".wayOut" }));

    [Fact]
    public void EveryReason_HasWords() => Missing(KindScan.Reasons().Select(kind => "reason." + kind));

    [Fact]
    public void EveryEvent_HasWords() => Missing(KindScan.Events().Select(kind => "event." + kind));

    [Fact]
    public void EveryMemberOfAClosedList_HasWords() => Missing(
        new[] { typeof(Basis), typeof(OvenMode), typeof(StepKind), typeof(MixingWay), typeof(VesselMaterial), typeof(PlaceKind), typeof(PlaceCaution) }
            .SelectMany(type => Enum.GetNames(type).Select(name => $"{Voice.Kebab(type.Name)}.{Voice.Kebab(name)}")));

    /// <summary>Keys that stand in the source of the program: Say("key"), Words["key"].</summary>
    [Fact]
    public void EveryKeyInTheSource_HasWords() => Missing(House.Speaking
        .SelectMany(file => Key().Matches(File.ReadAllText(file)))
        .Select(match => match.Groups["key"].Value));

    [Fact]
    public void EveryFaultOfACommandLine_HasMessageAndWayOut() => Missing(House.Sources("Doughwright.App")
        .SelectMany(file => FaultKey().Matches(File.ReadAllText(file)))
        .SelectMany(match => new[] { match.Groups["key"].Value + ".message", match.Groups["key"].Value + ".wayOut" }));

    [Fact]
    public void EveryWordOfAFinding_IsUsed() => Assert.Equal([], Unused());

    private static string[] Unused() => [.. Words.Shipped.Kinds.Where(kind => !KindScan.IsUsed(kind))];

    [Fact]
    public void TheVoice_NeverBegs_ShoutsOrBlames() => Assert.Equal([], Words.Shipped.Entries
        .Where(entry => NotOurVoice().IsMatch(entry.Value))
        .Select(entry => $"{entry.Key}: {entry.Value}")
        .ToArray());

    [Fact]
    public void EveryMessage_EndsAsASentence() => Assert.All(
        Words.Shipped.Kinds.SelectMany(kind => new[] { Words.Shipped[kind + ".message"], Words.Shipped[kind + ".wayOut"] }),
        words => Assert.True(words.EndsWith('.') || words.EndsWith('}'), words));

    [Fact]
    public void EveryOption_HasHelp() => Missing(
        from command in new App.Commands.Options().Commands
        from option in command.Options
        let own = $"help.{command.Name}{option.Name[1..]}"
        select Words.Shipped.Find(own) is null ? "help" + option.Name[1..] : own);

    [Fact]
    public void Arguments_AreFormattedByTheirType()
    {
        Assert.Equal("1,200\u00a0m", Metric.Text(Length.FromMetres(1200)));
        Assert.Equal("1\u00a0cm", Metric.Text(Length.FromMillimetres(10)));
        Assert.Equal("28\u00a0°C", Metric.Text(Temperature.FromCelsius(28)));
        Assert.Equal("23.9\u00a0°C", Metric.Text(Temperature.FromCelsius(23.91)));
        Assert.Equal("24\u00a0°C", Metric.Text(Temperature.FromCelsius(23.91), "asked"));
        Assert.Equal("1\u00a0h 45\u00a0min", Metric.Text(Duration.FromMinutes(105)).Replace("h\u00a045", "h 45", StringComparison.Ordinal));
        Assert.Equal("1:45", Metric.Text(Duration.FromMinutes(105), "column"));
        Assert.Equal("a, b and c", Metric.Text(new[] { "a", "b", "c" }));
        Assert.Equal("1.25", Metric.Text(1.25));
        Assert.Equal("fan", Metric.Text(OvenMode.Fan));
    }

    [Fact]
    public void MissingArgument_StaysInBraces() => Assert.Equal("a {b} c", Metric.Fill("a {b} c", _ => null));

    [Fact]
    public void SameKeyTwice_IsRefused() =>
        Assert.Throws<FormatException>(() => Words.Read("""{"a":"1","a":"2"}"""u8, []));

    [Fact]
    public void FilesOfWords_AreJson()
    {
        foreach (var file in Directory.EnumerateFiles(House.PathTo("src", "Doughwright.Publishing", "Words"), "*.json"))
        {
            using var json = JsonDocument.Parse(File.ReadAllText(file));
            Assert.Equal(JsonValueKind.Object, json.RootElement.ValueKind);
        }
    }

    private static void Missing(IEnumerable<string> keys) =>
        Assert.Equal([], keys.Distinct().Where(key => Words.Shipped.Find(key) is null).ToArray());

    [GeneratedRegex("""(?:Say\(|[Ww]ords\[)"(?<key>[a-z][a-zA-Z0-9.-]*)"[,)\]]""")]
    private static partial Regex Key();

    [GeneratedRegex("""(?:[Ff]aults\.Add|AddUnknown)\("(?<key>[a-z-]+)""")]
    private static partial Regex FaultKey();

    [GeneratedRegex("""!|\b(?:please|oops|sorry|successfully|invalid|illegal|you forgot)\b""", RegexOptions.IgnoreCase)]
    private static partial Regex NotOurVoice();
}
