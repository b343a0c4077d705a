using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>The recipe as it is made here: other bowls, another way of a step, a puree weighed anew. The author's own recipe stays what it was.</summary>
internal static class Changes
{
    public static Formula Apply(Formula formula, Larder larder, Request request)
    {
        var recipe = formula.Recipe;
        var steps = recipe.Steps.Select(step => Variants.Of(step, request)).Select(step => step with
        {
            Vessel = request.Bowls.GetValueOrDefault(step.Id, step.Vessel!),
            Way = request.Ways.TryGetValue(step.Id, out var way) ? way : step.Way,
        }).ToList();
        var changed = recipe with { Steps = steps, Components = [.. recipe.Components.Select(component => Weigh(component, request))] };
        return request.Weighed.Count == 0 ? formula with { Recipe = changed } : Formula.Balance(changed, larder);
    }

    private static Component Weigh(Component component, Request request) => component with
    {
        Lines = [.. component.Lines.Select(line =>
            line.Uses is null && request.Weighed.TryGetValue(line.Id, out var weighed) ? line with { Weighed = weighed } : line)],
    };
}
