using System.Diagnostics;
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
    private static Rehearsal Of(string text) => Rehearser.Rehearse(RecipeText.Read(text).Recipe!, Larder.Shipped);

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
}
