using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// The final proof. Nobody measures a shaped piece, so the author's minutes at home imply a growth, and that growth is what the pieces are
/// given elsewhere. A person goes by the cue.
/// </summary>
internal static class ProofStep
{
    public static StepOutcome Run(StepInput input)
    {
        var (step, stage) = (input.Step, input.Stage);
        var before = (input.Before ?? Matter.Raw(step.Component, stage)).Divided(stage, step.Component);
        if (RisePhase.Of(input, before) is not { } phase)
        {
            return RisePhase.NotComputed(input, before);
        }

        var authors = StatedTime.Of(step);
        if (input.IsHome && authors is { } minutes)
        {
            return AtHome(phase, minutes);
        }

        if (input.Anchor is { Growth: [var growth] } anchor)
        {
            return Elsewhere(phase, growth, anchor);
        }

        return step.End is StepEnd.AtGrowth { Times: var times }
            ? Elsewhere(phase, PerLane.Same(times, input.Lanes), null)
            : RisePhase.NotComputed(input, before);
    }

    private static StepOutcome AtHome(RisePhase phase, double authors)
    {
        var input = phase.Input;
        var minutes = phase.TimeError * authors;
        var step = phase.StepLength;
        var history = Rising.Drift(input, phase.Body, phase.Start, step, (int)Math.Ceiling(minutes.Values.Max() / step.Minutes)).History;
        var scale = phase.Before.Dough?.Scale ?? new PerLane(input.Stage.Priors.Rise.Scale);
        var state = phase.Begin(scale);
        var folds = RiseFolds.AtMinutes(input.Lanes);
        state.Begin(RiseStage.ForMinutes(minutes.Values, folds));
        state.Advance(history);
        var growth = new PerLane([.. state.Growth]);
        return phase.Outcome(state, scale, minutes, folds, input.Step.Measured?.Time is null ? Basis.Stated : Basis.Measured) with
        {
            Growth = growth,
            Anchor = new(null, [phase.Risen(state)], minutes),
            Rise = new(phase, scale, folds, minutes, growth),
            Spell = RiseSpell.Of(phase, folds, authors),
            Why = () => Reason.Leaf("measured-by-author", authors, "min"),
        };
    }

    private static StepOutcome Elsewhere(RisePhase phase, PerLane growth, Anchor? anchor)
    {
        var input = phase.Input;
        var scale = phase.Before.Dough?.Scale ?? new PerLane(input.Stage.Priors.Rise.Scale);
        var state = phase.Begin(scale);
        var folds = RiseFolds.AtMinutes(input.Lanes);
        var until = RisePhase.Reachable(growth, scale);
        Rising.Until(phase, state, RiseStage.ToGrowth(until.Values, folds));
        var minutes = RisePhase.MinutesOf(state);
        return phase.Outcome(state, scale, minutes, folds, Basis.Computed) with
        {
            Growth = growth,
            Rise = new(phase, scale, folds, minutes, RisePhase.Told(growth, scale)),
            Spell = RiseSpell.Of(phase, folds, minutes.Central),
            Findings = minutes.Central <= 0 ? [StepFindings.About(input.Step, "proof-passed", Grade.Warning)] : [.. RiseFindings.OfLanes(input.Step, until, state)],
            Why = () => RiseReasons.Of("proof-minutes", phase, anchor, minutes.Central),
        };
    }
}
