using System.Text.Json;

namespace Doughwright.App.Tests.Commands;

/// <summary>Exit codes are fixed by the contract: other programs go by them.</summary>
public class ExitCodeTests
{
    [Fact]
    public void NoArguments_SaysWhatItCanDo_IsZero()
    {
        var run = Run.Of();
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("doughwright rehearse FILE", run.Output, StringComparison.Ordinal);
        Assert.Empty(run.Messages);
    }

    [Theory]
    [InlineData("survey")]
    public void CommandsThatDoNotExist_AreNotListed(string command)
    {
        Assert.DoesNotContain(command, Run.Of().Output, StringComparison.Ordinal);
        Assert.Equal(2, Run.Of(command, House.PotatoRolls).ExitCode);
    }

    [Fact]
    public void SoundRecipe_IsZero() => Assert.Equal(0, Run.Of("formula", House.PotatoRolls).ExitCode);

    [Fact]
    public void UnderstoodAndWrong_IsOne()
    {
        var text = File.ReadAllText(House.PotatoRolls).Replace("sugar: 30 g", "sugar: -30 g", StringComparison.Ordinal);
        Assert.Equal(1, Run.WithInput(text, "formula", "-").ExitCode);
    }

    [Fact]
    public void MisspeltOption_IsTwo_WithTheNearestOnStandardError()
    {
        var run = Run.Of("rehearse", House.PotatoRolls, "--artitude", "1200m");
        Assert.Equal(2, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.Contains("--artitude", run.Messages, StringComparison.Ordinal);
        Assert.Contains("--altitude", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void NotUnderstood_IsThree_AndTheFindingsAreStillThere()
    {
        foreach (var command in new[] { "findings", "formula", "rehearse" })
        {
            var run = Run.Of(command, House.Text("potato-rolls-twelve-faults.yaml"));
            Assert.Equal(3, run.ExitCode);
            Assert.Contains("010 g", run.Output, StringComparison.Ordinal);
            Assert.NotEmpty(run.Messages);
        }
    }

    [Fact]
    public void FaultOfOurs_IsSeventy_WithoutStackTrace()
    {
        using var broken = new BrokenStream();
        using var output = new StringWriter();
        using var messages = new StringWriter();
        var code = Cli.Run(["formula", "-", "--json"], broken, output, messages);
        Assert.Equal(70, code);
        Assert.DoesNotContain("   at ", messages.ToString(), StringComparison.Ordinal);
        using var json = JsonDocument.Parse(output.ToString());
        Assert.NotEmpty(json.RootElement.GetProperty("error").GetProperty("wayOut").GetString()!);
    }

    [Fact]
    public void Json_IsAloneOnStandardOutput()
    {
        foreach (var arguments in new string[][]
        {
            ["formula", House.PotatoRolls, "--json"],
            ["formula", "nothing-here.yaml", "--json"],
            ["findings", House.Text("potato-rolls-twelve-faults.yaml"), "--json"],
            ["--json", "rehearse", House.PotatoRolls, "--air", "17"],
        })
        {
            using var json = JsonDocument.Parse(Run.Of(arguments).Output);
            Assert.Equal(1, json.RootElement.GetProperty("form").GetInt32());
        }
    }

    [Fact]
    public void StandardInput_IsTheFileNamedMinus()
    {
        var text = File.ReadAllText(House.PotatoRolls);
        Assert.Equal(Run.Of("formula", House.PotatoRolls).Output, Run.WithInput(text, "formula", "-").Output);
    }

    private sealed class BrokenStream : MemoryStream
    {
        public override int Read(Span<byte> buffer) => throw new InvalidOperationException("The pipe burst.");
    }
}
