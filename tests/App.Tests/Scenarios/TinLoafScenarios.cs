namespace Doughwright.App.Tests.Scenarios;

/// <summary>A tin loaf that is only an idea: nobody has baked it, so nothing is measured. Sources: common practice, no source, unless said.</summary>
public class TinLoafScenarios
{
    private static readonly string Loaf = House.Demo("tin-loaf.yaml");

    private static Scene In(params string[] options) => Scene.RehearseFile(Loaf, options);

    [Fact]
    public void Formula_IsSound()
    {
        var formula = Scene.Formula(Loaf);
        Assert.InRange(formula.Percent("salt")!.Value, 1.8, 2.0);
        Assert.InRange(formula.Percent("trueWater")!.Value, 63, 69);
        Assert.InRange(formula.Percent("sugar")!.Value, 3, 8);
    }

    [Fact]
    public void Nothing_IsSaidToBeMeasured()
    {
        Assert.DoesNotContain("measured:", File.ReadAllText(Loaf), StringComparison.Ordinal);
        Assert.All(In()["steps"].EnumerateArray(), step => Assert.NotEqual("measured", step.GetProperty("basis").GetString()));
    }

    /// <summary>Who has never baked it knows less: the range of each rise and of the bake is wide, and holds what such loaves usually take.</summary>
    [Theory]
    [InlineData("bulk", 60, 90, 0.5)]
    [InlineData("proof", 45, 70, 0.45)]
    [InlineData("bake", 32, 45, 0.5)]
    public void Home_HasAWideRange(string step, double usualLow, double usualHigh, double width)
    {
        var home = In();
        var (low, high) = (home.Step(step).GetProperty("minutesLow").GetDouble(), home.Step(step).GetProperty("minutesHigh").GetDouble());
        Assert.True(low <= usualLow && usualHigh <= high, $"{low} to {high}");
        Assert.True(high - low > width * home.Minutes(step), $"{low} to {high}");
    }

    [Theory]
    [InlineData("bulk", "computed")]
    [InlineData("proof", "stated")]
    [InlineData("bake", "computed")]
    [InlineData("scald", "computed")]
    public void Home_SaysWhereEachTimeIsFrom(string step, string basis) => Assert.Equal(basis, In().Step(step).GetProperty("basis").GetString());

    /// <summary>Six minutes of hands begin the scald; they are not how long it cools.</summary>
    [Fact]
    public void Scald_CoolsLongerThanHandsAreAtIt()
    {
        var home = In();
        Assert.InRange(home.Minutes("scald")!.Value, 60, 130);
        Assert.Equal(6, home.Step("scald").GetProperty("handsMinutes").GetDouble(), 1e-9);
        Assert.DoesNotContain("cooling-time-impossible", home.Kinds);
    }

    [Fact]
    public void BoilingMilk_IsASafetyHint() =>
        Assert.True(In().Finding("boiling-liquid", "parts.scald.milk").GetProperty("safety").GetBoolean());

    /// <summary>60 °C burns skin within seconds. Source: skin-burns.</summary>
    [Theory]
    [InlineData("at 80 C", true)]
    [InlineData("at 59 C", false)]
    public void HotMilk_IsASafetyHint_FromSixtyDegrees(string warmth, bool told)
    {
        var scene = Scene.RehearseText(Scene.Exchange(File.ReadAllText(Loaf), "135 g, boiling", $"135 g, {warmth}"));
        Assert.Equal(told, scene.Kinds.Contains("hot-liquid"));
    }

    /// <summary>Milk written at 95 °C boils away from 86.6 °C on at 4,000 m: it goes in boiling, and that is told. Source: iapws-if97.</summary>
    [Fact]
    public void MilkHotterThanItBoilsHere_GoesInBoiling()
    {
        var text = Scene.Exchange(File.ReadAllText(Loaf), "135 g, boiling", "135 g, at 95 C");
        var high = Scene.RehearseText(text, "--altitude", "4000m");
        Assert.Equal("warning", high.Finding("liquid-above-boiling", "parts.scald.milk").GetProperty("grade").GetString());
        Assert.Equal(In("--altitude", "4000m").Mixed("scald")!.Value, high.Mixed("scald")!.Value, 1e-9);
        Assert.DoesNotContain("liquid-above-boiling", Scene.RehearseText(text).Kinds);
    }

    /// <summary>A core asked at the coast is carried as a share: the bake of the same loaf is no longer on the mountain.</summary>
    [Fact]
    public void Mountain_CoreAsked_IsCarriedAsAShare()
    {
        var mountain = In("--kitchen", "mountain");
        Assert.Equal(91.3, mountain.Step("bake").GetProperty("endCelsius").GetDouble(), 0.3);
        Assert.Equal(In().Minutes("bake")!.Value, mountain.Minutes("bake")!.Value, 3.0);
        Assert.Contains("core-carried", mountain.Kinds);
        Assert.DoesNotContain("core-above-boiling", In("--altitude", "2500m").Kinds);
    }

    /// <summary>So high that the core is low for any bread there is one word about it, not two that disagree.</summary>
    [Fact]
    public void VeryHigh_OneFindingAboutTheCore()
    {
        var high = In("--altitude", "4000m").Kinds;
        Assert.Contains("core-low-here", high);
        Assert.DoesNotContain("core-carried", high);
    }

    [Theory]
    [InlineData("winter-cottage", "static", 200)]
    [InlineData("summer", "fan", 180)]
    public void Dial_GoesWithTheOven(string kitchen, string mode, int celsius)
    {
        var dial = In("--kitchen", kitchen).Step("bake").GetProperty("dial");
        Assert.Equal((mode, celsius), (dial.GetProperty("mode").GetString(), dial.GetProperty("celsius").GetInt32()));
    }

    [Fact]
    public void Proof_GoesByItsCue()
    {
        var cottage = In("--kitchen", "winter-cottage");
        Assert.Equal("computed", cottage.Step("proof").GetProperty("basis").GetString());
        Assert.Equal("a finger's width over the rim", cottage.Step("proof").GetProperty("cue").GetString());
        Assert.True(In("--air", "17C").Minutes("proof") > In().Minutes("proof"));
        Assert.True(In("--air", "26C").Minutes("proof") < In().Minutes("proof"));
    }
}
