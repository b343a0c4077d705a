using System.Diagnostics;
using System.Text.Json;

namespace Doughwright.App.Tests.Scenarios;

/// <summary>Kitchens and doughs at the limits and past them: an answer or an error with the limit, never a clamp, a NaN or a long wait.</summary>
public class EdgeScenarios
{
    /// <summary>A guard against hanging, not a measure of speed.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private static readonly string[] Asked = ["--dough", "26C", "--free", "potato,scald"];

    public static TheoryData<string[]> KitchensAtTheLimits => new(
    [
        ["--air", "-5C"],
        ["--air", "45C"],
        ["--altitude", "-430m"],
        ["--altitude", "5000m"],
        ["--fridge", "-2C"],
        ["--fridge", "12C"],
        ["--tap", "0C"],
        ["--air", "-5C", "--altitude", "5000m", "--oven", "static"],
        ["--air", "45C", "--altitude", "-430m", "--oven", "static"],
        ["--air", "45C", "--ingredients", "-5C"],
        ["--air", "-5C", "--proof", "60C"],
        ["--air", "-5C@00:00,45C@12:00", "--start", "11:00"],
        ["--air", "45C@00:00,-5C@12:00", "--start", "11:59"],
        ["--air", "-5C", .. Asked],
        ["--air", "45C", .. Asked],
        ["--at", "potato=-30C", "--at", "scald=100C"],
        ["--pour", "0C"],
        ["--dough", "150C", "--free", "potato"],
        ["--dough", "-30C", "--free", "scald"],
        ["--air", "0C", "--at", "scald=0C", "--at", "potato=0C"],
    ]);

    [Theory]
    [MemberData(nameof(KitchensAtTheLimits))]
    public void KitchenAtTheLimits_IsAnswered(string[] options) => Sound(() => Scene.Rehearse(options), 0, 1);

    [Theory]
    [InlineData("--air", "airCelsius", -5, "C")]
    [InlineData("--air", "airCelsius", 45, "C")]
    [InlineData("--altitude", "altitudeMetres", -430, "m")]
    [InlineData("--altitude", "altitudeMetres", 5000, "m")]
    [InlineData("--fridge", "fridgeCelsius", -2, "C")]
    [InlineData("--fridge", "fridgeCelsius", 12, "C")]
    public void KitchenAtTheLimits_IsTakenAsTyped(string option, string name, double value, string unit) =>
        Assert.Equal(value, Scene.Rehearse(option, FormattableString.Invariant($"{value}{unit}"))["kitchen"].GetProperty(name).GetDouble());

    [Theory]
    [InlineData("air-outside-limits", "  air: 21 C", "  air: -5.1 C")]
    [InlineData("air-outside-limits", "  air: 21 C", "  air: 45.1 C")]
    [InlineData("altitude-outside-limits", "  altitude: 5 m", "  altitude: -431 m")]
    [InlineData("altitude-outside-limits", "  altitude: 5 m", "  altitude: 5,001 m")]
    [InlineData("fridge-outside-limits", "  fridge: 5 C", "  fridge: -2.1 C")]
    [InlineData("fridge-outside-limits", "  fridge: 5 C", "  fridge: 12.1 C")]
    [InlineData("oven-outside-limits", "    oven: 170 C fan", "    oven: 79 C fan")]
    [InlineData("oven-outside-limits", "    oven: 170 C fan", "    oven: 331 C fan")]
    [InlineData("piece-outside-limits", "make: 10 rolls of 80 g", "make: 10 rolls of 4.9 g")]
    [InlineData("piece-outside-limits", "make: 10 rolls of 80 g", "make: 10 rolls of 5.1 kg")]
    [InlineData("step-outside-limits", "    measured: 105 min on 9 November", "    measured: 15 d on 9 November")]
    [InlineData("dough-outside-limits", "    strong white flour: 320 g", "    strong white flour: 501 kg")]
    public void TextPastALimit_IsAnErrorWithTheLimit(string kind, string line, string past)
    {
        var scene = Sound(() => Scene.RehearseWith(line, past), 1);
        var finding = Assert.Single(scene.Findings, finding => finding.GetProperty("kind").GetString() == kind);
        Assert.Equal("error", finding.GetProperty("grade").GetString());
        Assert.True(finding.GetProperty("line").GetInt32() > 0);
    }

    [Fact]
    public void DoughBelowTwentyGrams_IsAnError() => Assert.Contains("dough-outside-limits", Sound(() => Loaf(10, "1 loaf of 17 g"), 1).Kinds);

    [Theory]
    [InlineData(12, "1 bun of 20 g")]
    [InlineData(100, "34 rolls of 5 g")]
    [InlineData(2900, "1 loaf of 4.9 kg")]
    [InlineData(290_000, "100 loaves of 4.9 kg")]
    [InlineData(290_000, "95,000 crumbs of 5.1 g")]
    public void DoughAtTheLimits_IsAnswered(double flourGrams, string make)
    {
        var scene = Sound(() => Loaf(flourGrams, make), 0);
        Assert.Equal(110, scene.Minutes("bulk")!.Value, 1e-9);
        Assert.Equal(flourGrams > 12_000, scene.Kinds.Contains("large-dough"));
        Sound(() => Loaf(flourGrams, make, "--air", "5C", "--altitude", "4500m"), 0);
    }

