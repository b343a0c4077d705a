using Doughwright.Engine.Heat;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Pouring boiling water over flour in a bowl, and letting it cool. Mass and material of the bowl decide what the scald becomes.</summary>
internal static class ScaldStep
{
    public static StepOutcome Run(StepInput input)
    {
        var (step, stage) = (input.Step, input.Stage);
        var component = stage.Component(step.Component);
        var bowl = Bowl.Of(step, component, input.Parts, stage);
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
