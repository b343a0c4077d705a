using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>A part that nothing uses, that is left over, or that is used more often than it is made.</summary>
internal static class ComponentUse
{
    // What a spatula leaves in a bowl; less than this is not a leftover.
    private const double Leftover = 0.02;

    public static IEnumerable<Finding> Check(Formula formula)
    {
        foreach (var component in formula.Components)
        {
            var used = Used(formula, component.Id, out var lines);
            if (lines == 0)
            {
                if (!StandsAlone(formula, component))
                {
                    yield return IsWorkedOn(component)
                        ? formula.About(component, "component-without-step", Grade.Warning, ("id", component.Id))
                        : formula.About(component, "component-not-used", Grade.Warning, ("id", component.Id));
                }
            }
            else if (used > component.Mass * 1.0001)
            {
                yield return formula.About(component, "component-too-small", Grade.Error, ("made", component.Mass), ("used", used));
            }
            else if (component.Mass - used > component.Mass * Leftover)
            {
                var left = component.Mass - used;
                yield return formula.About(component, "component-left-over", Grade.Hint, ("made", component.Mass), ("left", left));
            }
        }
    }

    private static Mass Used(Formula formula, string id, out int lines)
    {
        lines = 0;
        var used = Mass.Zero;
        foreach (var (_, line) in formula.Lines().Where(at => at.Line.UsesComponent == id))
        {
            lines++;
            used += line.Mass;
        }

        return used;
    }

    /// <summary>A dough is what the recipe is for; a wash, a filling or an icing is used by the step that works on it.</summary>
    private static bool StandsAlone(Formula formula, ComponentFormula component) =>
        component.Kind == ComponentKind.Dough
        || formula.Components.Count == 1
        || (IsWorkedOn(component)
            && (formula.Recipe.Steps.Count == 0 || formula.Recipe.Steps.Any(step => step.Component == component.Id)));

    /// <summary>Whether a step uses it up, and not a line of the dough.</summary>
    private static bool IsWorkedOn(ComponentFormula component) =>
        component.Kind is ComponentKind.Filling or ComponentKind.Icing or ComponentKind.Wash or ComponentKind.Syrup or ComponentKind.Topping;
}
