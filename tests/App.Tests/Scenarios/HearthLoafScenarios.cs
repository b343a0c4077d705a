namespace Doughwright.App.Tests.Scenarios;

/// <summary>A lean loaf on a poolish, in the kitchens that come with the program. Sources: common practice, no source, unless said.</summary>
public class HearthLoafScenarios
{
    private static readonly string Loaf = House.Demo("hearth-loaf.yaml");

    private static Scene In(params string[] options) => Scene.RehearseFile(Loaf, options);

    /// <summary>Salt, water, yeast and preferment as the trade has them for a lean hearth loaf.</summary>
    [Fact]
    public void Formula_IsSound()
    {
        var formula = Scene.Formula(Loaf);
        Assert.InRange(formula.Percent("salt")!.Value, 1.8, 2.0);
        Assert.InRange(formula.Percent("trueWater")!.Value, 68, 72);
        Assert.InRange(formula.Line("poolish", "instant-yeast").GetProperty("percent").GetDouble(), 0.05, 0.15);
    }

    /// <summary>The author baked it static in an oven with a fan: an oven of the same kind is set the same way, and so is one without a fan.</summary>
    [Theory]
    [InlineData("classroom")]
    [InlineData("summer")]
    [InlineData("winter-cottage")]
    public void Oven_IsSetAsTheAuthorSetIt(string kitchen)
    {
        var dial = In("--kitchen", kitchen).Step("bake").GetProperty("dial");
        Assert.Equal("static", dial.GetProperty("mode").GetString());
        Assert.Equal(230, dial.GetProperty("celsius").GetInt32());
    }

    [Fact]
    public void Poolish_DriftsToTheRoom_AndJoinsAsWarmAsItIs()
    {
        var cold = In("--air", "17C");
        Assert.Equal(17, cold.Step("ripen").GetProperty("endCelsius").GetDouble(), 0.3);
        Assert.True(In("--air", "17C", "--at", "poolish=24C").Mixed("dough") > cold.Mixed("dough") + 2);
    }

    /// <summary>
    /// Ripe as far as at home: about half as fast again for every five degrees (source: ripening-window), which makes 13 h some 18 h at 17 °C and some
    /// 8 h at 30 °C. The time at home is the author's.
    /// </summary>
    [Theory]
    [InlineData("classroom", "measured", 13, 13)]
    [InlineData("winter-cottage", "computed", 16.5, 19.5)]
    [InlineData("summer", "computed", 6, 9.5)]
    public void Poolish_RipensByTheWarmthOfItsRoom(string kitchen, string basis, double atLeast, double atMost)
    {
        var ripen = In("--kitchen", kitchen).Step("ripen");
        Assert.Equal(basis, ripen.GetProperty("basis").GetString());
        var minutes = ripen.GetProperty("minutes").GetDouble();
        Assert.InRange(minutes / 60, atLeast, atMost);
        Assert.InRange(ripen.GetProperty("ripeEarliestMinutes").GetDouble(), 0.8 * minutes, 0.9 * minutes);
        Assert.InRange(ripen.GetProperty("ripeLatestMinutes").GetDouble(), 1.1 * minutes, 1.2 * minutes);
    }

    [Fact]
    public void Poolish_InARoomThatCoolsAtNight_RipensLater()
    {
        var night = In("--air", "21C@20:00,17C@21:00,21C@08:00", "--start", "20:00").Minutes("ripen")!.Value;
        Assert.InRange(night, (13 * 60) + 60, In("--air", "17C").Minutes("ripen")!.Value - 60);
    }

    private static Scene Fixed(params string[] options) =>
        Scene.RehearseText(Scene.Exchange(File.ReadAllText(Loaf), "    ends: ripe\n    measured: 13 h on 16 November\n", "    ends: after 13 h\n"), options);

    /// <summary>A fixed time is the author's. Four degrees are a note; nine are a warning, because the poolish has long fallen.</summary>
    [Theory]
    [InlineData("winter-cottage", "rest-not-carried-cold", "hint")]
    [InlineData("summer", "ripens-far-sooner", "warning")]
    public void FixedTime_IsKept_AndSaysSo(string kitchen, string kind, string grade)
    {
        var scene = Fixed("--kitchen", kitchen);
        Assert.Equal(13 * 60, scene.Minutes("ripen")!.Value, 1e-9);
        Assert.Equal("stated", scene.Step("ripen").GetProperty("basis").GetString());
        Assert.Equal(grade, scene.Finding(kind, "steps.ripen").GetProperty("grade").GetString());
    }

