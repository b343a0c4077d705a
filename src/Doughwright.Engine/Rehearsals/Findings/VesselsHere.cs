using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>Vessels that steps name and a kitchen that says what it has has not. One that says nothing of vessels may have them all.</summary>
internal static class VesselsHere
{
    public static IEnumerable<Finding> Of(RunResult here)
    {
        var there = here.Stage.Kitchen.Vessels;
        foreach (var step in here.Graph.Steps.Where(step => there.Count > 0 && step.Vessel?.Name is { } name && there.Named(name) is null))
        {
            yield return StepFindings.About(
                step, "vessel-not-here", Grade.Hint, false, ("vessel", step.Vessel!.Name!), ("there", string.Join(", ", there.Select(vessel => vessel.Name))));
        }
    }
}
