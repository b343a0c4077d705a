using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>
/// What spoils, out of the fridge: the time is that of the whole way, not of one step. The limits (icing 2 h, filling 4 h, dough 6 h) are
/// common practice, no source; the sums are counted by hand.
/// </summary>
public class LeftOutTests
{
    private const string Head = """
        doughwright: 1
        title: Milk loaf
        make: 1 loaf of 800 g
        home:
          air: 21 C
          fridge: 5 C
          oven: fan
        parts:

        """;

    private const string Dough = """
          dough:
            strong white flour: 500 g
            milk: 320 g, at 25 C
            salt: 10 g
            instant yeast: 2 g

        """;

    private const string Bake = """
          bake:
            of: dough
            oven: 200 C fan
            measured: 35 min
            cue: brown

        """;

    private static string Step(string id, string kind, string of, string ends, string more = "") =>
        $"  {id}:\n    kind: {kind}\n    of: {of}\n    ends: {ends}\n{more}";

    private static string Mix(string of = "dough") => $"  mix {of}:\n    kind: mix\n    of: {of}\n    hands: 10 min\n    way: by hand\n";

    private static IReadOnlyList<Finding> Told(string parts, string steps, Temperature? air = null)
    {
        var reading = RecipeText.Read(Head + parts + "steps:\n" + steps);
        Assert.DoesNotContain(reading.Findings, finding => finding.Grade == Grade.Error);
        var request = air is { } room ? new Request { Kitchen = new Kitchen { Air = AirProfile.Constant(room) } } : Request.Home;
        return [.. Rehearser.Rehearse(reading.Recipe!, Larder.Shipped, request).Findings
            .Where(finding => finding.Kind is "perishable-left-out" or "cooked-filling-left-out" or "dairy-out-too-long")];
    }

    private static Finding One(IReadOnlyList<Finding> told, string kind, string place, double minutes)
    {
        var finding = Assert.Single(told);
        Assert.Equal((kind, place, true), (finding.Kind, finding.Place, finding.Safety));
        Assert.Equal(minutes, Assert.IsType<Duration>(finding.Arguments["time"]).Minutes, 1);
        return finding;
    }

    [Fact]
    public void TimeOfManySteps_AddsUp_NoneOfThemLongByItself()
    {
        var steps = Mix() + Step("rest", "rest", "dough", "after 2 h") + Step("bulk", "bulk", "dough", "after 150 min")
            + Step("shape", "shape", "dough", "after 10 min") + Step("proof", "proof", "dough", "after 2 h");
        One(Told(Dough, steps + Bake), "perishable-left-out", "steps.bulk", 10 + 120 + 150 + 10 + 120);
        Assert.Empty(Told(Dough.Replace("milk", "water", StringComparison.Ordinal), steps + Bake));
        Assert.Empty(Told(Dough, (steps + Bake).Replace("after 150 min", "after 90 min", StringComparison.Ordinal)));
    }

    [Fact]
    public void Fridge_DoesNotCount()
    {
        var steps = Mix() + Step("bulk", "bulk", "dough", "after 3 h") + Step("chill", "rest", "dough", "after 12 h", "    where: fridge\n")
            + Step("proof", "proof", "dough", "after 150 min") + Bake;
        Assert.Empty(Told(Dough, steps));
        One(Told(Dough, steps.Replace("    where: fridge\n", "", StringComparison.Ordinal)), "perishable-left-out", "steps.chill", 10 + 180 + 720 + 150);
    }

    [Fact]
    public void PrefermentOfMilk_BringsItsOwnTime()
    {
        const string Parts = "  sponge:\n    kind: preferment\n    strong white flour: 150 g\n    milk: 150 g, at 25 C\n    instant yeast: 0.5 g\n"
            + "  dough:\n    sponge: all of it\n    strong white flour: 350 g\n    water: 170 g, at 25 C\n    salt: 10 g\n    instant yeast: 2 g\n";
        var steps = Mix("sponge") + Step("ripen", "rest", "sponge", "after 4 h") + Mix() + Step("bulk", "bulk", "dough", "after 2 h")
            + Step("proof", "proof", "dough", "after 1 h") + Bake;
        One(Told(Parts, steps), "perishable-left-out", "steps.ripen", 10 + 240 + 10 + 120 + 60);
        Assert.Empty(Told(Parts.Replace("milk", "water", StringComparison.Ordinal), steps));
    }

    /// <summary>The minutes are those of the rehearsal: the same text stands longer in a cold room, where the dough rises slowly.</summary>
    [Fact]
    public void Minutes_AreThoseOfTheKitchenItIsMadeIn()
    {
        var steps = Mix() + "  bulk:\n    of: dough\n    cover: covered\n    ends: doubled\n    measured: 4 h\n" + Bake;
        Assert.Empty(Told(Dough, steps));
        Assert.Contains(Told(Dough, steps, Temperature.FromCelsius(14)), finding => finding.Kind == "perishable-left-out");
        Assert.Empty(Told(Dough, steps, Temperature.FromCelsius(30)));
    }

    [Fact]
    public void CookedFilling_IsCountedFromItsPotToTheOven()
    {
        const string Filling = "  filling:\n    name: Custard\n    milk: 200 g\n    egg yolk: 40 g\n    sugar: 40 g\n";
        var steps = Mix() + Step("bulk", "bulk", "dough", "after 1 h") + Step("cook", "cook", "filling", "after 10 min", "    where: hob\n    vessel: pot\n")
            + Step("stand", "rest", "filling", "after 2 h") + "  shape:\n    of: dough\n    hands: 30 min\n" + Step("proof", "proof", "dough", "after 2 h") + Bake;
        var water = Dough.Replace("milk", "water", StringComparison.Ordinal);
        One(Told(water + Filling, steps), "cooked-filling-left-out", "steps.stand", 120 + 30 + 120);
        Assert.Empty(Told(water + Filling, steps.Replace("filling\n    ends: after 2 h\n", "filling\n    ends: after 2 h\n    where: fridge\n", StringComparison.Ordinal)));
    }

    [Fact]
    public void CookedCream_ThatGoesIntoTheBakedPiece_StandsAsLongAsAnIcing()
    {
        const string Filling = "  filling:\n    name: Custard\n    milk: 200 g\n    egg yolk: 40 g\n    sugar: 40 g\n";
        var steps = Mix() + Step("bulk", "bulk", "dough", "after 1 h") + Bake + Step("cool", "cool", "dough", "after 30 min")
            + Step("cook", "cook", "filling", "after 10 min", "    where: hob\n    vessel: pot\n") + Step("stand", "rest", "filling", "after 90 min")
            + Step("fill", "finish", "filling", "after 10 min") + Step("keep", "finish", "dough", "after 1 h");
        var water = Dough.Replace("milk", "water", StringComparison.Ordinal);
        One(Told(water + Filling, steps), "dairy-out-too-long", "steps.stand", 90 + 10 + 60);
    }
}
