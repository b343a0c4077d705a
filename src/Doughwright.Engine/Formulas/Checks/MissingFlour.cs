using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>A dough, a preferment or a scald without what makes it one. Where an ingredient is not known, nothing is said.</summary>
internal static class MissingFlour
{
    public static IEnumerable<Finding> Check(Formula formula)
    {
        foreach (var component in formula.Components.Where(component => component.Mass > Mass.Zero && component.Flour <= Mass.Zero))
        {
            var lines = component.Lines.Where(line => line.Mass > Mass.Zero).ToArray();
            if (lines.Any(line => line is { UsesComponent: null, Role: null } or { Role: Role.Flour or Role.Starchy }))
            {
                continue;
            }

            switch (component.Kind)
            {
                case ComponentKind.Dough:
                    yield return formula.About(component, "dough-without-flour", Grade.Warning);
                    break;
                case ComponentKind.Preferment or ComponentKind.Starter:
                    yield return formula.About(component, "preferment-without-flour", Grade.Warning);
                    break;
                case ComponentKind.Scald when lines.All(line => line.Role is Role.Water or Role.Liquid):
                    yield return formula.About(component, "scald-without-starch", Grade.Warning);
                    break;
            }
        }
    }
}
