using System.Text.Json;

namespace Doughwright.App.Tests.Commands;

/// <summary>What the author has accepted stands apart in the answer of every command, and not only in that of "findings".</summary>
public class AcceptedTests
{
    private const string Id = "salt-slip@parts.dough.salt";
    private const string Reason = "meant so, for the sea";
    private const string Acceptance = "accepted:\n  ";

    private static readonly Lazy<string> Salty = new(() => Run.WithInput(
        File.ReadAllText(House.PotatoRolls).Replace("    salt: 7 g", "    salt: 40 g", StringComparison.Ordinal), "findings", "-", "--accept", $"{Id}={Reason}").Output);

    public static TheoryData<string> Commands =>
    [
        "findings -",
        "formula -",
        "rehearse -",
        "rehearse - --kitchen mountain",
        "place - --to 26C",
    ];

    [Theory]
    [MemberData(nameof(Commands))]
    public void AcceptedFinding_StandsApart_WithItsReason(string command)
    {
        var before = Salty.Value[..Salty.Value.IndexOf(Acceptance, StringComparison.Ordinal)];
        Assert.Contains(Id, Ids(before, command, "findings"));
        Assert.DoesNotContain(Id, Ids(Salty.Value, command, "findings"));
        Assert.Equal([Id], Ids(Salty.Value, command, "accepted"));
        Assert.Contains($"Accepted: {Reason}", Run.WithInput(Salty.Value, command.Split(' ')).Output, StringComparison.Ordinal);
    }

    /// <summary>Only the whole list can say that something is not found any more.</summary>
    [Theory]
    [MemberData(nameof(Commands))]
    public void AcceptanceThatIsNotNeeded_IsToldByFindingsAlone(string command)
    {
        var rightAgain = Salty.Value.Replace("    salt: 40 g", "    salt: 7 g", StringComparison.Ordinal);
        Assert.Equal(command.StartsWith("findings", StringComparison.Ordinal), Ids(rightAgain, command, "findings").Any(id => id.StartsWith("acceptance-not-needed", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void AcceptanceOfAChangedPlace_HasExpired(string command)
    {
        var changed = Salty.Value.Replace("    salt: 40 g", "    salt: 41 g", StringComparison.Ordinal);
        Assert.Contains(Id, Ids(changed, command, "findings"));
        Assert.Contains(Ids(changed, command, "findings"), id => id.StartsWith("acceptance-expired", StringComparison.Ordinal));
        Assert.Empty(Ids(changed, command, "accepted"));
    }

    /// <summary>The exit code goes by what stands; an error stands, whatever is written about it.</summary>
    [Theory]
    [MemberData(nameof(Commands))]
    public void AcceptedError_StillDecidesTheExitCode(string command)
    {
        var text = File.ReadAllText(House.PotatoRolls).Replace("    water: 100 g, boiling\n", "    water: 100 g, boiling\n    dough: 10 g\n", StringComparison.Ordinal);
        var found = Ids(text, "findings -", "findings").First(id => id.StartsWith("circle", StringComparison.Ordinal));
        var accepted = $"{text}accepted:\n  {found}:\n    reason: it is meant so\n    mark: 000000000000\n";
        Assert.Equal(1, Run.WithInput(accepted, [.. command.Split(' '), "--json"]).ExitCode);
        Assert.Contains(found, Ids(accepted, command, "findings"));
    }

    [Fact]
    public void WhatWasAccepted_StandsApart_WhenTheRecipeIsSwappedOrMadeAPage()
    {
        Assert.Equal([Id], Ids(Salty.Value, "swap - --replace butter=lard", "accepted"));
        var folder = Directory.CreateTempSubdirectory("accepted-").FullName;
        try
        {
            Assert.Equal([Id], Ids(Salty.Value, $"page - --out {folder}", "accepted"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string[] Ids(string text, string command, string list)
    {
        using var json = JsonDocument.Parse(Run.WithInput(text, [.. command.Split(' '), "--json"]).Output);
        return [.. json.RootElement.GetProperty(list).EnumerateArray().Select(one => one.GetProperty("id").GetString()!)];
    }
}
