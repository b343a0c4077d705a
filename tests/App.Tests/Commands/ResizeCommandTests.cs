using System.Text.Json;
using System.Text.RegularExpressions;
using Doughwright.Engine.TextForm;
using Json.Schema;

namespace Doughwright.App.Tests.Commands;

/// <summary>resize on the command line: a text on standard output, what changed on standard error, one wish at a time.</summary>
public partial class ResizeCommandTests
{
    private static Run Resize(params string[] options) => Run.Of(["resize", House.PotatoRolls, .. options]);

    [Theory]
    [InlineData("resize-potato-rolls-24", "potato-rolls.yaml", "--pieces", "24")]
    [InlineData("resize-potato-rolls-heavier", "potato-rolls.yaml", "--piece", "110g", "--take", "egg=1")]
    [InlineData("resize-hearth-loaf-1500g", "hearth-loaf.yaml", "--dough", "1500g")]
    [InlineData("resize-tin-loaf-tin", "tin-loaf.yaml", "--tin", "25x11x8cm:30x11x10cm")]
    public void TextAndReport_AreAsApproved(string name, string file, params string[] options)
    {
        var run = Run.Of(["resize", House.Demo(file), .. options]);
        Assert.Equal(0, run.ExitCode);
        Assert.All(run.Messages.Split('\n'), line => Assert.InRange(App.Text.Page.WidthOf(line), 0, App.Text.Page.Width));
        Assert.DoesNotContain('{', run.Messages);
        Golden.Check(name, run.Output + "\n--- standard error\n" + run.Messages);
    }

    [Fact]
    public void Output_IsARecipeText_ThatReadsBack()
    {
        var run = Resize("--pieces", "24");
        var reading = RecipeText.Read(run.Output);
        Assert.True(reading.Understood && reading.Sound);
        Assert.Equal(24, reading.Recipe!.Make!.Pieces);
        Assert.Equal(0, Run.WithInput(run.Output, "rehearse", "-").ExitCode);
    }

    [Fact]
    public void Comments_StayWhereTheyStood()
    {
        var text = File.ReadAllText(House.PotatoRolls).Replace("salt: 7 g", "salt: 7 g # fine sea salt", StringComparison.Ordinal);
        Assert.Contains("salt: 14 g # fine sea salt", Run.WithInput(text, "resize", "-", "--pieces", "20").Output, StringComparison.Ordinal);
    }

    /// <summary>The puree by its kind, its part by name, and the potato in it are the same 160 g.</summary>
    [Theory]
    [InlineData("puree=210g", 1.3125)]
    [InlineData("potato=210g", 1.3125)]
    [InlineData("butter=75g", 1.5)]
    [InlineData("strong white flour=1kg", 2.5)]
    public void Have_FindsPartsAndLines(string have, double factor)
    {
        using var json = JsonDocument.Parse(Resize("--have", have, "--json").Output);
        Assert.Equal(factor, json.RootElement.GetProperty("factor").GetDouble(), 1e-12);
    }

