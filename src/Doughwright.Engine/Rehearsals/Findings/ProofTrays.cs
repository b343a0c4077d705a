using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;
using Doughwright.Engine.Rehearsals.Warming;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>What rises on trays all at once, in a place made warm, wants as many trays as the bake does.</summary>
internal static class ProofTrays
{
    public static IEnumerable<Finding> Of(Rehearsal rehearsal, Step step)
    {
        if (step.Kind == StepKind.Proof
            && rehearsal.Recipe.Steps.FirstOrDefault(bake => bake.Kind == StepKind.Bake && bake.Component == step.Component) is { Trays: { } needed }
            && needed > rehearsal.Kitchen.Trays
            && StepAgain.Of(rehearsal, step.Id) is { Holder: PlaceHolder.Tray })
        {
            yield return StepFindings.About(step, "proof-trays-missing", Grade.Warning, false, ("needed", needed), ("there", rehearsal.Kitchen.Trays));
        }
    }
}
