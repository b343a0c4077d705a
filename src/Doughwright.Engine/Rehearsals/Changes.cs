using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
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
            Vessel = request.Bowls.TryGetValue(step.Id, out var bowl) ? bowl : VesselIn(request.Kitchen, step.Vessel),
            Way = request.Ways.TryGetValue(step.Id, out var way) ? way : step.Way,
        }).ToList();
        var changed = recipe with { Steps = steps, Components = [.. recipe.Components.Select(component => Weigh(component, request))] };
        return request.Weighed.Count == 0 ? formula with { Recipe = changed } : Formula.Balance(changed, larder);
    }

    /// <summary>The vessel of a step in a kitchen that has one of the same name; else the step's own.</summary>
    public static Vessel? VesselIn(Kitchen? kitchen, Vessel? vessel) =>
        vessel?.Name is { } name && kitchen?.Vessels.Named(name) is { } there ? there with { Warmed = vessel.Warmed } : vessel;

    private static Component Weigh(Component component, Request request) => component with
    {
        Lines = [.. component.Lines.Select(line =>
            line.Uses is null && request.Weighed.TryGetValue(line.Id, out var weighed) ? line with { Weighed = weighed } : line)],
    };
}
