using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// What is heated and is to end cooler than it begins: a scald that cools in its bowl and is written on the hob, say. Heat does not cool, so the step
/// takes the author's time everywhere, and that is told.
/// </summary>
internal static class CookCools
{
    public static IEnumerable<Finding> Of(RunResult here) =>
        from pair in here.Each()
        where pair.Step is { IsCooked: true, End: StepEnd.AtTemperature }
        let target = ((StepEnd.AtTemperature)pair.Step.End!).Temperature
        where pair.Outcome.StartCelsius is { } starts && starts.Central > target.Celsius
        select StepFindings.About(
            pair.Step, "cook-ends-cooler", Grade.Warning, false, ("target", target), ("starts", Temperature.FromCelsius(pair.Outcome.StartCelsius!.Value.Central)));
}
