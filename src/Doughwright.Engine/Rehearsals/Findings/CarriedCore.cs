using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// A thermometer that would wait for the author's core where water boils at another temperature: the same crumb is done at another figure.
/// A core that is low for any bread is told by <see cref="LowCore"/>. Source: core-bands.
/// </summary>
internal static class CarriedCore
{
    private static readonly TemperatureDelta Felt = TemperatureDelta.FromKelvins(1.5);

    public static IEnumerable<Finding> Of(RunResult here, RunResult home)
    {
        foreach (var (step, outcome) in here.Each())
        {
            if (step.Kind != StepKind.Bake || AuthorsCore(step, home) is not { } authors || outcome.EndCelsius is not { } celsius)
            {
                continue;
            }

            var core = Temperature.FromCelsius(celsius.Central);
            if ((authors - core > Felt || core - authors > Felt) && core >= LowCore.Least)
            {
                yield return StepFindings.About(
                    step,
                    "core-carried",
                    Grade.Hint,
                    false,
                    ("authors", authors),
                    ("core", core),
                    ("boils", here.Stage.Boils),
                    ("altitude", here.Stage.Kitchen.Altitude));
            }
        }
    }

    /// <summary>The core that the author's text names and the author's kitchen reaches; null when the text names none.</summary>
    private static Temperature? AuthorsCore(Step step, RunResult home) =>
        (step.Measured?.Temperature ?? (step.End as StepEnd.AtCore)?.Temperature) is { } said && said < home.Stage.Boils ? said : null;
}
