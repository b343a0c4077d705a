using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>A rest, or a preferment that is left for hours: the author's own time. It drifts towards the air meanwhile.</summary>
internal static class RestStep
{
    public static StepOutcome Run(StepInput input) => input.Step.End is Recipes.StepEnd.WhenRipe ? RipenStep.Run(input) : Drifted(input);

    /// <summary>The author's own time, and the drift meanwhile.</summary>
    public static StepOutcome Drifted(StepInput input)
    {
        var before = input.Before ?? Matter.Raw(input.Step.Component, input.Stage);
        var stated = PlainSteps.Stated(input, before, before.Celsius, before.Celsius);
        if (before.Celsius is not { } start || stated.Minutes is not { Central: > 0 } minutes)
        {
            return stated;
        }

        if (Bodies.Of(input.Step, before) is not { } body)
        {
            return stated with { After = before with { Celsius = null }, EndCelsius = null };
        }

        var drift = Rising.Drift(input, body, start, Duration.FromMinutes(minutes.Central));
        var dough = before.Dough ?? Begun(input, before);
        if (dough is not null)
        {
            var state = dough.State.Copy();
            state.Begin(RiseStage.ForMinutes(minutes.Values));
            state.Advance(drift.History.Celsius, drift.History.Step);
            dough = dough with { State = state };
        }

        return stated with
        {
            After = before with { Celsius = drift.End, Dough = dough },
            EndCelsius = drift.End,
            Way = () => DriftWay.Of(input, body, start, minutes.Central, before.Dough?.State ?? Begun(input, before)?.State),
        };
    }

    /// <summary>What will be ripe in a later step begins to ripen in this one, in the fridge say.</summary>
    private static DoughState? Begun(StepInput input, Portion before)
    {
        var steps = input.Stage.Recipe.Steps;
        return steps.SkipWhile(step => step.Id != input.Step.Id).Any(step => step.Component == input.Step.Component && step.End is Recipes.StepEnd.WhenRipe)
            && RisePhase.Of(input, before) is { } phase
            ? phase.Started()
            : null;
    }
}