    [Fact]
    public void FixedTime_InAVeryColdRoom_IsFarFromRipe() =>
        Assert.Equal("warning", Fixed("--air", "15C").Finding("ripens-far-later", "steps.ripen").GetProperty("grade").GetString());

    /// <summary>Heating that is off at night is felt, though the evening is as warm as at home.</summary>
    [Fact]
    public void FixedTime_InARoomThatCoolsAtNight_IsToldByTheNight() =>
        Assert.Contains("rest-not-carried-cold", Fixed("--air", "21C@20:00,17C@21:00,21C@08:00", "--start", "20:00").Kinds);

    [Fact]
    public void Mountain_TheSameShortRest_IsNoFinding() =>
        Assert.DoesNotContain(In("--kitchen", "mountain").Kinds, kind => kind.StartsWith("r", StringComparison.Ordinal) && kind != "raw-flour");

    /// <summary>Water is what a baker warms or cools for a dough, never the ripe poolish. Source: additive-rule.</summary>
    [Theory]
    [InlineData("winter-cottage", "dough-temperature-missed", "Let water go in at 38")]
    [InlineData("summer", "dough-temperature-missed-ice", "of the water be ice and the rest from the tap")]
    public void DoughMissed_OffersWater(string kitchen, string kind, string offer) =>
        Assert.Contains(offer, In("--kitchen", kitchen).Finding(kind, "steps.mix").GetProperty("wayOut").GetString(), StringComparison.Ordinal);

    [Fact]
    public void Offer_GivesTheDoughOfHome()
    {
        var cottage = In("--kitchen", "winter-cottage", "--dough", "24C", "--free", "water");
        Assert.Equal(24, cottage.Mixed("dough")!.Value, 1e-6);
        Assert.Equal(38, cottage.Asked("water")!.Value, 1.5);
        Assert.DoesNotContain("yeast-meets-heat", cottage.Kinds);
    }

    /// <summary>No step cools a poolish, so what is asked of it is taken, and told.</summary>
    [Fact]
    public void Poolish_AskedToGoInCold_GoesInCold()
    {
        var asked = In("--dough", "20C", "--free", "poolish");
        Assert.Equal(20, asked.Mixed("dough")!.Value, 1e-6);
        Assert.Equal("hint", asked.Finding("taken-as-asked", "steps.ripen").GetProperty("grade").GetString());
        Assert.DoesNotContain("taken-as-asked", In().Kinds);
    }

    /// <summary>Water boils at 96 °C at 1,200 m, so nobody waits for the 97 °C of the coast. Source: iapws-if97.</summary>
    [Fact]
    public void Mountain_CoreIsCarriedAsAShare()
    {
        var mountain = In("--kitchen", "mountain");
        Assert.Equal(93.2, mountain.Step("bake").GetProperty("endCelsius").GetDouble(), 0.3);
        Assert.Contains("done at 93", mountain.Finding("core-carried", "steps.bake").GetProperty("message").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("core-carried", In("--kitchen", "summer").Kinds);
    }

    /// <summary>Folds go with the growth they had at home, so they stay inside a bulk that is half as long.</summary>
    [Fact]
    public void Folds_StayInsideAShortBulk()
    {
        var quick = In("--air", "30C", "--altitude", "2500m");
        var folds = quick.Step("bulk").GetProperty("events").EnumerateArray().Select(fold => fold.GetProperty("afterMinutes").GetDouble()).ToList();
        Assert.Equal(2, folds.Count);
        Assert.True(quick.Minutes("bulk") < 90, "the second fold at home comes later than this whole bulk");
        Assert.True(folds[0] < folds[1] && folds[1] < quick.Minutes("bulk"));
    }

    [Fact]
    public void BenchRest_GoesOnRising_AndShapingPressesTheGasOut()
    {
        var dough = Pictures.Strips.Rehearsed.Of("hearth-loaf").Course().FindStrand("dough")!;
        (double Before, double After) VolumeOver(string step)
        {
            var points = dough.Stretches.Single(stretch => stretch.Step == step).Points;
            return (points[0].Volume!.Value, points[^1].Volume!.Value);
        }

        var (bench, preshape, shape) = (VolumeOver("bench"), VolumeOver("preshape"), VolumeOver("shape"));
        Assert.True(bench.After > bench.Before + 0.02, $"the rest takes it from {bench.Before:0.000} to {bench.After:0.000}");
        Assert.True(preshape.After < preshape.Before - 0.02, $"rounding takes it from {preshape.Before:0.000} to {preshape.After:0.000}");
        Assert.True(shape.After < shape.Before - 0.02, $"shaping takes it from {shape.Before:0.000} to {shape.After:0.000}");
        Assert.True(shape.After > 1, "some of the gas stays");
    }
}
