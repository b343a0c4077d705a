using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// The bulk: the dough drifts towards the air and rises to a multiple of its volume after mixing. At home the author's minutes fix how fast
/// this dough is; elsewhere that rate is carried, and folds fall at the growth they had at home.
/// </summary>
internal static class BulkStep
{
    public static StepOutcome Run(StepInput input)
    {
        var (step, stage) = (input.Step, input.Stage);
        var before = input.Before ?? Matter.Raw(step.Component, stage);
        if (RisePhase.Of(input, before) is not { } phase)
        {
            return RisePhase.NotComputed(input, before);
        }

        return StatedTime.Of(step) is { } authors && input.IsHome
            ? AtHome(phase, authors, (step.End as StepEnd.AtGrowth)?.Times)
            : Elsewhere(phase, input.Anchor);
    }

    private static StepOutcome AtHome(RisePhase phase, double authors, double? target)
    {
        var input = phase.Input;
        var minutes = phase.TimeError * authors;
        var step = phase.StepLength;
        var steps = (int)Math.Ceiling(minutes.Values.Max() / step.Minutes);
        var history = Rising.Drift(input, phase.Body, phase.Start, step, steps).History;
        var folds = RiseFolds.AtMinutes(input.Lanes, [.. input.Step.Folds.Select(fold => fold.After.Minutes)]);
        var findings = new List<Finding>();
        // The same dough done in another way has the rate that it was measured to have.
        var scale = input.Anchor?.Scale ?? new PerLane(input.Stage.Priors.Rise.Scale);
        var isPossible = true;
        if (target is { } growth)
        {
            var anchor = Rise.Anchor(phase.Dough, input.Stage.Priors.Rise, Rising.Pascals(input.Stage), history, minutes.Values, growth, folds, phase.Before.Past);
            isPossible = anchor.IsFound[0];
            scale = isPossible ? new(anchor.Scale) : scale;
            findings.AddRange(RiseFindings.OfScale(input.Step, anchor, input.Stage.Priors.Rise.Scale[0], phase.Dough.Culture is not null));
        }

        var state = phase.Begin(scale);
        state.Begin(RiseStage.ForMinutes(minutes.Values, folds));
        state.Advance(history);
        var reached = new PerLane([.. state.Growth]);
        var outcome = phase.Outcome(state, scale, minutes, folds, input.Step.Measured?.Time is null ? Basis.Stated : Basis.Measured);
        return outcome with
        {
            Growth = reached,
            Anchor = isPossible ? new(scale, [.. phase.FoldGrowth(folds), phase.Risen(state)], minutes) : null,
            Findings = findings,
            Rise = new(phase, scale, folds, minutes, reached),
            Spell = RiseSpell.Of(phase, folds, authors),
            Why = () => Reason.Leaf("measured-by-author", authors, "min"),
        };
    }

    private static StepOutcome Elsewhere(RisePhase phase, Anchor? anchor)
    {
        var input = phase.Input;
        var lanes = input.Lanes;
        var scale = anchor?.Scale ?? new PerLane(input.Stage.Priors.Rise.Scale);
        var growth = anchor?.Growth is [.., var reached] ? reached : PerLane.Same((input.Step.End as StepEnd.AtGrowth)?.Times ?? 2, lanes);
        // Folds at other times than the author's own have no growth of their own.
        var until = RisePhase.Reachable(growth, scale);
        var folds = anchor is null || anchor.Growth.Count - 1 != input.Step.Folds.Count
            ? RiseFolds.AtMinutes(lanes, [.. input.Step.Folds.Select(fold => fold.After.Minutes)])
            : RiseFolds.AtGrowth([.. anchor.Growth.SkipLast(1).SelectMany(fold => RisePhase.Reachable(fold, scale).Values)], lanes);
        var state = phase.Begin(scale);
        Rising.Until(phase, state, RiseStage.ToGrowth(until.Values, folds));
        var minutes = RisePhase.MinutesOf(state);
        var outcome = phase.Outcome(state, scale, minutes, folds, Basis.Computed);
        return outcome with
        {
            Growth = growth,
            Rise = new(phase, scale, folds, minutes, RisePhase.Told(growth, scale)),
            Findings = minutes.Central <= 0 ? [StepFindings.About(input.Step, "bulk-passed", Grade.Warning)] : [.. RiseFindings.OfLanes(input.Step, until, state)],
            Spell = RiseSpell.Of(phase, folds, minutes.Central),
            Why = () => RiseReasons.Of("bulk-minutes", phase, anchor, minutes.Central, InHomeAir(phase, scale, until, folds)),
        };
    }

    /// <summary>Minutes of the same dough, as warm as here, at the pressure of home: what tells the two changes apart.</summary>
    private static double InHomeAir(RisePhase phase, PerLane scale, PerLane growth, RiseFolds folds)
    {
        var input = phase.Input;
        var state = phase.Fresh(scale, input.Stage.AtHomeAltitude);
        Rising.Until(phase, state, RiseStage.ToGrowth(growth.Values, folds.Again()));
        return state.StoppedMinutes[0];
    }
}
