using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>A filling that nobody cools is hot when it is wanted, because the time line makes it just in time.</summary>
public class HotFillingTests
{
    private static readonly string Ring = Texts.Read("demo/recipes/pilot-ring.yaml");

    private static string Without(string from, string to)
    {
        var (start, end) = (Ring.IndexOf(from, StringComparison.Ordinal), Ring.IndexOf(to, StringComparison.Ordinal));
        return Ring[..start] + Ring[end..];
    }

    private static Rehearsal Of(string text) => Rehearser.Rehearse(RecipeText.Read(text).Recipe!, Larder.Shipped, Request.Home);

    [Fact]
    public void FillingStraightFromTheHob_IsToldWhereItIsCooked_WithTheTimeToCool()
    {
        var told = Assert.Single(Of(Without("  spread:\n", "  roll:\n")).Findings, finding => finding.Kind == "filling-not-cooled");
        Assert.Equal("steps.cook", told.Place);
        Assert.InRange(Assert.IsType<Duration>(told.Arguments["bath"]).Minutes, 1, 60);
        Assert.DoesNotContain(Of(Ring).Findings, finding => finding.Kind == "filling-not-cooled");
    }

    [Fact]
    public void WayOut_WritesAStepThatCools_AndTheFindingIsGone()
    {
        var text = Without("  spread:\n", "  roll:\n");
        var finding = Of(text).Findings.Single(told => told.Kind == "filling-not-cooled");
        var remedy = Assert.Single(Engine.Remedies.Remedies.For(finding, RecipeText.Read(text).Recipe!));
        var after = Of(remedy.CarryOut(text));
        Assert.Contains(after.Steps, step => step is { Kind: StepKind.Cool, Component: "filling" });
        Assert.DoesNotContain(after.Findings, told => told.Kind is "filling-not-cooled" or "filling-too-warm-for-butter");
    }

    /// <summary>The way out is a step that cools it, and then it is made so much earlier and is cool.</summary>
    [Fact]
    public void StepThatCools_MakesItEarlier_AndColdEnough()
    {
        var hot = RecipeText.Read(Without("  spread:\n", "  roll:\n")).Recipe!;
        var before = Rehearser.Rehearse(hot, Larder.Shipped, Request.Home);
        var cook = hot.Steps.Single(step => step.Id == "cook");
        var cooled = hot with
        {
            Steps = [.. hot.Steps.SelectMany(step => step.Id == "cook"
                ? new[] { step, new Step { Id = "cool-it", Name = "Cool it", Kind = StepKind.Cool, Component = "filling", Vessel = cook.Vessel, End = new StepEnd.AtTemperature(Temperature.FromCelsius(28)), Position = Position.None } }
                : [step])],
        };
        var after = Rehearser.Rehearse(cooled, Larder.Shipped, Request.Home);
        double Ready(Rehearsal run) => run.FindStep("roll")!.Start!.Value.Minutes - run.FindStep("cook")!.Start!.Value.Minutes;
        Assert.True(Ready(after) > Ready(before) + 20);
        Assert.DoesNotContain(after.Findings, finding => finding.Kind is "filling-not-cooled" or "filling-too-warm-for-butter");
    }

    [Fact]
    public void HotCreamIntoABakedPiece_IsAWarning()
    {
        var text = Without("  spread:\n", "  roll:\n");
        var cook = text[text.IndexOf("  stone:\n", StringComparison.Ordinal)..text.IndexOf("  roll:\n", StringComparison.Ordinal)];
        var late = text.Replace(cook, "", StringComparison.Ordinal).Replace("  stir:\n", cook + "  fill:\n    kind: finish\n    of: filling\n    hands: 5 min\n  stir:\n", StringComparison.Ordinal);
        Assert.Contains(Of(late).Findings, finding => finding is { Kind: "filling-not-cooled", Grade: Grade.Warning, Place: "steps.cook" });
    }
}
