using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>Two trays at once: they want the fan, and there must be two.</summary>
internal static class OvenTrays
{
    public static IEnumerable<Finding> Of(RunResult here)
    {
        foreach (var step in here.Graph.Steps.Where(step => step is { Kind: StepKind.Bake, Trays: > 1 }))
        {
            if (here.Stage.Kitchen.Trays < step.Trays)
            {
                yield return StepFindings.About(step, "trays-missing", Grade.Warning, false, ("needed", step.Trays!.Value), ("there", here.Stage.Kitchen.Trays));
            }
            else if (here.Stage.ModeOf(step.Oven) == OvenMode.Static)
            {
                yield return StepFindings.About(step, "two-trays-static-oven", Grade.Hint);
            }
        }
    }
}
