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
        MuchYeast.Check,
        MissingYeast.Check,
        RaisedTwice.Check,
        AlcoholInDough.Check,
        MissingFlour.Check,
        WeighedWater.Check,
        DoseBelowScale.Check,
        EggParts.Check,
        SaltWindow.Check,
        SaltBySpoon.Check,
        WaterWindow.Check,
        FillingShare.Check,
        EatenRaw.Check,
        KeptTooLong.Check,
        TinTooSmall.Check,
        Allergens.Check,
        RawFlourAndEgg.Check,
        HoneyForInfants.Check,
        BoilingLiquid.Check,
        AdviceOfNothing.Check,
    ];

    public static IEnumerable<Finding> Of(Formula formula) => All.SelectMany(check => check(formula));

    /// <summary>Every line of every part, with the part.</summary>
    public static IEnumerable<(ComponentFormula Component, LineFormula Line)> Lines(this Formula formula) =>
        formula.Components.SelectMany(component => component.Lines.Select(line => (component, line)));

    /// <summary>The dough that no other part uses; the last of several, as the recipe ends in it. Null when there is none.</summary>
    public static ComponentFormula? FinalDough(this Formula formula)
    {
        var used = formula.Lines().Select(at => at.Line.UsesComponent).ToHashSet();
        return formula.Components.LastOrDefault(component => component.Kind == ComponentKind.Dough && !used.Contains(component.Id));
    }

    /// <summary>A finding about a part as a whole.</summary>
    public static Finding About(
        this Formula formula, ComponentFormula component, string kind, Grade grade, params (string, object)[] arguments) =>
        Report.Make(
            kind,
            grade,
            $"parts.{component.Id}",
            formula.Recipe.FindComponent(component.Id)?.Position ?? Position.None,
            [("component", component.Name), .. arguments]);

    public static Finding About(
        this (ComponentFormula Component, LineFormula Line) at, string kind, Grade grade, params (string, object)[] arguments) =>
        Report.Make(kind, grade, Report.PlaceOf(at.Component.Id, at.Line.Id), at.Line.Source.Position, arguments);
}
