using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>A part asked to go in warmer or cooler than it stands, and no step of the recipe takes it there: when to begin is not worked out.</summary>
internal static class TakenAsAsked
{
    private const double FeltKelvins = 1;

    public static IEnumerable<Finding> Of(RunResult here)
    {
        foreach (var part in here.Stage.Recipe.Components)
        {
            if (here.Stage.AskedWithoutCooling(part.Id) is not { } asked
                || here.Each().LastOrDefault(pair => pair.Step.Component == part.Id) is not { Step: { } last, Outcome.After.Celsius: { } stands })
            {
                continue;
            }

            if (Math.Abs(asked.Celsius - stands.Central) > FeltKelvins)
            {
                yield return StepFindings.About(
                    last, "taken-as-asked", Grade.Hint, false, ("part", part.Name), ("asked", asked), ("stands", Temperature.FromCelsius(stands.Central)));
            }
        }
    }
}
