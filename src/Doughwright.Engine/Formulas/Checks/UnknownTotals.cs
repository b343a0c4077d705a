using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>A total of the dough that can only be given as "at least".</summary>
internal static class UnknownTotals
{
    public static IEnumerable<Finding> Check(Formula formula)
    {
        (string Kind, string Open, Budget Budget)[] totals =
        [
            ("water-at-least", "water-at-least-open", formula.Water),
            ("sugar-at-least", "sugar-at-least-open", formula.Sugar),
            ("fat-at-least", "fat-at-least-open", formula.Fat),
        ];
        return totals
            .Where(total => total.Budget.Total is null && formula.Flour > Mass.Zero)
            .Select(total => Say(total.Kind, total.Open, total.Budget, formula.Flour));
    }

    private static Finding Say(string kind, string open, Budget budget, Mass flour)
    {
        (string, object)[] known = [("percent", Percent.Of(budget.AtLeast, flour)), ("names", Unknown(budget))];
        return budget.AtMost is { } most
            ? Report.Make(kind, Grade.Hint, "", Position.None, [.. known, ("most", Percent.Of(most, flour))])
            : Report.Make(open, Grade.Hint, "", Position.None, known);
    }

    private static string Unknown(Budget budget) =>
        string.Join(", ", budget.Shares.Where(share => share.Mass is null).Select(share => share.Name).Distinct());
}
