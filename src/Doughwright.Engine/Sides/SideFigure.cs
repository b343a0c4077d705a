using Doughwright.Engine.Formulas;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Sides;

/// <summary>What a figure of a formula tells. A closed list: docs/json.md.</summary>
public enum FormulaFigure
{
    /// <summary>All of the dough, in grams.</summary>
    Dough,

    /// <summary>Of the dough, in grams.</summary>
    Flour,

    /// <summary>As bakers write it, in percent of the flour; so are all that follow.</summary>
    Hydration,

    /// <summary>All water but the flour's own.</summary>
    TrueWater,
    Salt,
    TrueSugar,
    TrueFat,
    FreshYeast,
    ScaldedFlour,
    PrefermentedFlour,
}

/// <summary>A figure of the formula in two recipes.</summary>
/// <param name="First">In grams or percent; null where it is not known.</param>
public sealed record FormulaDifference(FormulaFigure Figure, double? First, double? Second)
{
    /// <summary>Second less first; null when one of them is not known.</summary>
    public double? By => Second - First;

    /// <summary>All figures, those that are the same in both too; what both lack is left out.</summary>
    internal static IReadOnlyList<FormulaDifference> Between(Formula first, Formula second) =>
    [
        .. Enum.GetValues<FormulaFigure>()
            .Select(figure => new FormulaDifference(figure, Of(first, figure), Of(second, figure)))
            .Where(difference => difference is not ({ First: null, Second: null } or { First: 0, Second: 0 })),
    ];

    /// <summary>The figure of one formula, in grams or percent; null where it is not known.</summary>
    internal static double? Of(Formula formula, FormulaFigure figure) => figure switch
    {
        FormulaFigure.Dough => formula.IsMassKnown ? formula.Dough.Grams : null,
        FormulaFigure.Flour => formula.Flour.Grams,
        _ => Percent(formula.Percent, figure)?.Value,
    };

    private static Percent? Percent(FormulaPercents percents, FormulaFigure figure) => figure switch
    {
        FormulaFigure.Hydration => percents.Hydration,
        FormulaFigure.TrueWater => percents.TrueWater,
        FormulaFigure.Salt => percents.Salt,
        FormulaFigure.TrueSugar => percents.TrueSugar,
        FormulaFigure.TrueFat => percents.TrueFat,
        FormulaFigure.FreshYeast => percents.FreshYeast,
        FormulaFigure.ScaldedFlour => percents.ScaldedFlour,
        _ => percents.PrefermentedFlour,
    };
}
