using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// Dividing and shaping: the author's own minutes. The pieces drift and go on rising; shaping presses most of the gas out at the end, and a
/// filling is laid in.
/// </summary>
internal static class ShapeStep
{
    public static StepOutcome Run(StepInput input)
    {
        var shaped = LaidIn.To(input, Shaped(input));
        var after = shaped.After with { Shape = PieceOf.Shaped(input.Step, input.Stage) ?? shaped.After.Shape };
        return shaped with { After = after with { PiecesTouch = Bodies.VolumeOfPiece(after) is { } volume && PieceOf.Touch(after, volume, input.Stage) } };
    }

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
        return stated with
        {
            After = RiseSpell.After(input, divided, drift, minutes, stage.Priors.Rise.ShapingKeeps),
            EndCelsius = end,
            Spell = RiseSpell.Resting(input, divided, body, minutes.Central),
            Way = before.Dough is { } dough
                ? () => DriftWay.OfShaping(input, body, start, minutes.Central, dough.State)
                : () => DriftWay.Of(input, body, start, minutes.Central, null),
        };
    }
}
