using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>
/// Where fillings go in. One that no line uses is laid in where the dough is shaped last before it is baked; it may come straight from its jar,
/// without a step of its own.
/// </summary>
internal static class Fillings
{
    public static IReadOnlyList<(string Part, int Step)> Of(Recipe recipe, IReadOnlyList<Step> steps, IReadOnlyList<string> worksOn) =>
    [
        .. recipe.Components
            .Where(part => part.Kind == ComponentKind.Filling && !recipe.Components.Any(other => other.Lines.Any(line => line.Uses == part.Id)))
            .Select(part => (part.Id, At(recipe, steps, worksOn, part.Id)))
            .Where(filling => filling.Item2 >= 0),
    ];

    private static int At(Recipe recipe, IReadOnlyList<Step> steps, IReadOnlyList<string> worksOn, string part)
    {
        var ready = -1;
        var shape = -1;
        for (var index = 0; index < steps.Count; index++)
        {
            if (worksOn[index] == part && !StepGraph.IsBeside(steps[index]))
            {
                (ready, shape) = (index, -1);
            }
            else if (steps[index].Kind == StepKind.Bake && shape >= 0)
            {
                break;
            }
            else if (steps[index].Kind == StepKind.Shape && index > ready && recipe.FindComponent(worksOn[index]) is { BelongsToDough: true })
            {
                shape = index;
            }
        }

        return shape;
    }
}
