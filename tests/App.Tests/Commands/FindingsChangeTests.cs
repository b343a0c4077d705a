using System.Text.Json;

namespace Doughwright.App.Tests.Commands;

/// <summary>findings FILE --do and --accept: a text comes out, and what cannot be done is said.</summary>
public class FindingsChangeTests
{
    private static readonly string Salty = File.ReadAllText(House.PotatoRolls).Replace("    salt: 7 g", "    salt: 40 g", StringComparison.Ordinal);
    private const string Slip = "salt-slip@parts.dough.salt";

    [Fact]
    public void Do_ByNumberAndById_GivesTheSameText()
    {
        var list = Run.WithInput(Salty, "findings", "-").Output;
        Assert.Contains("[1]", list, StringComparison.Ordinal);
        var byId = Run.WithInput(Salty, "findings", "-", "--do", Slip + "/write-mass");
        Assert.Equal(0, byId.ExitCode);
        Assert.Contains("salt: 7 g", byId.Output, StringComparison.Ordinal);
        Assert.Contains(
            Enumerable.Range(1, 9).Select(number => Run.WithInput(Salty, "findings", "-", "--do", $"{number}").Output), text => text == byId.Output);
    }

    [Fact]
    public void Do_OnATextThatIsNotUnderstood_ChangesTheLine()
    {
        var spoiled = File.ReadAllText(House.PotatoRolls).Replace("    salt: 7 g", "    salt: 7,5 g", StringComparison.Ordinal);
        var run = Run.WithInput(spoiled, "findings", "-", "--do", "1");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("salt: 7.5 g", run.Output, StringComparison.Ordinal);
        Assert.NotEqual(3, Run.WithInput(run.Output, "findings", "-").ExitCode);
    }

    [Fact]
    public void Do_SeveralAtOnce_IsTheSameAsOneAfterTheOther()
    {
        var text = Salty.Replace("    sugar: 30 g", "    sugar: 30 g   # by the author", StringComparison.Ordinal).Replace("  - brush\n", "", StringComparison.Ordinal);
        var ids = Ids(text, "salt-slip", "tool-not-listed");
        Assert.Equal(2, ids.Length);
        var first = Run.WithInput(text, "findings", "-", "--do", ids[0]).Output;
        var both = Run.WithInput(text, "findings", "-", "--do", ids[0], "--do", ids[1]);
        Assert.Equal(0, both.ExitCode);
        Assert.Equal(Run.WithInput(first, "findings", "-", "--do", ids[1]).Output, both.Output);
        Assert.Contains("    sugar: 30 g   # by the author\n", both.Output, StringComparison.Ordinal);
        Assert.Empty(Ids(both.Output, "salt-slip", "tool-not-listed"));
    }

    [Fact]
    public void Do_ASecondWayOutOfWhatIsPutRight_IsRefused()
    {
        var run = Run.WithInput(Salty, "findings", "-", "--do", Slip + "/write-mass", "--do", Slip + "/write-mass");
        Assert.Equal(2, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.Contains("not on offer any more", string.Join(' ', run.Messages.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact]
    public void Do_Numbers_AreThoseOfTheList_AlsoWhereSomethingIsAccepted()
    {
        var text = Run.WithInput(Salty.Replace("  - brush\n", "", StringComparison.Ordinal), "findings", "-", "--accept", Slip + "=meant so").Output;
        var list = Run.WithInput(text, "findings", "-").Output;
        Assert.Contains("[1] Add", list, StringComparison.Ordinal);
        Assert.Contains("  - brush\n", Run.WithInput(text, "findings", "-", "--do", "1").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Accept_LeavesEveryOtherLine()
    {
        var text = Salty.Replace("    sugar: 30 g", "    sugar:   1 oz   # typed so", StringComparison.Ordinal);
        var written = Run.WithInput(text, "findings", "-", "--accept", Slip + "=meant so").Output;
        Assert.StartsWith(text, written, StringComparison.Ordinal);
        Assert.Contains("accepted:\n", written[text.Length..], StringComparison.Ordinal);
    }

    [Fact]
    public void Do_WhatIsNotThere_SaysWhatIs()
    {
        var run = Run.WithInput(Salty, "findings", "-", "--do", "99");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("write-mass", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Accept_KeepsTheReason_AndTheFindingStandsApart()
    {
        var text = Run.WithInput(Salty, "findings", "-", "--accept", Slip + "=meant so, for the sea").Output;
        using var json = JsonDocument.Parse(Run.WithInput(text, "findings", "-", "--json").Output);
        Assert.Equal("meant so, for the sea", Assert.Single(json.RootElement.GetProperty("accepted").EnumerateArray()).GetProperty("reason").GetString());
        Assert.DoesNotContain(json.RootElement.GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("id").GetString() == Slip);
        Assert.Contains("Accepted: meant so, for the sea", Run.WithInput(text, "findings", "-").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Accept_OfASafetyFinding_IsRefused()
    {
        using var json = JsonDocument.Parse(Run.WithInput(Salty, "findings", "-", "--json").Output);
        var safety = json.RootElement.GetProperty("findings").EnumerateArray().First(finding => finding.GetProperty("safety").GetBoolean()).GetProperty("id").GetString();
        var run = Run.WithInput(Salty, "findings", "-", "--accept", safety + "=never mind");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("safety", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void DoAndAccept_AreNotDoneAtOnce() =>
        Assert.Equal(2, Run.WithInput(Salty, "findings", "-", "--do", "1", "--accept", Slip + "=so").ExitCode);

    /// <summary>Ways out of the kinds of finding, the first of each.</summary>
    private static string[] Ids(string text, params string[] kinds)
    {
        using var json = JsonDocument.Parse(Run.WithInput(text, "findings", "-", "--json").Output);
        return [.. from kind in kinds
                   from finding in json.RootElement.GetProperty("findings").EnumerateArray()
                   where finding.GetProperty("kind").GetString() == kind
                   select finding.GetProperty("remedies")[0].GetProperty("id").GetString()!];
    }
}
