using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>Every check of a formula, in the order their findings are shown.</summary>
internal static class FormulaChecks
{
    private static readonly Func<Formula, IEnumerable<Finding>>[] All =
    [
        ComponentUse.Check,
        MadeAgainstAsked.Check,
        UnknownTotals.Check,
        UnknownYeast.Check,
        TooMuchYeast.Check,
        WeighedWater.Check,
        DoseBelowScale.Check,
        EggParts.Check,
        SaltWindow.Check,
        WaterWindow.Check,
        Allergens.Check,
        RawFlourAndEgg.Check,
        BoilingLiquid.Check,
    ];

    public static IEnumerable<Finding> Of(Formula formula) => All.SelectMany(check => check(formula));

    /// <summary>Every line of every part, with the part.</summary>
    public static IEnumerable<(ComponentFormula Component, LineFormula Line)> Lines(this Formula formula) =>
        formula.Components.SelectMany(component => component.Lines.Select(line => (component, line)));

    public static Finding About(
        this (ComponentFormula Component, LineFormula Line) at, string kind, Grade grade, params (string, object)[] arguments) =>
        Report.Make(kind, grade, Report.PlaceOf(at.Component.Id, at.Line.Id), at.Line.Source.Position, arguments);
}
