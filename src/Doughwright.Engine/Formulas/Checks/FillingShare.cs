using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// Fillings that outweigh the dough that is to hold them. Filled breads carry a fifth to three fifths of the dough's weight, a heavy strudel as
/// much as the dough. Source: filling-share.
/// </summary>
internal static class FillingShare
{
    private const double Most = 1;

    public static IEnumerable<Finding> Check(Formula formula)
    {
        var fillings = formula.Components.Where(component => component.Kind == ComponentKind.Filling).ToArray();
        var all = fillings.Aggregate(Mass.Zero, (sum, filling) => sum + filling.Mass);
        if (formula.Dough <= Mass.Zero || all / formula.Dough <= Most)
        {
            return [];
        }

        var heaviest = fillings.MaxBy(filling => filling.Mass.Grams)!;
        return [formula.About(heaviest, "filling-too-much", Grade.Warning, ("filling", all), ("dough", formula.Dough))];
    }
}
