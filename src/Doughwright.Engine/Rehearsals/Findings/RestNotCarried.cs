using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>A ripening or rest whose time is the author's own: in a colder or warmer place it takes another time, and no model here says which.</summary>
internal static class RestNotCarried
{
    private static readonly TemperatureDelta Felt = TemperatureDelta.FromKelvins(2);

    /// <summary>Yeast works about half as fast again in air warmer by so much: twelve hours become eight. Source: ripening-window.</summary>
    private static readonly TemperatureDelta Far = TemperatureDelta.FromKelvins(5);
    private static readonly Duration Long = Duration.FromHours(1);

    public static IEnumerable<Finding> Of(RunResult here, RunResult home)
    {
        foreach (var (step, outcome) in here.Each())
        {
            if (step.Kind != StepKind.Rest || step.End is StepEnd.WhenRipe || outcome.Minutes is not { } minutes || minutes.Central < Long.Minutes)
            {
                continue;
            }

            var (air, homeAir) = (AirAround(step, here, minutes.Central), AirAround(step, home, minutes.Central));
            if (air - homeAir > Felt || homeAir - air > Felt)
            {
                yield return About(step, air, homeAir, here.Stage.Recipe.FindComponent(step.Component) is { Kind: ComponentKind.Preferment });
            }
        }
    }

    /// <summary>The mean while it stands: a room whose heating is off at night is not the room of the evening.</summary>
    private static Temperature AirAround(Step step, RunResult run, double minutes)
    {
        var start = run.Times.Starts[run.Graph.Steps.ToList().FindIndex(other => other.Id == step.Id)] ?? 0;
        return run.Stage.AirOf(step, Duration.FromMinutes(Math.Max(0, start))).MeanOver(Duration.FromMinutes(minutes));
    }

    private static Finding About(Step step, Temperature air, Temperature home, bool ripens)
    {
        (string, object)[] arguments = [("air", air), ("home", home)];
        if (ripens && air - home >= Far)
        {
            return StepFindings.About(step, "ripens-far-sooner", Grade.Warning, false, arguments);
        }

        if (ripens && home - air >= Far)
        {
            return StepFindings.About(step, "ripens-far-later", Grade.Warning, false, arguments);
        }

        return air < home
            ? StepFindings.About(step, "rest-not-carried-cold", Grade.Hint, false, arguments)
            : StepFindings.About(step, "rest-not-carried-warm", Grade.Hint, false, arguments);
    }
}
