using System.Text.Json;

namespace Doughwright.App.Tests.Scenarios;

/// <summary>
/// The potato rolls in other kitchens. Windows were set before the model was written; the figures in their middle are what a model of this kind gives with
/// its defaults: expected from the model, not evidence.
/// </summary>
public class AwayScenarios
{
    private static readonly string[] Asked26 = ["--dough", "26C", "--free", "potato,scald"];

    [Fact]
    public void Cold_AsWritten()
    {
        var cold = Scene.Rehearse("--air", "17C");
        Assert.Equal(23.9, cold.Mixed("dough")!.Value, 0.7);
        Assert.InRange(cold.Minutes("bulk")!.Value, 122, 150);
        Assert.Equal(28, cold.Step("mash").GetProperty("endCelsius").GetDouble(), 0.5);
        Assert.Equal("warning", cold.Finding("dough-temperature-missed", "steps.mix").GetProperty("grade").GetString());
        Assert.Equal(105, cold.Step("bulk").GetProperty("homeMinutes").GetDouble(), 1e-9);
    }

    [Fact]
    public void Cold_Neglected()
    {
        var cold = Scene.Rehearse("--air", "17C", "--at", "scald=17C", "--at", "potato=17C");
        Assert.Equal(18.5, cold.Mixed("dough")!.Value, 0.7);
        Assert.InRange(cold.Minutes("bulk")!.Value, 155, 215);
    }

    [Fact]
    public void Cold_PutRight()
    {
        var right = Scene.Rehearse([.. Asked26, "--air", "17C"]);
        Assert.Equal(26, right.Mixed("dough")!.Value, 1e-6);
        Assert.Equal(32, right.Asked("potato", "scald")!.Value, 2.0);
        Assert.Equal(47, right.Asked("potato")!.Value, 2.0);
        Assert.Equal(48, right.Asked("scald")!.Value, 2.0);
        Assert.InRange(right.Minutes("bulk")!.Value, 105, 135);
        Assert.InRange(right.Minutes("proof")!.Value, 83, 112);
        Assert.Equal(2, right["solve"][0].GetProperty("lines").GetArrayLength());
        Assert.True(right["solve"][0].GetProperty("offered").GetBoolean());
    }

    /// <summary>Yeast is kept below 40 °C; it is judged by the warmest part in the bowl with it, unmixed.</summary>
    [Theory]
    [InlineData("potato")]
    [InlineData("scald")]
    public void Cold_OneHotPart_IsFlagged(string part)
    {
        var answer = Scene.Rehearse([.. Asked26, "--air", "17C"]).Answer(part);
        Assert.False(answer.GetProperty("offered").GetBoolean());
        var yeast = answer.GetProperty("meets").EnumerateArray().Single(meeting => meeting.GetProperty("what").GetString() == "instant yeast");
        Assert.Equal(answer.GetProperty("celsius").GetDouble(), yeast.GetProperty("celsius").GetDouble(), 1e-9);
        Assert.True(yeast.GetProperty("celsius").GetDouble() > 40);
        var done = Scene.Rehearse("--air", "17C", "--at", $"{part}=48C");
        Assert.Equal("warning", done.Finding("yeast-meets-heat", "steps.mix").GetProperty("grade").GetString());
    }

    [Fact]
    public void Cold_WithAProofingPlaceAtHome() =>
        Assert.InRange(Scene.Rehearse([.. Asked26, "--air", "17C", "--proof", "28C"]).Minutes("proof")!.Value, 49, 64);

    [Fact]
    public void Hot_AsItSettles()
    {
        var hot = Scene.Rehearse("--air", "30C");
        foreach (var step in new[] { "mash", "scald" })
        {
            Assert.Null(hot.Minutes(step));
            Assert.Equal(30, hot.Step(step).GetProperty("settlesAtCelsius").GetDouble(), 1e-9);
            var never = hot.Finding("never-ends-here", $"steps.{step}");
            Assert.Contains("30\u00a0°C", never.GetProperty("message").GetString(), StringComparison.Ordinal);
            Assert.Matches(
                @"bath of tap water, about .*min, or in the fridge, about .*min",
                never.GetProperty("wayOut").GetString());
        }

        Assert.Equal("warning", hot.Finding("butter-too-soft", "parts.dough.butter").GetProperty("grade").GetString());
        Assert.Equal(31.5, hot.Mixed("dough")!.Value, 0.7);
        Assert.InRange(hot.Minutes("bulk")!.Value, 64, 81);
        Assert.Equal(JsonValueKind.Null, hot["totalMinutes"].ValueKind);
    }

