using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>A total of the dough that can only be given as "at least". A line without a weight has been told by itself.</summary>
internal static class UnknownTotals
{
    public static IEnumerable<Finding> Check(Formula formula)
    {
        (string Kind, Budget Budget)[] totals =
        [
            ("water-at-least", formula.Water),
            ("sugar-at-least", formula.Sugar),
            ("fat-at-least", formula.Fat),
        ];
        return totals
            .Where(total => total.Budget is { Total: null, AtMost: not null } && formula.Flour > Mass.Zero)
            .Select(total => Report.Make(
                total.Kind,
                Grade.Hint,
                "",
                Position.None,
                ("percent", Percent.Of(total.Budget.AtLeast, formula.Flour)),
                ("most", Percent.Of(total.Budget.AtMost!.Value, formula.Flour)),
                ("names", Unknown(total.Budget))));
    }

    private static string Unknown(Budget budget) =>
        string.Join(", ", budget.Shares.Where(share => share.Mass is null).Select(share => share.Name).Distinct());
}
