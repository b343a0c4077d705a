using Doughwright.Engine.Formulas;
using Doughwright.Engine.Heat;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// Pouring boiling water over flour in a bowl, and letting it cool: mass and material of the bowl decide what the scald becomes. One that stands on the
/// hob is stirred there until it is as warm as the author says: the heat comes from below, and it is a cook in all but its name.
/// </summary>
internal static class ScaldStep
{
    public static StepOutcome Run(StepInput input)
    {
        var (step, stage) = (input.Step, input.Stage);
        var component = stage.Component(step.Component);
        var bowl = Bowl.Of(step, component, input.Parts, stage);
        return step.IsCooked ? Stirred(input, component, bowl) : Poured(input, component, bowl);
    }

    private static StepOutcome Stirred(StepInput input, ComponentFormula component, Bowl pot)
    {
        var cold = pot.IsKnown ? pot.Mixed(PerLane.Same(0, input.Lanes)) : (PerLane?)null;
        var cooked = PlainSteps.Cook(input with { Before = Matter.Of(component, pot, cold) });
        var after = YeastLife.Mixed(cooked.After, pot, input.Parts);
        return cooked with { After = after, Findings = [.. YeastLife.Told(input.Step, after), .. cooked.Findings] };
    }

    private static StepOutcome Poured(StepInput input, ComponentFormula component, Bowl bowl)
    {
        var step = input.Step;
        var isBowlKnown = DefaultHeats.JoulesPerKelvinOf(step.Vessel) is not null;
        var mixed = isBowlKnown && bowl.IsKnown ? bowl.Mixed(PerLane.Same(0, input.Lanes)) : (PerLane?)null;
        var poured = YeastLife.Mixed(Matter.Of(component, bowl.Balance.Parts, mixed), bowl, input.Parts);
        var cooled = CoolStep.From(input, poured, mixed);
        return cooled with
        {
            MixedCelsius = mixed,
            Findings = [.. YeastLife.Told(step, poured), .. cooled.Findings, .. StepFindings.HeatNotKnown(step, bowl)],
            Why = mixed is { } celsius ? () => CoolReasons.OfScald(bowl, celsius.Central, cooled) : null,
        };
    }
}
