using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// Cooking in water that boils cooler than the author's: it takes longer, and no model here says by how much. What is only heated to a temperature
/// below that does not boil. Source: cooler-boil.
/// </summary>
internal static class CoolerBoil
{
    private static readonly TemperatureDelta Felt = TemperatureDelta.FromKelvins(1.5);

    public static IEnumerable<Finding> Of(RunResult here, RunResult home) => home.Stage.Boils - here.Stage.Boils > Felt
        ? here.Graph.Steps.Where(step => step.IsCooked && !(step.End is StepEnd.AtTemperature { Temperature: var ends } && ends < here.Stage.Boils)).Select(step => StepFindings.About(
            step, "boils-cooler", Grade.Hint, false, ("boils", here.Stage.Boils), ("home", home.Stage.Boils)))
        : [];
}
