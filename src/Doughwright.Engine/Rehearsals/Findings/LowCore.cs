using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>A bake so high up that its core ends below what such breads are baked to anywhere. Source: core-bands.</summary>
internal static class LowCore
{
    public static Temperature Least { get; } = Temperature.FromCelsius(84);

    public static IEnumerable<Finding> Of(RunResult here) => here.Each()
        .Where(pair => pair.Step.Kind == StepKind.Bake && pair.Outcome.EndCelsius is { } core && core.Central < Least.Celsius && !here.Stage.Meets(pair.Step))
        .Select(pair => StepFindings.About(
            pair.Step,
            "core-low-here",
            Grade.Hint,
            false,
            ("core", Temperature.FromCelsius(pair.Outcome.EndCelsius!.Value.Central)),
            ("boils", here.Stage.Boils),
            ("altitude", here.Stage.Kitchen.Altitude)));
}
