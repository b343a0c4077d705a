using System.Text.Json;

namespace Doughwright.App.Tests.Scenarios;

/// <summary>The potato rolls where they were written. Numbers and tolerances were set before the model was written.</summary>
public class HomeScenarios
{
    [Fact]
    public void HomeIsHome_Exactly_WithRangeAndCueBeside()
    {
        var home = Scene.Rehearse();
        Assert.Equal(0, home.ExitCode);
        Assert.Equal(26.0, home.Mixed("dough")!.Value, 1e-9);
        foreach (var (step, minutes) in new[] { ("bulk", 105), ("proof", 70), ("bake", 19) })
        {
            var rehearsed = home.Step(step);
            Assert.Equal(minutes, home.Minutes(step)!.Value, 1e-9);
            Assert.True(rehearsed.GetProperty("minutesLow").GetDouble() < minutes);
            Assert.True(rehearsed.GetProperty("minutesHigh").GetDouble() > minutes);
            Assert.NotEmpty(rehearsed.GetProperty("cue").GetString()!);
            Assert.Equal("measured", rehearsed.GetProperty("basis").GetString());
        }

        Assert.Equal(95, home.Minutes("mash")!.Value, 1e-9);
        Assert.Equal(100, home.Minutes("scald")!.Value, 1e-9);
    }

    [Fact]
    public void SameQuestion_SameBytes()
    {
        string[] options = ["--air", "17C", "--altitude", "1200m", "--dough", "26C", "--free", "potato,scald"];
        Assert.Equal(Scene.Rehearse(options).Run.Output, Scene.Rehearse(options).Run.Output);
    }

    /// <summary>Computed by hand from the table's waters.</summary>
    [Fact]
    public void TrueFormula()
    {
        var formula = Scene.Formula(House.PotatoRolls);
        Assert.Equal(400, formula["flourGrams"].GetDouble(), 1e-9);
        Assert.Equal(801, formula["doughGrams"].GetDouble(), 1e-9);
        Assert.Equal(25.0, formula.Percent("hydration")!.Value, 0.05);
        Assert.Equal(67.8, formula.Percent("trueWater")!.Value, 0.05);
        Assert.Equal(20.0, formula.Percent("scaldedFlour")!.Value, 0.05);
        Assert.Equal(7.5, formula.Percent("sugar")!.Value, 0.05);
        Assert.Equal(8.2, formula.Percent("trueSugar")!.Value, 0.05);
        Assert.Equal(12.5, formula.Percent("fat")!.Value, 0.05);
        Assert.Equal(1.75, formula.Percent("salt")!.Value, 0.005);
        foreach (var (line, grams) in new[] { ("scald", 100.0), ("potato", 123.9), ("egg", 38.1), ("butter", 9.0), ("instant-yeast", 0.2) })
        {
            Assert.Equal(grams, formula.Line("dough", line).GetProperty("waterGrams").GetDouble(), 0.05);
        }
    }

    /// <summary>4 g instant, each within a tenth: the spread between makers' tables.</summary>
    [Fact]
    public void Yeast_InItsThreeForms()
    {
        var yeast = Scene.Formula(House.PotatoRolls)["yeast"];
        Assert.Equal(4, yeast.GetProperty("instantGrams").GetDouble(), 1e-9);
        Assert.Equal(12.1, yeast.GetProperty("freshGrams").GetDouble(), 1.21);
        Assert.Equal(4.8, yeast.GetProperty("activeDryGrams").GetDouble(), 0.48);
    }

    /// <summary>Poolish baguette of a published course (fermentation sheet, 9.2; masses read): from a text to its percentages.</summary>
    [Fact]
    public void PublishedPoolish_FromAText()
    {
        var formula = Scene.FormulaOfText("""
            doughwright: 1
            title: Baguette with a poolish
            home:
              air: 21 C
            parts:
              poolish:
                kind: preferment
                strong white flour: 468 g
                water: 468 g
                instant yeast: 0.3 g
              dough:
                strong white flour: 900 g
                water: 468 g
                instant yeast: 9 g
                salt: 27 g
                poolish: all of it

            """);
        Assert.Equal(34.21, formula.Percent("prefermentedFlour")!.Value, 0.005);
        Assert.Equal(68.42, formula.Percent("hydration")!.Value, 0.005);
        Assert.Equal(1.974, formula.Percent("salt")!.Value, 0.0005);
    }

    /// <summary>
    /// About 1.6 K, expected from the model. The window is what was allowed to the parts beforehand: 0.6 °C on both move this dough by 0.3 °C.
    /// </summary>
    [Fact]
    public void MeasuredDough_SolvesTheHandlingRise()
    {
        var why = Scene.Rehearse().Step("mix").GetProperty("why");
        Assert.Equal("dough-temperature", why.GetProperty("kind").GetString());
        Assert.Equal(26, why.GetProperty("value").GetDouble(), 1e-9);
        Assert.Equal(1.6, Part(why, "handling-rise").GetProperty("value").GetDouble(), 0.3);
    }

    [Theory]
    [InlineData("31 C")]
    [InlineData("22 C")]
    public void HandlingRiseOutsideItsPrior_IsAFinding(string measured)
    {
        var scene = Scene.RehearseWith("measured: 26 C on 9 November", $"measured: {measured} on 9 November");
        Assert.Equal("warning", scene.Finding("handling-rise-unusual", "steps.mix").GetProperty("grade").GetString());
        Assert.DoesNotContain("handling-rise-unusual", Scene.Rehearse().Kinds);
    }

    /// <summary>Expected from the model, not evidence. Another way of mixing brings its own rise, +3 K by machine.</summary>
    [Theory]
    [InlineData(28.1)]
    [InlineData(27.4, "--bowl", "mix=none")]
    [InlineData(30.2, "--bowl", "mix=steel:1800g")]
    [InlineData(25.1, "--variant", "mix=machine")]
    public void AskedFor26_BothParts(double expected, params string[] options)
    {
        var scene = Scene.Rehearse(["--dough", "26C", "--free", "potato,scald", .. options]);
        Assert.Equal(expected, scene.Asked("scald", "potato")!.Value, 0.6);
        Assert.Equal(26, scene.Mixed("dough")!.Value, 1e-6);
    }

    [Fact]
    public void OneKelvinOnThePotato_MovesTheDough()
    {
        var moved = Scene.Rehearse("--at", "potato=29C").Mixed("dough")!.Value - Scene.Rehearse("--at", "potato=28C").Mixed("dough")!.Value;
        Assert.Equal(0.25, moved, 0.005);
    }

    private static JsonElement Part(JsonElement why, string kind) =>
        why.GetProperty("parts").EnumerateArray().Single(part => part.GetProperty("kind").GetString() == kind);
}
