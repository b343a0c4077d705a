using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>What is put on a bread after its last heat, and so is eaten as it was stirred.</summary>
internal static class Finishing
{
    /// <summary>Steps after the last bake or frying that put an uncooked part on, each with that part.</summary>
    public static IEnumerable<(int Index, Step Step, ComponentFormula Part)> Of(Formula formula)
    {
        var steps = formula.Recipe.Steps;
        var last = LastHeat(formula);
        if (last < 0)
        {
            yield break;
        }

        for (var index = last + 1; index < steps.Count; index++)
        {
            var step = steps[index];
            if (step.Kind is StepKind.Glaze or StepKind.Finish
                && formula.FindComponent(step.Component) is { } part
                && formula.Recipe.FindComponent(part.Id) is { BelongsToDough: false }
                && !steps.Any(other => other.Component == part.Id && (other.IsCooked || other.Kind == StepKind.Bake)))
            {
                yield return (index, step, part);
            }
        }
    }

    private static int LastHeat(Formula formula)
    {
        var steps = formula.Recipe.Steps;
        for (var index = steps.Count - 1; index >= 0; index--)
        {
            if ((steps[index].Kind == StepKind.Bake || steps[index].IsCooked) && formula.FindComponent(steps[index].Component)?.Kind == ComponentKind.Dough)
            {
                return index;
            }
        }

        return -1;
    }
}
