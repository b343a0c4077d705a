using System.Text.Json.Nodes;

namespace Doughwright.App.Tests.Commands;

/// <summary>A named kitchen that options make another is told as changed, in the words of the desk.</summary>
public class ChangedKitchenTests
{
    private static string Told(params string[] words)
    {
        var run = Run.Of(words);
        Assert.Equal(("", true), (run.Messages, run.ExitCode is 0 or 1));
        return string.Join(' ', run.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    [Theory]
    [InlineData("rehearsed in Kestrel cottage, winter, changed The air", "--air", "19C")]
    [InlineData("rehearsed in Kestrel cottage, winter, changed The air", "--altitude", "900 m")]
    [InlineData("rehearsed in Kestrel cottage, winter The air")]
    [InlineData("rehearsed in Kestrel cottage, winter The air", "--air", "17C")]
    [InlineData("rehearsed in Kestrel cottage, winter The air", "--start", "8:00")]
    public void Rehearse_SaysSo(string said, params string[] options)
    {
        Assert.Contains(said, Told(["rehearse", House.PotatoRolls, "--kitchen", "winter-cottage", .. options]), StringComparison.Ordinal);
        var kitchen = JsonNode.Parse(Run.Of(["rehearse", House.PotatoRolls, "--kitchen", "winter-cottage", "--json", .. options]).Output)!["kitchen"]!;
        Assert.Equal(("Kestrel cottage, winter", said.Contains("changed", StringComparison.Ordinal)), ((string?)kitchen["name"], (bool)kitchen["changed"]!));
    }

    [Theory]
    [InlineData("in this kitchen: Kestrel cottage, winter, changed Figure", "--kitchen", "winter-cottage", "--air", "19C")]
    [InlineData("in this kitchen: Kestrel cottage, winter Figure", "--kitchen", "winter-cottage")]
    [InlineData("in this kitchen: Kestrel cottage, winter Figure", "--kitchen", "winter-cottage", "--air", "17C")]
    [InlineData("in this kitchen: Ropewalk, winter term, changed Figure", "--oven", "static")]
    [InlineData("in this kitchen: Ropewalk, winter term Figure", "--oven", "fan")]
    public void Compare_SaysSo(string said, params string[] options)
    {
        string[] words = ["compare", House.Demo("hearth-loaf.yaml"), House.PotatoRolls, .. options];
        Assert.Contains(said, Told(words), StringComparison.Ordinal);
        Assert.Equal(said.Contains("changed", StringComparison.Ordinal), (bool)JsonNode.Parse(Run.Of([.. words, "--json"]).Output)!["kitchenChanged"]!);
    }
}
