using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>What is laid into a dough while it is shaped, and what is poured over it.</summary>
public class FillingTests
{
    private const string Plain = """
        doughwright: 1
        title: Filled loaf
        make: 1 loaf of 845 g
        home:
          air: 21 C
          altitude: 5 m
          oven: fan
        parts:
          dough:
            strong white flour: 500 g
            water: 330 g, at 28 C
            salt: 10 g
            instant yeast: 5 g
        steps:
          mix:
            of: dough
            hands: 10 min
            way: by hand
            vessel: steel bowl, 500 g
            measured: 26 C
          bulk:
            of: dough
            vessel: steel bowl, 500 g
            cover: covered
            ends: at 2 times its volume
            measured: 90 min
            cue: at the tape
          shape:
            of: dough
            hands: 10 min
          proof:
            of: dough
            cover: cloth
            measured: 60 min
            cue: springs back slowly
          bake:
            of: dough
            oven: 200 C fan
            measured: 35 min
            cue: brown
        """;

    private static string With(string filling, string steps = "") => Plain
        .Replace("steps:\n", $"  filling:\n{filling}\nsteps:\n{steps}", StringComparison.Ordinal);

    private static Rehearsal Of(string text, Kitchen? kitchen = null)
    {
        var reading = RecipeText.Read(text);
        Assert.DoesNotContain(reading.Findings, finding => finding.Grade == Grade.Error);
        return Rehearser.Rehearse(reading.Recipe!, Larder.Shipped, new() { Kitchen = kitchen });
    }

    private static Rehearsal Ring(string? kitchen = null, Func<string, string>? change = null)
    {
        var text = Texts.Read("demo/recipes/pilot-ring.yaml");
        return Of(change is null ? text : change(text), kitchen is null ? null : KitchenText.Read(Texts.Read($"demo/kitchens/{kitchen}.yaml")).Kitchen);
    }

    private static double Ends(Rehearsal rehearsal, string step) => rehearsal.FindStep(step)!.EndTemperature!.Value.Celsius;

    private static IEnumerable<string> Kinds(Rehearsal rehearsal) => rehearsal.Findings.Select(finding => finding.Kind);

    /// <summary>
    /// A calorimeter: dough and water meet at the mean of their heat. Flour 1.80 kJ/kgK (handbook), water 4.18 (steam tables); salt and yeast
    /// are too little to matter.
    /// </summary>
    [Theory]
    [InlineData(60)]
    [InlineData(5)]
    public void PieceAndFilling_MeetAtTheMeanOfTheirHeat(double celsius)
    {
        var dough = Ends(Of(Plain), "shape");
        var filled = Ends(Of(With($"    water: 200 g, at {celsius} C")), "shape");
        const double OfDough = (500 * 1.80) + (330 * 4.18) + (15 * 1.5);
        const double OfFilling = 200 * 4.18;
        Assert.Equal(((OfDough * dough) + (OfFilling * celsius)) / (OfDough + OfFilling), filled, 0.3);
    }

    /// <summary>What is warmer goes on warmer: the proof of a piece with a cold filling takes longer elsewhere, where nothing was measured.</summary>
    [Fact]
    public void ColdFilling_MakesTheProofLonger_InAnotherKitchen()
    {
        var kitchen = RecipeText.Read(Plain).Recipe!.Home with { Trays = 3 };
        var text = With("    water: 200 g, at 21 C");
        var recipe = RecipeText.Read(text).Recipe!;
        double Minutes(double celsius) => Rehearser.Rehearse(recipe, Larder.Shipped, new()
        {
            Kitchen = kitchen,
            At = new Dictionary<string, Temperature> { ["filling/water"] = Temperature.FromCelsius(celsius) },
        }).FindStep("proof")!.Time!.Value.Likely.Minutes;
        Assert.True(Minutes(5) > Minutes(21) * 1.1);
        Assert.True(Minutes(40) < Minutes(21) * 0.9);
    }

    /// <summary>The filling is written first and made last: it cools and is laid in at once, and nobody keeps it warm through the bulk.</summary>
    [Fact]
    public void Filling_IsReadyWhenTheDoughIsShaped_WhereverItIsWritten()
    {
        const string Steps = "  boil:\n    kind: cook\n    of: filling\n    where: hob\n    vessel: pot\n    ends: after 5 min\n"
            + "  chill:\n    kind: cool\n    of: filling\n    vessel: steel bowl, 150 g\n    cover: covered\n    ends: at 30 C\n";
        var rehearsal = Of(With("    water: 100 g\n    sugar: 50 g", Steps));
        var chill = rehearsal.FindStep("chill")!;
        Assert.Equal(rehearsal.FindStep("shape")!.Start!.Value.Minutes, chill.Start!.Value.Minutes + chill.Time!.Value.Likely.Minutes, 1e-6);
    }