    /// <summary>Goes in at 28 °C, however it got there.</summary>
    [Fact]
    public void Hot_WithTheBath()
    {
        var bath = Scene.Rehearse("--air", "30C", "--at", "scald=28C", "--at", "potato=28C");
        Assert.Equal(30.5, bath.Mixed("dough")!.Value, 0.7);
        Assert.Equal(74, bath.Minutes("bulk")!.Value, 8.5);
        Assert.True(bath.Minutes("bulk") > Scene.Rehearse("--air", "30C").Minutes("bulk"));
    }

    /// <summary>Pressure of the standard atmosphere, boiling point of its tables.</summary>
    [Fact]
    public void Mountain()
    {
        var mountain = Scene.Rehearse("--altitude", "1200m");
        Assert.Equal(87.72, mountain["kitchen"].GetProperty("pressureKilopascals").GetDouble(), 0.005);
        Assert.Equal(95.98, mountain["kitchen"].GetProperty("boilsCelsius").GetDouble(), 0.02);
        Assert.Equal(90, mountain.Minutes("bulk")!.Value, 4.0);
        Assert.Equal(26, mountain.Mixed("dough")!.Value, 0.1);
        Assert.True(mountain.Mixed("scald") < Scene.Rehearse().Mixed("scald") - 1);
    }

    [Fact]
    public void Mountain_CoreAboveBoiling_IsRefusedWithTheReason()
    {
        var refused = Scene.RehearseFile(House.Text("potato-rolls-core-above-boiling.yaml"));
        Assert.Equal(1, refused.ExitCode);
        Assert.Null(refused.Minutes("bake"));
        var finding = refused.Finding("core-above-boiling", "steps.bake");
        Assert.Equal("error", finding.GetProperty("grade").GetString());
        Assert.Contains("boils at 96", finding.GetProperty("message").GetString(), StringComparison.Ordinal);
        Assert.Contains("1,200\u00a0m", finding.GetProperty("message").GetString(), StringComparison.Ordinal);
    }

    /// <summary>Pairs that people dial; a dough converts exactly.</summary>
    [Fact]
    public void Dials()
    {
        var dial = Scene.Rehearse("--oven", "static").Step("bake").GetProperty("dial");
        Assert.Equal("static", dial.GetProperty("mode").GetString());
        Assert.Equal((190, 375), (dial.GetProperty("celsius").GetInt32(), dial.GetProperty("fahrenheit").GetInt32()));
        Assert.Equal(170, dial.GetProperty("others")[0].GetProperty("celsius").GetInt32());
        Assert.Equal(25, Scene.Rehearse("--dough", "77F", "--free", "potato").Mixed("dough")!.Value, 1e-9);
        Assert.Contains(
            "comes to 77\u00a0°F",
            Run.Of("rehearse", House.PotatoRolls, "--dough", "25C", "--free", "potato", "--measures", "us").Output,
            StringComparison.Ordinal);
    }

    [Fact]
    public void TwoTrays_InAStaticOven_AreAFinding()
    {
        var finding = Scene.Rehearse("--oven", "static").Finding("two-trays-static-oven", "steps.bake");
        Assert.Contains("swap", finding.GetProperty("wayOut").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("two-trays-static-oven", Scene.Rehearse().Kinds);
    }

    [Fact]
    public void WinterCottage_PutRight()
    {
        var cottage = Scene.Rehearse([.. Asked26, "--air", "17C", "--altitude", "1200m", "--oven", "static"]);
        Assert.InRange(cottage.Minutes("bulk")!.Value, 88, 113);
        Assert.InRange(cottage.Minutes("proof")!.Value, 71, 96);
    }
}
