using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>Steps that cannot end in this kitchen, with what they settle at and the way out.</summary>
internal static class NeverEnds
{
    public static IEnumerable<Finding> Of(RunResult here)
    {
        foreach (var (step, outcome) in here.Each())
        {
            if (outcome.SettlesAtCelsius is { } settles)
            {
                yield return About(step, outcome, here.Stage, Temperature.FromCelsius(settles));
            }
        }
    }

    private static Finding About(Step step, StepOutcome outcome, Stage stage, Temperature settles)
    {
        if (step.Kind is StepKind.Bulk or StepKind.Proof)
        {
            return StepFindings.About(step, "never-rises-here", Grade.Warning, false, ("settles", settles));
        }

        var target = stage.Request.At.TryGetValue(step.Component, out var asked) ? asked : (step.End as StepEnd.AtTemperature)?.Temperature ?? settles;
        if (step.Kind == StepKind.Warm)
        {
            return StepFindings.About(step, "never-warms-here", Grade.Warning, false, ("target", target), ("settles", settles));
        }

        return WaysOut.Of(step, outcome, stage, target) switch
        {
            { Bath: { } bath, Fridge: { } fridge } => StepFindings.About(
                step, "never-ends-here", Grade.Warning, false, ("target", target), ("settles", settles), ("bath", bath), ("fridge", fridge)),
            { Fridge: { } fridge } => StepFindings.About(
                step, "never-ends-here-but-in-fridge", Grade.Warning, false, ("target", target), ("settles", settles), ("fridge", fridge)),
            _ => StepFindings.About(step, "never-ends-here-at-all", Grade.Warning, false, ("target", target), ("settles", settles)),
        };
    }
}
