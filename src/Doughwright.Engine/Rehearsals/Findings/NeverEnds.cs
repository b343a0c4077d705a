using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>Steps that cannot end in this kitchen, with what they settle at and the way out.</summary>
internal static class NeverEnds
{
    private const double RoundingKelvins = 1e-6;

    public static IEnumerable<Finding> Of(RunResult here)
    {
        foreach (var (step, outcome) in here.Each())
        {
            if (outcome.SettlesAtCelsius is { } settles)
            {
                yield return About(step, outcome, here.Stage, Temperature.FromCelsius(settles));
            }
            else if (Short(step, outcome, here.Stage) is { } told)
            {
                yield return told;
            }
        }
    }

    /// <summary>
    /// A target a little beyond the air counts as reached a little on this side of it (<see cref="CoolingTarget"/>). It is not, and that is said.
    /// </summary>
    private static Finding? Short(Step step, StepOutcome outcome, Stage stage)
    {
        if (step.Kind is not (StepKind.Cool or StepKind.Warm or StepKind.Scald) || step.IsCooked || outcome.EndCelsius is not { Central: var ends }
            || TargetOf(step, stage) is not { } target)
        {
            return null;
        }

        var missing = step.Kind == StepKind.Warm ? target.Celsius - ends : ends - target.Celsius;
        return missing > CoolingTarget.Nearness + RoundingKelvins
            ? StepFindings.About(step, "ends-short-here", Grade.Hint, false, ("target", target), ("ends", Temperature.FromCelsius(ends)))
            : null;
    }

    private static Temperature? TargetOf(Step step, Stage stage) =>
        stage.Request.At.TryGetValue(step.Component, out var asked) ? asked : (step.End as StepEnd.AtTemperature)?.Temperature;

    private static Finding About(Step step, StepOutcome outcome, Stage stage, Temperature settles)
    {
        if (step.End is StepEnd.WhenRipe)
        {
            return StepFindings.About(step, "never-ripens-here", Grade.Warning, false, ("settles", settles));
        }

        if (step.Kind is StepKind.Bulk or StepKind.Proof)
        {
            return StepFindings.About(step, "never-rises-here", Grade.Warning, false, ("settles", settles));
        }

        var target = TargetOf(step, stage) ?? settles;
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
