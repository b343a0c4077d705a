using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Steps that take the author's own time and leave the matter as it is, but for a pot that boils.</summary>
internal static class PlainSteps
{
    /// <summary>Peeling, brushing, cooling on a rack: the time the author gives, or the hands it needs.</summary>
    public static StepOutcome Prepare(StepInput input)
    {
        var before = input.Before ?? Matter.Raw(input.Step.Component, input.Stage);
        return Stated(input, before, before.Celsius, before.Celsius);
    }

    /// <summary>
    /// Cooking on the hob: the time is the author's. It ends at the temperature the author says, where this kitchen's water gets that hot, else
    /// at its boiling point. Pieces of dough that are boiled, steamed, fried or griddled are hot outside and cool in the middle, and no model of
    /// ours says how warm: nothing that follows is computed from it.
    /// </summary>
    public static StepOutcome Cook(StepInput input)
    {
        var before = input.Before ?? Matter.Raw(input.Step.Component, input.Stage);
        if (input.Stage.Recipe.FindComponent(input.Step.Component)?.Kind == ComponentKind.Dough)
        {
            return Stated(input, before with { Celsius = null, Dough = null }, before.Celsius, null);
        }

        var boils = input.Stage.Boils.Celsius;
        var ends = input.Step.End is StepEnd.AtTemperature { Temperature.Celsius: var asked } && asked < boils ? asked : boils;
        var cooked = PerLane.Same(ends, input.Lanes);
        return Stated(input, before with { Celsius = cooked }, before.Celsius, cooked);
    }

    /// <summary>
    /// A step that a model would have to carry to another kitchen and cannot: at home the author's time stands, elsewhere only a time that the
    /// author fixed.
    /// </summary>
    public static StepOutcome NotCarried(StepInput input, Portion after, PerLane? start)
    {
        var stated = Stated(input, after, start, null);
        return input.IsHome || input.Step.End is StepEnd.AfterTime ? stated : stated with { Minutes = null, Basis = Basis.Computed, Why = null };
    }

    public static StepOutcome Stated(StepInput input, Portion after, PerLane? start, PerLane? end)
    {
        var time = StatedTime.Of(input.Step);
        return new()
        {
            After = after,
            Minutes = time is { } minutes ? PerLane.Same(minutes, input.Lanes) : null,
            Basis = input.IsHome && input.Step.Measured?.Time is not null ? Basis.Measured : Basis.Stated,
            StartCelsius = start,
            EndCelsius = end,
            Findings = time is null ? [StepFindings.NoTime(input.Step)] : [],
            Why = time is { } value ? () => Reason.Leaf("stated-by-author", value, "min") : null,
        };
    }
}
