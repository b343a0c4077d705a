using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// Mixing: a heat balance in the order of adding, plus one rise for mixing and handling. At home the author's dough temperature fixes that
/// rise; elsewhere it is carried. Another way of mixing has its own.
/// </summary>
internal static class MixStep
{
    /// <summary>How far the handling rise of one pair of hands differs from mix to mix.</summary>
    private const double MixToMixKelvins = 0.4;

    public static StepOutcome Run(StepInput input)
    {
        var (step, stage) = (input.Step, input.Stage);
        var component = stage.Component(step.Component);
        var bowl = Bowl.Of(step, component, input.Parts, stage);
        var findings = new List<Finding>();
        if (step.Vessel is null || DefaultHeats.JoulesPerKelvinOf(step.Vessel) is null)
        {
            findings.Add(StepFindings.About(step, "mixing-bowl-not-said", Grade.Hint));
        }

        findings.AddRange(StepFindings.HeatNotKnown(step, bowl));
        var (rise, solved) = Rise(input, bowl);
        var mixed = Temperature(input, bowl, rise);
        if (solved && rise is { } measured)
        {
            findings.AddRange(OutsidePrior(step, measured.Central));
        }

        var after = YeastLife.Mixed(Matter.Of(component, bowl, mixed), bowl, input.Parts);
        findings.AddRange(YeastLife.Told(step, after));
        var minutes = StatedTime.Of(step);
        return new()
        {
            After = after.YeastDied is null ? after with { Dough = input.Before?.Dough, Past = input.Before?.Past } : after,
            Minutes = minutes is { } time ? PerLane.Same(time, input.Lanes) : null,
            Basis = input.ToMeet?.Time is null ? Basis.Stated : Basis.Measured,
            StartCelsius = null,
            EndCelsius = mixed,
            MixedCelsius = mixed,
            Anchor = solved ? new(rise, [], null) : null,
            Findings = minutes is null ? [.. findings, StepFindings.NoTime(step)] : findings,
            Way = mixed is { } ends && minutes is { } length && rise is { } worked
                ? () => [new(0, ends.Central - worked.Central, null), new(length, ends.Central, null)]
                : null,
            Why = mixed is { } dough && rise is { } known ? () => MixReasons.Of(bowl, dough.Central, known.Central) : null,
        };
    }

    /// <summary>The handling rise to expect here before anything was measured.</summary>
    public static PerLane Expected(MixingWay way, Priors priors)
    {
        var handling = HandlingRise.Of(way);
        return priors.Handling.Map(z => handling.Mean.Kelvins + (handling.Sd.Kelvins * z));
    }

    /// <summary>
    /// The handling rise of a mix elsewhere: the author's, as far as the same hands repeat it, or the one to expect. Source: handling-repeats.
    /// </summary>
    public static PerLane RiseHere(Step step, Anchor? anchor, Priors priors) => anchor?.Scale is { } authors
        ? authors.With(priors.Handling, (rise, z) => rise + (MixToMixKelvins * z))
        : Expected(step.Way ?? MixingWay.ByHand, priors);

    private static (PerLane? Rise, bool Solved) Rise(StepInput input, Bowl bowl)
    {
        if (input.ToMeet?.Temperature is { } measured)
        {
            return bowl.IsKnown ? (bowl.RiseFor(measured.Celsius), true) : (null, false);
        }

        if (input.Stage.Recipe.FindComponent(input.Step.Component) is { BelongsToDough: false })
        {
            // A glaze or a filling is stirred and not kneaded, and has no flour that takes up water.
            return (PerLane.Same(0, input.Lanes), false);
        }

        return (RiseHere(input.Step, input.Anchor, input.Stage.Priors), false);
    }

    private static PerLane? Temperature(StepInput input, Bowl bowl, PerLane? rise)
    {
        if (input.ToMeet?.Temperature is { } measured)
        {
            return PerLane.Same(measured.Celsius, input.Lanes);
        }

        return bowl.IsKnown && rise is { } known ? bowl.Mixed(known) : null;
    }

    private static IEnumerable<Finding> OutsidePrior(Step step, double riseKelvins)
    {
        var expected = HandlingRise.Of(step.Way ?? MixingWay.ByHand);
        var rise = TemperatureDelta.FromKelvins(riseKelvins);
        if (Math.Abs(expected.StandardDeviationsOff(rise)) > StepFindings.FarFromPrior)
        {
            yield return StepFindings.About(step, "handling-rise-unusual", Grade.Warning, false, ("measured", step.Measured!.Temperature!.Value), ("rise", rise), ("expected", expected.Mean));
        }
    }
}
