using System.Diagnostics;
using Doughwright.Engine.Formulas.Resizing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>What no kitchen has is told, the run does without it, and everything else is worked out as ever.</summary>
public class ImpossibleTextTests
{
    private static Rehearsal Of(string text) => Taken.Rehearsal(text);

    private static Rehearsal Of(string piece, string instead) => Of(Texts.PotatoRollsWith(piece, instead));

    private static readonly string[] Scales = ["999999999 min", "20000 d"];

    public static TheoryData<string> Endless => [.. Scales];

    [Theory]
    [MemberData(nameof(Endless))]
    public void HandsOutsideTheirLimits_AreToldAndLeftOut(string hands)
    {
        var text = Texts.PotatoRollsWith("    hands: 15 min\n", $"    hands: {hands}\n");
        Assert.Contains(RecipeText.Read(text).Findings, finding => finding is { Kind: "hands-outside-limits", Grade: Grade.Error });
        var clock = Stopwatch.StartNew();
        var rehearsal = Of(text);
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 5);
        Assert.Null(rehearsal.FindStep("shape")!.Time);
        Assert.Null(rehearsal.Total);
        Assert.Contains(rehearsal.Findings, finding => finding.Id == "time-not-known@steps.shape");
    }

    [Theory]
    [MemberData(nameof(Endless))]
    public void FoldsOutsideTheirLimits_AreToldAndLeftOut(string after)
    {
        var text = Texts.PotatoRollsWith("at 45 min, 2 min by hand", $"at {after}, 2 min by hand");
        Assert.Contains(RecipeText.Read(text).Findings, finding => finding is { Kind: "hands-outside-limits", Grade: Grade.Error });
        Assert.Empty(Of(text).FindStep("bulk")!.Events);
    }

    /// <summary>One line of a part that cannot be weighed, and it is the only one.</summary>
    [Fact]
    public void PartThatWeighsNothing_IsTold_AndHasNoTemperature()
    {
        var rehearsal = Of("    potato: 160 g,", "    potato: 160 cups,");
        Assert.Equal(Mass.Zero, rehearsal.Formula.FindComponent("potato")!.Mass);
        Assert.Null(rehearsal.FindStep("boil")!.EndTemperature);
        Assert.Single(rehearsal.Findings, finding => finding.Id == "part-weighs-nothing@parts.potato");
        Assert.DoesNotContain("NaN", Picture.Of(rehearsal), StringComparison.Ordinal);
    }

    /// <summary>All of nothing is nothing: the dough round it is worked out. So much of nothing is something that nobody knows.</summary>
    [Theory]
    [InlineData("all of it", true)]
    [InlineData("100 g", false)]
    public void Dough_WithAPartThatWeighsNothing_HasATemperatureWhereNoneOfItIsAskedFor(string taken, bool known)
    {
        var rehearsal = Of(Texts.PotatoRollsWith("    potato: 160 g,", "    potato: 160 cups,").Replace("    potato: all of it\n", $"    potato: {taken}\n", StringComparison.Ordinal));
        Assert.Equal(known, HeatOf(rehearsal));
        Assert.DoesNotContain("NaN", Picture.Of(rehearsal), StringComparison.Ordinal);
    }

    private static bool HeatOf(Rehearsal rehearsal) => rehearsal.HeatOf("mix") is not null;

    [Fact]
    public void PartWithoutLines_HasNoTemperature()
    {
        var text = Texts.PotatoRolls.Replace("parts:\n", "parts:\n  crumbs:\n    kind: filling\n", StringComparison.Ordinal)
            .Replace("steps:\n", "steps:\n  grate:\n    kind: prepare\n    of: crumbs\n    hands: 3 min\n", StringComparison.Ordinal);
        var step = Of(text).FindStep("grate")!;
        Assert.Null(step.StartTemperature);
        Assert.Null(step.EndTemperature);
        Assert.Equal(3, step.Time!.Value.Likely.Minutes, 1e-9);
    }

    /// <summary>What is open cools by evaporation in frost too.</summary>
    [Theory]
    [InlineData(-5)]
    [InlineData(-1)]
    public void OpenCooling_InAKitchenInFrost_HasATime(double celsius)
    {
        var kitchen = new Kitchen { Air = AirProfile.Constant(Temperature.FromCelsius(celsius)) };
        var text = Texts.Read("demo/recipes/pilot-ring.yaml");
        var rehearsal = Rehearser.Rehearse(RecipeText.Read(text).Recipe!, Larder.Shipped, new() { Kitchen = kitchen });
        var cooled = rehearsal.Steps.Where(step => step.Kind == StepKind.Cool && step.EndTemperature is not null).ToList();
        Assert.NotEmpty(cooled);
        Assert.All(cooled, step => Assert.NotNull(step.Time));
    }

    /// <summary>The author's kitchen with one thing changed has the author's fridge.</summary>
    [Fact]
    public void FridgeThatNoKitchenHas_IsLeftOutInEveryKitchen()
    {
        var recipe = RecipeText.Read(Texts.PotatoRollsWith("  fridge: 5 C\n", "  fridge: 9392 C\n")).Recipe!;
        var kitchen = recipe.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(17)) };
        var rehearsal = Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = kitchen });
        Assert.NotNull(rehearsal.Total);
        Assert.Equal(new Kitchen { Air = kitchen.Air }.Fridge, rehearsal.Kitchen.Fridge);
    }

    [Fact]
    public void WaterOfNoWeight_WarmsNoDough()
    {
        var text = Texts.Read("tests/data/corpus/sound/quay-loaf.yaml").Replace("water: 340 g, at 27 C", "water: 0 g, at 27 C", StringComparison.Ordinal);
        var rehearsal = Rehearser.Rehearse(RecipeText.Read(text).Recipe!, Larder.Shipped, new() { Dough = Temperature.FromCelsius(26) });
        Assert.All(rehearsal.Solutions, solution => Assert.Null(solution.Warmth));
    }

    /// <summary>A third as much yeast as flour, two days of shaping, and a warm room: yeast that leapt over its room came to no number.</summary>
    [Fact]
    public void DoughFullOfYeast_RisesOnAndOn_AndStaysANumber()
    {
        var text = Texts.Read("tests/data/corpus/sound/rich-loaf.yaml")
            .Replace("strong white flour: 450 g", "strong white flour: 48 g", StringComparison.Ordinal)
            .Replace("    hands: 12 min\n", "    hands: 3199.3 min\n", StringComparison.Ordinal);
        var recipe = RecipeText.Read(text).Recipe!;
        foreach (var celsius in (double[])[24, 28, 32])
        {
            var kitchen = recipe.Home with { Air = AirProfile.Constant(Temperature.FromCelsius(celsius)) };
            var rehearsal = Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = kitchen });
            Assert.DoesNotContain("NaN", Picture.Of(rehearsal), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void ScaleOutsideItsLimits_IsToldAndLeftOut()
    {
        var reading = RecipeText.Read(Texts.PotatoRollsWith("  scale: 1 g\n", "  scale: 0 g\n"));
        Assert.Contains(reading.Findings, finding => finding is { Kind: "scale-outside-limits", Grade: Grade.Error });
        Assert.Equal(Mass.FromGrams(1), reading.Recipe!.Home.Scale);
        Assert.NotNull(Resizing.Resize(reading.Recipe, Larder.Shipped, new(new ResizeWish.Dough(Mass.FromGrams(1234)))).Recipe);
    }
}