    [Fact]
    public void UnknownFilling_IsTold_AndTheRestIsComputedWithoutIt()
    {
        var rehearsal = Of(With("    moon dust: 200 g"));
        Assert.Contains("filling-heat-not-known", Kinds(rehearsal));
        Assert.Equal(Ends(Of(Plain), "shape"), Ends(rehearsal, "shape"), 1e-9);
    }

    [Fact]
    public void WarmFilling_IsAWarning_SoonerInADoughOfButter()
    {
        Assert.Contains("filling-too-warm", Kinds(Of(With("    water: 200 g, at 60 C"))));
        Assert.DoesNotContain("filling-too-warm", Kinds(Of(With("    water: 200 g, at 35 C"))));
        static string Warm(string text) => text.Replace("    ends: at 10 C\n    measured: 55 min on 22 November\n", "    ends: at 33 C\n", StringComparison.Ordinal);
        Assert.Contains("filling-too-warm-for-butter", Kinds(Ring(change: Warm)));
        Assert.DoesNotContain("filling-too-warm-for-butter", Kinds(Ring()));
    }

    /// <summary>The tray goes into the fridge with what lies on it: it takes heat once.</summary>
    [Fact]
    public void Tray_TakesHeatOnce()
    {
        var ring = Ring("summer");
        Assert.Equal(Ends(ring, "spread"), ring.FindStep("cold")!.StartTemperature!.Value.Celsius, 1e-9);
        Assert.True(ring.FindStep("spread")!.StartTemperature!.Value.Celsius < 95);
    }

    [Theory]
    [InlineData(null, false)]
    [InlineData("winter-cottage", false)]
    [InlineData("mountain", false)]
    [InlineData("classroom", false)]
    [InlineData("summer", true)]
    public void Ring_IsWarnedOfItsButter_WhereTheProofStandsTooWarm(string? kitchen, bool warned) =>
        Assert.Equal(warned, Kinds(Ring(kitchen)).Contains("place-too-warm-for-butter"));

    [Fact]
    public void WarmButterDough_IsAWarning()
    {
        static string Warm(string text) => text.Replace("measured: 18 C on 21 November", "measured: 27 C on 21 November", StringComparison.Ordinal);
        Assert.Contains("dough-too-warm-for-butter", Kinds(Ring(change: Warm)));
        Assert.DoesNotContain("dough-too-warm-for-butter", Kinds(Ring()));
    }

    /// <summary>A cooked filling has the clock of any cooked part: six hours on the table are told, the way of the recipe is not.</summary>
    [Fact]
    public void CookedFilling_HasTheSafetyClock()
    {
        static string Left(string text) => text.Replace("    where: fridge\n    vessel: steel tray, 300 g\n    depth: 1 cm\n    cover: covered\n    ends: at 10 C\n    measured: 55 min on 22 November", "    ends: after 6 h", StringComparison.Ordinal);
        Assert.Contains("warm-for-too-long", Kinds(Ring(change: Left)));
        Assert.DoesNotContain(Kinds(Ring()), kind => kind.StartsWith("warm-for", StringComparison.Ordinal));
    }

    /// <summary>Stirring is no kneading.</summary>
    [Fact]
    public void Glaze_IsAsWarmAsWhatGoesIn() => Assert.Equal(21, Ends(Ring(), "stir"), 1e-9);

    /// <summary>Of a dough that is mixed twice one mix tells how far it is off, and no vessel is no tool.</summary>
    [Fact]
    public void Ring_HasNothingToldTwice_AndNoToolThatIsNone()
    {
        Assert.Single(Kinds(Ring("summer")), kind => kind.StartsWith("dough-temperature-missed", StringComparison.Ordinal));
        Assert.DoesNotContain("tool-not-listed", RecipeChecks.Of(Ring().Recipe).Select(finding => finding.Kind));
    }

    /// <summary>Plums, raw, 87.23 g water in 100 g (USDA 09279): 260 g cooked down to 185 g keep their 33.2 g of solids.</summary>
    [Fact]
    public void FruitCookedDown_KeepsItsSolids()
    {
        var plums = Ring().Formula.FindComponent("filling")!.Lines.Single(line => line.Id == "plums");
        Assert.Equal(185 - (260 * (1 - 0.8723)), plums.Water!.Value.Grams, 0.05);
        var bought = Ring().Formula.Buy.Single(item => item.Name == "plums");
        Assert.Equal(260 / 0.94, bought.ToBuy!.Value.Grams, 0.01);
    }
}
