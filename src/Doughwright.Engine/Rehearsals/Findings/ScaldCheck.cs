using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>A scald that comes out too cool to swell much of its starch. "Gelatinised" is a degree: wheat begins near 60 °C. Source: starch-swells.</summary>
internal static class ScaldCheck
{
    private static readonly Temperature Swells = Temperature.FromCelsius(60);

    public static IEnumerable<Finding> Of(RunResult here) => here.Each()
        .Where(pair => pair.Step.Kind == StepKind.Scald && pair.Outcome.MixedCelsius is { } mixed && mixed.Central < Swells.Celsius)
        .Select(pair => StepFindings.About(
            pair.Step, "scald-too-cool", Grade.Hint, false, ("celsius", Temperature.FromCelsius(pair.Outcome.MixedCelsius!.Value.Central)), ("swells", Swells)));
}