    [Theory]
    [InlineData("14 d", "60 min")]
    [InlineData("110 min", "14 d")]
    [InlineData("1 min", "1 min")]
    [InlineData("0.01 min", "14 d")]
    [InlineData("14 d", "14 d")]
    public void ShortestAndLongestSteps_AreAnswered(string bulk, string proof)
    {
        var text = LoafText(500, "1 loaf of 850 g").Replace("measured: 110 min", $"measured: {bulk}", StringComparison.Ordinal)
            .Replace("measured: 60 min", $"measured: {proof}", StringComparison.Ordinal);
        Sound(() => Scene.RehearseText(text), 0, 1);
        Sound(() => Scene.RehearseText(text, "--air", "10C"), 0, 1);
        Sound(() => Scene.RehearseText(text, "--air", "35C", "--altitude", "3000m"), 0, 1);
    }

    [Theory]
    [InlineData("36 h")]
    [InlineData("14 d")]
    public void LongestRipening_IsAnswered(string time)
    {
        const string poolish = "  poolish:\n    kind: preferment\n    strong white flour: 100 g\n    water: 100 g\n    instant yeast: 0.1 g\n";
        var ripen = $"  ripen:\n    kind: rest\n    of: poolish\n    where: fridge\n    ends: after {time}\n";
        var text = LoafText(500, "1 loaf of 850 g")
            .Replace("parts:\n", "parts:\n" + poolish, StringComparison.Ordinal)
            .Replace("    salt:", "    poolish: all of it\n    salt:", StringComparison.Ordinal)
            .Replace("steps:\n", "steps:\n" + ripen, StringComparison.Ordinal);
        Sound(() => Scene.RehearseText(text), 0, 1);
        Sound(() => Scene.RehearseText(text, "--air", "26C", "--fridge", "8C"), 0, 1);
    }

    [Theory]
    [InlineData("80 C")]
    [InlineData("330 C")]
    public void OvenAtTheLimits_IsAnswered(string dial)
    {
        var text = LoafText(500, "1 loaf of 850 g").Replace("oven: 200 C fan", $"oven: {dial} fan", StringComparison.Ordinal);
        foreach (var options in new string[][] { [], ["--oven", "static"], ["--altitude", "5000m"], ["--air", "-5C"] })
        {
            Sound(() => Scene.RehearseText(text, options), 0, 1);
        }
    }

    public static TheoryData<string, string> HostileTexts => new()
    {
        { "ten megabytes", new string('a', 10_000_000) },
        { "ten megabytes of lines", string.Concat(Enumerable.Repeat("parts:\n", 1_500_000)) },
        { "20,000 levels", string.Concat(Enumerable.Range(0, 20_000).Select(level => new string(' ', level % 400) + "a:\n")) },
        { "20,000 dashes", string.Concat(Enumerable.Repeat("- ", 20_000)) },
        { "20,000 brackets", "title: " + new string('[', 20_000) },
        { "NUL", "doughwright: 1\ntitle: a\0b\n" },
        { "NULs only", new string('\0', 100_000) },
    };

    [Theory]
    [MemberData(nameof(HostileTexts))]
    public void HostileText_IsAFinding_InEveryCommand(string what, string text)
    {
        Assert.NotEmpty(what);
        foreach (var scene in new[] { Sound(() => Scene.FindingsOfText(text), 3), Sound(() => Scene.RehearseText(text), 3) })
        {
            Assert.NotEmpty(scene.Findings);
        }
    }

    private static Scene Sound(Func<Scene> act, params int[] codes)
    {
        var clock = Stopwatch.StartNew();
        var scene = act();
        Assert.True(clock.Elapsed < Patience, $"It took {clock.Elapsed}.");
        Assert.True(codes.Contains(scene.ExitCode), $"{scene.ExitCode}: {scene.Run.Output[^Math.Min(scene.Run.Output.Length, 2000)..]}");
        AssertFinite(scene.Json);
        Assert.DoesNotContain("NaN", scene.Run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", scene.Run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", scene.Run.Output, StringComparison.Ordinal);
        return scene;
    }

    private static void AssertFinite(JsonElement element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Number:
                Assert.True(double.IsFinite(element.GetDouble()), element.GetRawText());
                break;
            case JsonValueKind.Array:
                Assert.All(element.EnumerateArray(), AssertFinite);
                break;
            case JsonValueKind.Object:
                Assert.All(element.EnumerateObject(), property => AssertFinite(property.Value));
                break;
        }
    }

    private static Scene Loaf(double flourGrams, string make, params string[] options) => Scene.RehearseText(LoafText(flourGrams, make), options);

    private static string LoafText(double flourGrams, string make) => FormattableString.Invariant($"""
        doughwright: 1
        title: Plain loaf
        make: {make}
        home:
          air: 21 C
        parts:
          dough:
            strong white flour: {flourGrams} g
            water: {flourGrams * 0.68} g, from the tap
            salt: {flourGrams * 0.018} g
            instant yeast: {flourGrams * 0.006} g
        steps:
          mix:
            of: dough
            hands: 10 min
            way: by hand
            vessel: none
            measured: 21 C
          bulk:
            of: dough
            cover: covered
            ends: at 2 times its volume
            measured: 110 min
            cue: at the tape on the bowl
          shape:
            of: dough
            hands: 5 min
          proof:
            of: dough
            cover: cloth
            measured: 60 min
            cue: springs back slowly
          bake:
            of: dough
            oven: 200 C fan
            measured: 35 min
            cue: brown all over

        """);
}
