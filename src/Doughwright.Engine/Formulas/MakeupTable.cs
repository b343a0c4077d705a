using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas;

/// <summary>Unlays the final dough. Fillings and toppings in its list lie on or in it and are no rows, as in the formula's budgets.</summary>
internal static class MakeupTable
{
    public static Makeup? Of(Formula formula)
    {
        var used = formula.Components.SelectMany(component => component.Lines).Select(line => line.UsesComponent).ToHashSet();
        var doughs = formula.Components.Where(component => component.Kind == ComponentKind.Dough && !used.Contains(component.Id)).ToList();
        if (doughs.Count == 0)
        {
            return null;
        }

        var rows = doughs.SelectMany(dough => Held(formula, dough).Select(line => (line.Id, Holds: Contents(formula, line)))).ToList();
        return new([.. rows.Select(row => row.Holds.Row(row.Id))], Sum(rows.Select(row => row.Holds)).Row(""));
    }

    private static MakeupContents Contents(Formula formula, LineFormula line)
    {
        if (line.UsesComponent is { } used && formula.FindComponent(used) is { } part)
        {
            return Sum(Held(formula, part).Select(inner => Contents(formula, inner))).Times(part.Mass > Mass.Zero ? line.Mass / part.Mass : 0);
        }

        var grams = line.Mass.Grams;
        return line.Role == Role.Flour
            ? new(grams, grams, 0, 0, 0)
            : new(grams, 0, line.Water?.Grams, grams == 0 ? 0 : grams * line.Composition.Sugars / 100, grams == 0 ? 0 : grams * line.Composition.Fat / 100);
    }

    private static IEnumerable<LineFormula> Held(Formula formula, ComponentFormula component)
    {
        var isDough = formula.Recipe.FindComponent(component.Id) is { BelongsToDough: true };
        return component.Lines.Where(line => !isDough || (line.UsesComponent is { } used
            ? formula.Recipe.FindComponent(used) is { BelongsToDough: true }
            : line.Role != Role.Topping));
    }

    private static MakeupContents Sum(IEnumerable<MakeupContents> all) =>
        all.Aggregate(new MakeupContents(0, 0, 0, 0, 0), (sum, next) => sum.Plus(next));
}
