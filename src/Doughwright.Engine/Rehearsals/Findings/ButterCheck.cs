using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>Butter that the author wants soft and that this kitchen has firm or runny. Source: butter-states.</summary>
internal static class ButterCheck
{
    /// <summary>From here soft butter oils out. Source: butter-states.</summary>
    private static readonly Temperature OilsOut = Temperature.FromCelsius(28);

    /// <summary>Out of the fridge it only comes nearly as warm as the room.</summary>
    private static bool Stands(Line line) => line.Warmth.Kind == WarmthKind.AsTheRoom;

    public static IEnumerable<Finding> Of(RunResult run)
    {
        foreach (var step in run.Graph.Steps.Where(step => step.Kind == StepKind.Mix))
        {
            foreach (var line in run.Stage.Component(step.Component).Lines.Where(line => line.Ingredient is { MeltsAsButter: true }))
            {
                if (!line.Source.Is("soft") && !line.Source.Is("softened"))
                {
                    continue;
                }

                var warmth = Temperature.FromCelsius(run.Stage.WarmthOf(step.Component, line.Source));
                var softens = Stands(line.Source) ? ButterStates.Softens + TakeOutStep.Nearly : ButterStates.Softens;
                if (warmth < softens || warmth > OilsOut)
                {
                    yield return StepFindings.About(
                        step,
                        warmth > OilsOut ? "butter-too-soft" : "butter-too-cold",
                        Grade.Warning,
                        false,
                        ("butter", line.Name),
                        ("celsius", warmth),
                        ("from", ButterStates.CreamsFrom),
                        ("to", ButterStates.CreamsTo)) with
                    { Place = $"parts.{step.Component}.{line.Id}", Position = line.Source.Position };
                }
            }
        }
    }
}
