using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>A ripening or rest whose time is the author's own: in a colder or warmer place it takes another time, and no model here says which.</summary>
internal static class RestNotCarried
{
    private static readonly TemperatureDelta Felt = TemperatureDelta.FromKelvins(2);
    private static readonly Duration Long = Duration.FromHours(1);

    public static IEnumerable<Finding> Of(RunResult here, RunResult home)
    {
        foreach (var (step, outcome) in here.Each())
        {
            if (step.Kind != StepKind.Rest || outcome.Minutes is not { } minutes || minutes.Central < Long.Minutes)
            {
                continue;
            }

            var air = here.Stage.AirOf(step, Duration.Zero).At(Duration.Zero);
            var homeAir = home.Stage.AirOf(step, Duration.Zero).At(Duration.Zero);
            if (air - homeAir > Felt || homeAir - air > Felt)
            {
                yield return StepFindings.About(
                    step, air < homeAir ? "rest-not-carried-cold" : "rest-not-carried-warm", Grade.Hint, false, ("air", air), ("home", homeAir));
            }
        }
    }
}
