using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// The ripening of a preferment or levain. At home the author's hours say how far it is when it is ripe: how much gas the yeast has made, or how fast
/// the sourdough grows. Elsewhere it ripens until it is as far, along its own temperature. Without hours it is ripe when it has doubled, or when
/// its sourdough is as dense again as the ripe sour that went in (<see cref="Leaven.GrowthToRipe"/>). The cue overrules either.
/// </summary>
internal static class RipenStep
{
    /// <summary>A poolish that nobody timed is ripe when it has doubled: the trade's 12 to 16 h at 21 °C. Source: ripe-poolish.</summary>
    private const double GrowthWhenRipe = 2;

    /// <summary>Stiffer than this nothing published says at what rise it is ripe. Source: ripe-poolish.</summary>
    private const double LeastWaterOnFlour = 80;

    public static StepOutcome Run(StepInput input)
    {
        var before = input.Before ?? Matter.Raw(input.Step.Component, input.Stage);
        if (RisePhase.Of(input, before) is not { } phase)
        {
            return NotComputed(input, before, StepFindings.About(input.Step, "ripening-not-computed", Grade.Warning, false, RiseUnknown.Of(input, before)));
        }

        var authors = input.IsHome ? StatedTime.Of(input.Step) : null;
        if (phase.Dough.Culture is not null)
        {
            return OfSourdough(phase, authors);
        }

        // The same yeast makes gas as it did at home; how fast it is against the book is known only where a rise was seen.
        var pace = PerLane.Same(1, input.Lanes);
        if (authors is { } minutes)
        {
            var home = new RipeningRun(phase, (state, lane) => state.Made(lane));
            var target = home.RipenessAt(phase.TimeError * minutes);
            return Outcome(home, target, minutes, new(null, [target], phase.TimeError * minutes), pace, []);
        }

        if (input.Anchor is null && input.Stage.Component(input.Step.Component).WaterPercent is not { Value: >= LeastWaterOnFlour })
        {
            return NotComputed(input, before, StepFindings.About(input.Step, "ripening-needs-hours", Grade.Warning));
        }

        var run = input.Anchor is { Growth: [var made] }
            ? (Run: new RipeningRun(phase, (state, lane) => state.Made(lane)), Target: made)
            : (Run: new RipeningRun(phase, (state, lane) => state.Growth[lane]), Target: PerLane.Same(GrowthWhenRipe, input.Lanes));
        return Outcome(run.Run, run.Target, null, null, pace, []);
    }

    private static StepOutcome OfSourdough(RisePhase phase, double? authors)
    {
        var input = phase.Input;
        var run = new RipeningRun(phase, (state, lane) => state.Aged[lane]);
        var component = input.Stage.Component(input.Step.Component);
        var growth = Leaven.Of(component, input.Parts, input.Stage).GrowthToRipe(component.Mass);
        if (authors is not { } minutes)
        {
            var carried = input.Anchor?.Scale ?? new PerLane(input.Stage.Priors.Rise.Scale);
            return Outcome(run, growth / carried, null, null, carried, []);
        }

        var read = phase.TimeError * minutes;
        var lived = run.RipenessAt(read);
        // Where it is too warm or too cold for it to grow at all, nothing says how fast it is.
        var pace = growth.With(lived, (needed, grown) => grown > 0 ? needed / grown : 0);
        return pace.Central > 0
            ? Outcome(run, lived, minutes, new(pace, [], read), pace, RipeningFindings.OfPace(input.Step, pace.Central))
            : PlainSteps.Stated(input, phase.Before, phase.Start, phase.Start) with { Findings = [StepFindings.About(input.Step, "ripening-impossible", Grade.Error)] };
    }

    /// <param name="authors">The author's own minutes where they are to be met.</param>
    private static StepOutcome Outcome(RipeningRun run, PerLane target, double? authors, Anchor? anchor, PerLane pace, IReadOnlyList<Finding> findings)
    {
        var (phase, input) = (run.Phase, run.Phase.Input);
        run.Until(target);
        var minutes = anchor?.HomeMinutes ?? run.When(target);
        var state = run.StateAfter(minutes);
        var basis = authors is null ? Basis.Computed : input.Step.Measured?.Time is null ? Basis.Stated : Basis.Measured;
        var outcome = phase.Outcome(state, new(input.Stage.Priors.Rise.Scale), minutes, RiseFolds.AtMinutes(input.Lanes), basis);
        var likely = minutes.Central;
        return outcome with
        {
            After = outcome.After with { Dough = outcome.After.Dough! with { Pace = pace } },
            Anchor = anchor,
            Findings = findings,
            Ripe = double.IsFinite(likely) ? run.WindowAround(minutes) : null,
            // Ripeness is told and height is not: how fast its gas comes against the book nobody has seen.
            Way = double.IsFinite(likely) ? () => DriftWay.Of(input, phase.Body, phase.Start, likely, null) : null,
            Why = authors is { } hours ? () => Reason.Leaf("measured-by-author", hours, "min") : () => RipeningFindings.Why(phase, input.Anchor, likely),
        };
    }

    /// <summary>What ripens by something that is not known takes the author's own time at home, and no known time elsewhere.</summary>
    private static StepOutcome NotComputed(StepInput input, Portion before, Finding why)
    {
        var stated = PlainSteps.NotCarried(input, before, before.Celsius);
        var drifted = stated.Minutes is null ? stated with { After = before with { Celsius = null, Dough = null } } : RestStep.Drifted(input) with { Basis = stated.Basis };
        return drifted with
        {
            Findings = [.. drifted.Findings.Where(told => told.Kind != StepFindings.TimeNotKnown), why],
        };
    }
}
