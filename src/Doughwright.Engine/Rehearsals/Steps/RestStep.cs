using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// A rest, or a preferment that is left for hours: the author's own time. It drifts towards the air meanwhile, and a dough rises all along, before its
/// bulk too.
/// </summary>
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
        return stated with
        {
            After = RiseSpell.After(input, before, drift, minutes, keeps: null),
            EndCelsius = drift.End,
            Spell = RiseSpell.Resting(input, before, body, minutes.Central),
            Way = () => DriftWay.Of(input, body, start, minutes.Central, before.Dough?.State),
        };
    }
}
