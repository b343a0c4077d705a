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
        var after = RiseSpell.After(input, before, drift, minutes, keeps: null);
        return stated with
        {
            After = after,
            Growth = after.Dough?.Growth,
            Why = () => WhyOf(before, after, drift, minutes.Central),
            EndCelsius = drift.End,
            Spell = RiseSpell.Resting(input, before, body, minutes.Central),
            Way = () => DriftWay.Of(input, body, start, minutes.Central, before.Dough?.State),
        };
    }

    /// <summary>The author's minutes, with what becomes of the dough in them: how far it rises, and how warm it still is inside.</summary>
    private static Reason WhyOf(Portion before, Portion after, DriftRun drift, double minutes)
    {
        List<Reason> parts =
        [
            Reason.Leaf("outermost-shell-ends", drift.ShellEnd(drift.History.Shares.Length - 1), "°C"),
            Reason.Leaf("innermost-shell-ends", drift.ShellEnd(0), "°C"),
        ];
        if (before.Dough is { } dough && after.Dough is { } risen)
        {
            parts.InsertRange(0, [Reason.Leaf("rises-from", dough.Growth.Central, ""), Reason.Leaf("rises-to", risen.Growth.Central, "")]);
        }

        return Reason.From("stated-by-author", minutes, "min", parts);
    }
}
