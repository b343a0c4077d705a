using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// A step through which a dough rises, whatever ends it, to be followed once more in the likely lane. Where nothing before it tells how fast the
/// dough is, what follows does.
/// </summary>
/// <param name="begin">The dough at the start, at a rate against the book.</param>
/// <param name="minutes">How long it lasts; finite.</param>
internal sealed class RiseSpell(StepInput input, Body body, PerLane start, double minutes, Func<PerLane, RiseState> begin, RiseFolds? folds)
{
    /// <summary>Whether the dough has no rate of its own yet.</summary>
    public bool IsBeforeItsRate { get; private init; }

    /// <summary>The step of a bulk or a proof; null where it does not end.</summary>
    public static RiseSpell? Of(RisePhase phase, RiseFolds folds, double minutes) => double.IsFinite(minutes) && minutes > 0
        ? new(phase.Input, phase.Body, phase.Start, minutes, phase.Begin, folds)
        : null;

    /// <summary>A rest or a shaping of a dough that has risen before, or is fresh from the mix.</summary>
    public static RiseSpell? Resting(StepInput input, Portion before, Body body, double minutes)
    {
        if (before.Dough is { } risen)
        {
            return new(input, body, before.Celsius!.Value, minutes, _ => risen.State.Copy(), null);
        }

        return RisePhase.Of(input, before) is { } phase && Rests(input, before)
            ? new(input, body, phase.Start, minutes, scale => phase.Begin(scale), null) { IsBeforeItsRate = true }
            : null;
    }

    /// <summary>The same dough afterwards, with what it went through: risen on, or noted until something tells how fast it is.</summary>
    /// <param name="keeps">Share of the gas in the bubbles that the end of the step leaves; null where nothing is pressed out.</param>
    public static Portion After(StepInput input, Portion before, DriftRun drift, PerLane minutes, double[]? keeps)
    {
        var after = before with { Celsius = drift.End };
        if (before.Dough is { } dough)
        {
            var state = dough.State.Copy();
            state.Begin(RiseStage.ForMinutes(minutes.Values));
            state.Advance(drift.History);
            if (keeps is not null)
            {
                state.PressOut(keeps);
            }

            return after with { Dough = dough with { State = state } };
        }

        return Rests(input, before) || RipensLater(input, before)
            ? after with { Past = RisePast.Of(before.Past, new(input.Step.Id, drift.History, minutes.Values, keeps)) }
            : after;
    }

    public IReadOnlyList<WayPoint> Way(PerLane scale) => DriftWay.Of(input, body, start, minutes, begin(scale));

    /// <summary>
    /// The highest growth that all the gas made since the dough was last pressed would have given it, and when that first went past a growth; null
    /// where it did not.
    /// </summary>
    public (double Highest, Duration? Passed) Filled(PerLane scale, double most)
    {
        var time = Duration.FromMinutes(minutes);
        var steps = Rising.StepsOver(time);
        var step = time / steps;
        var run = Bodies.DriftLikely(input, body, start, step);
        var shares = run.Grid.ShellShares;
        var (mean, shells) = (new double[steps], new double[steps * shares.Length]);
        Rising.Advance(run, input, Duration.Zero, step, steps, mean, shells);
        var state = begin(scale).Likely();
        state.Begin(RiseStage.ForMinutes([minutes * 2], LikelyFolds()));
        var highest = state.GrowthWithEscaped(0);
        Duration? passed = highest > most ? Duration.Zero : null;
        for (var index = 0; index < steps; index++)
        {
            state.Advance(new RiseWarmth(mean.AsSpan(index, 1), shells.AsSpan(index * shares.Length, shares.Length), shares, 1), step);
            var before = highest;
            highest = Math.Max(highest, state.GrowthWithEscaped(0));
            if (passed is null && highest > most)
            {
                passed = step * (index + ((most - before) / (highest - before)));
            }
        }

        return (highest, passed);
    }

    private RiseFolds? LikelyFolds() => folds is null ? null : RiseFolds.AtMinutes(
        1, [.. Enumerable.Range(0, folds.Count).Select(fold => folds.Minutes[fold * folds.Lanes])]);

    /// <summary>What will be ripe in a later step begins to ripen in this one, in the fridge say.</summary>
    private static bool RipensLater(StepInput input, Portion before) =>
        before is { YeastDied: null, Celsius: not null }
        && input.Stage.Recipe.Steps.SkipWhile(step => step.Id != input.Step.Id)
            .Any(step => step.Component == input.Step.Component && step.End is Recipes.StepEnd.WhenRipe);

    /// <summary>Only a dough with living yeast rises before its bulk; how a preferment ripens is its own matter.</summary>
    private static bool Rests(StepInput input, Portion before) =>
        before is { YeastLives: true, YeastDied: null, Celsius: not null }
        && input.Stage.Recipe.FindComponent(input.Step.Component) is { Kind: Recipes.ComponentKind.Dough };
}