    [Theory]
    [InlineData("--pieces 24 --dough 1500g", "More than one size")]
    [InlineData("", "what size")]
    [InlineData("--pieces 24g", "--pieces")]
    [InlineData("--pieces 0", "--pieces")]
    [InlineData("--dough 1500", "g, kg")]
    [InlineData("--dough 26C", "--dough")]
    [InlineData("--dough 501kg", "500")]
    [InlineData("--have puree", "--have")]
    [InlineData("--have purree=210g", "puree")]
    [InlineData("--tin 30x11", "30x11x10cm")]
    [InlineData("--tin big", "30x11x10cm")]
    [InlineData("--tray 40", "40x30cm")]
    [InlineData("--trays 0", "--trays")]
    [InlineData("--piece 6kg", "5,000")]
    [InlineData("--pieces 24 --take egg=two", "--take")]
    [InlineData("--pieces 24 --take eg=2", "egg")]
    [InlineData("--pieces 24 --take egg=99", "2 and 3")]
    [InlineData("--pieces 20 --take egg=1", "Offered: 2")]
    [InlineData("--pieces 24 --take egg@doh=2", "doh")]
    [InlineData("--pieces 24 --take egg@scald=2", "egg")]
    [InlineData("--tin 25x11x8cm:2x2x2cm", "lies outside 20 g")]
    [InlineData("--pieces 24 --kitchen atick", "winter-cottage")]
    public void WrongCommandLine_IsTwo_AndSaysWhy(string options, string said)
    {
        var run = Resize(options.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(2, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.Contains(said, string.Join(' ', run.Messages.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact]
    public void TinWithoutReference_IsRefused_WithTheReason()
    {
        var run = Run.Of("resize", House.Demo("tin-loaf.yaml"), "--tin", "30x11x10cm");
        Assert.Equal(1, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.Contains("how large its own tin is", run.Messages.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Fits(Run.Of("resize", House.Demo("tin-loaf.yaml"), "--tin", "30x11x10cm", "--json").Output);
    }

    [Fact]
    public void TinStatedInTheText_IsTheReference()
    {
        var text = File.ReadAllText(House.Demo("tin-loaf.yaml")).Replace("vessel: steel tin, 500 g", "vessel: steel tin, 500 g, 25 x 11 x 8 cm", StringComparison.Ordinal);
        var run = Run.WithInput(text, "resize", "-", "--tin", "30x11x10cm");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("make: 1 loaf of 1395 g", run.Output, StringComparison.Ordinal);
        Assert.Contains("vessel: steel tin, 30 x 11 x 10 cm", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void TwelveFaults_AreNotUnderstood() => Assert.Equal(3, Run.Of("resize", House.Text("potato-rolls-twelve-faults.yaml"), "--pieces", "24").ExitCode);

    [Fact]
    public void Json_FitsItsSchema_AndNothingElseIsOnStandardOutput()
    {
        var run = Resize("--pieces", "24", "--json");
        Assert.Empty(run.Messages);
        Fits(run.Output);
        Fits(Resize("--dough", "1234g", "--json", "--kitchen", "mountain").Output);
        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal(Resize("--pieces", "24").Output, json.RootElement.GetProperty("text").GetString());
    }

    [Fact]
    public void EveryWish_StandsInItsPage()
    {
        var page = File.ReadAllText(House.PathTo("docs", "resize.md"));
        Assert.All(new App.Commands.Options().Resize.Options.Select(option => option.Name), option => Assert.Contains($"`{option}", page, StringComparison.Ordinal));
    }

    /// <summary>Every line "--wish value" of the page is one that the program takes.</summary>
    [Fact]
    public void ExamplesOfThePage_Work()
    {
        var page = File.ReadAllText(House.PathTo("docs", "resize.md"));
        var tin = File.ReadAllText(House.Demo("potato-rolls.yaml"))
            .Replace("trays: 2\n    cover: cloth", "trays: 2\n    vessel: steel tin, 500 g, 25 x 11 x 7 cm\n    cover: cloth", StringComparison.Ordinal)
            .Replace("trays: 2\n    measured", "trays: 2\n    vessel: steel tray, 300 g, 30 x 30 cm\n    measured", StringComparison.Ordinal);
        var examples = Example().Matches(page).Select(match => match.Groups["what"].Value).Distinct().Where(what => !what.StartsWith("--kitchen", StringComparison.Ordinal)).ToList();
        Assert.InRange(examples.Count, 8, 12);
        foreach (var example in examples)
        {
            string[] words = [.. example.Replace("\"", "", StringComparison.Ordinal).Split(' ', 2)];
            string[] wish = words[0] == "--take" ? ["--pieces", "24"] : [];
            Assert.Equal((example, 0), (example, Run.WithInput(tin, ["resize", "-", .. words, .. wish]).ExitCode));
        }
    }

    [Fact]
    public void Help_NamesEveryOption()
    {
        var help = Run.Of("resize", "--help").Output;
        Assert.All(new App.Commands.Options().Resize.Options, option => Assert.Contains(option.Name, help, StringComparison.Ordinal));
        Assert.DoesNotContain("help-", help, StringComparison.Ordinal);
        Assert.Contains("--dough 1500g", help, StringComparison.Ordinal);
        Assert.Contains("--dough 26C", Run.Of("rehearse", "--help").Output, StringComparison.Ordinal);
    }

    private static void Fits(string json)
    {
        var schema = JsonSchema.FromText(File.ReadAllText(House.PathTo("tests", "data", "schema", "resize.json")));
        using var parsed = JsonDocument.Parse(json);
        var result = schema.Evaluate(parsed.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        var errors = (result.Details ?? []).Where(detail => detail.Errors is not null)
            .Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Select(error => error.Value))}");
        Assert.True(result.IsValid, string.Join('\n', errors));
    }

    [GeneratedRegex("`(?<what>--[a-z]+ [^`]+)`")]
    private static partial Regex Example();
}
