using System.Text.Json;
using Doughwright.App.Commands;
using Json.Schema;

namespace Doughwright.App.Tests.Commands;

/// <summary>larder WORDS: one ingredient with everything that is known of it.</summary>
public class LarderCommandTests
{
    [Theory]
    [InlineData("larder-holdings")]
    [InlineData("larder-butter", "82% butter")]
    [InlineData("larder-cornflour", "cornflour")]
    [InlineData("larder-quark", "Quark")]
    [InlineData("larder-potato-misspelt", "boild", "potatos")]
    [InlineData("larder-nothing", "zzzyx")]
    public void Larder_OnAPage(string name, params string[] words)
    {
        var run = Run.Of(["larder", .. words]);
        Assert.Equal((ExitCode.Done, ""), (run.ExitCode, run.Messages));
        Assert.DoesNotContain('{', run.Output);
        Golden.Check(name, run.Output);
    }

    [Theory]
    [InlineData]
    [InlineData("butter")]
    [InlineData("quark")]
    [InlineData("cornflour", "--region", "us")]
    [InlineData("zzzyx")]
    [InlineData("carrot")]
    public void Larder_AsJson_FitsItsSchema(params string[] words)
    {
        var run = Run.Of(["larder", "--json", .. words]);
        Assert.Equal((ExitCode.Done, ""), (run.ExitCode, run.Messages));
        var schema = JsonSchema.FromText(File.ReadAllText(House.PathTo("tests", "data", "schema", "larder.json")));
        using var json = JsonDocument.Parse(run.Output);
        Assert.True(schema.Evaluate(json.RootElement).IsValid, run.Output);
    }

    [Fact]
    public void Larder_UnknownFigures_AreNull()
    {
        using var json = JsonDocument.Parse(Run.Of("larder", "quark", "--json").Output);
        var hit = json.RootElement.GetProperty("hits")[0];
        Assert.False(hit.GetProperty("hasFigures").GetBoolean());
        Assert.All(hit.GetProperty("composition").EnumerateObject(), part => Assert.Equal(JsonValueKind.Null, part.Value.ValueKind));
    }

    [Fact]
    public void Larder_Region_Decides()
    {
        Assert.Contains("gets maize starch", Run.Of("larder", "cornflour", "--region", "gb").Output, StringComparison.Ordinal);
        Assert.Contains("gets maize flour", Run.Of("larder", "cornflour", "--region", "US").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--region", "XX", "butter")]
    [InlineData("--region", "GB", "--region", "US", "butter")]
    [InlineData("!?")]
    [InlineData("--aer", "17C")]
    public void Larder_BadInput_IsToldInOurWords(params string[] words)
    {
        var run = Run.Of(["larder", .. words]);
        Assert.Equal((ExitCode.CommandLine, ""), (run.ExitCode, run.Output));
        Assert.NotEmpty(run.Messages);
    }

    [Fact]
    public void Larder_LongName_IsRefused() => Assert.Contains("200", Run.Of("larder", new string('a', 500)).Messages, StringComparison.Ordinal);

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\u202ebutter\u0007")]
    [InlineData("../../etc/passwd")]
    public void Larder_HostileWords_DoNotSteerTheTerminal(string words)
    {
        var run = Run.Of("larder", words);
        Assert.DoesNotContain('\u202e', run.Output);
        Assert.DoesNotContain('\u0007', run.Output);
        Assert.Equal(ExitCode.Done, run.ExitCode);
    }
}
