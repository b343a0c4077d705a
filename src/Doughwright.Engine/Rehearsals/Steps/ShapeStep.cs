using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// Dividing and shaping: the author's own minutes. The pieces drift and go on rising; shaping presses most of the gas out at the end, and a
/// filling is laid in.
/// </summary>
internal static class ShapeStep
{
    public static StepOutcome Run(StepInput input) => LaidIn.To(input, Shaped(input));

    private static StepOutcome Shaped(StepInput input)
    {
        var stage = input.Stage;
        var before = input.Before ?? Matter.Raw(input.Step.Component, stage);
        var divided = before with { Pieces = stage.Recipe.Make?.Pieces ?? 1 };
        var stated = PlainSteps.Stated(input, divided, before.Celsius, before.Celsius);
        if (before.Celsius is not { } start || stated.Minutes is not { Central: > 0 } minutes)
        {
            return stated;
        }

        if (Bodies.Of(input.Step, divided) is not { } body)
        {
            return stated with { After = divided with { Celsius = null }, EndCelsius = null };
        }

        var drift = Rising.Drift(input, body, start, Duration.FromMinutes(minutes.Central));
        var end = drift.End;
        if (before.Dough is not { } dough)
        {
            return stated with
            {
                After = divided with { Celsius = end },
                EndCelsius = end,
                Way = () => DriftWay.Of(input, body, start, minutes.Central, null),
            };
        }

        var state = dough.State.Copy();
        state.Begin(RiseStage.ForMinutes(minutes.Values));
        state.Advance(drift.History.Celsius, drift.History.Step);
        state.PressOut(stage.Priors.Rise.ShapingKeeps);
        return stated with
        {
            After = divided with { Celsius = end, Dough = dough with { State = state } },
            EndCelsius = end,
            Way = () => DriftWay.OfShaping(input, body, start, minutes.Central, dough.State),
        };
    }
}
