using Doughwright.Engine.Formulas.Checks;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas;

/// <summary>Works out a formula: look up the lines, sum up the parts, share them out, put the results together.</summary>
internal static class Balancer
{
    public static Formula Balance(Recipe recipe, Larder shipped)
    {
        var larder = recipe.LarderOver(shipped);
        var report = new Report();
        var graph = new PartGraph(recipe, larder, report);
        var totals = new DoughTotals(graph.Parts);
        var formula = new Formula
        {
            Recipe = recipe,
            Larder = larder,
            Components = [.. graph.Parts.Select(part => Result(part, totals.Flour))],
            Flour = totals.Flour,
            Dough = totals.Dough,
            Percent = totals.Percents,
            Yeast = totals.Yeast,
            Water = totals.Water.Build(),
            Sugar = totals.Sugar.Build(),
            Fat = totals.Fat.Build(),
            Buy = new BuyList(larder, report).Of(graph.Parts),
            Findings = [],
        };
        return formula with { Findings = [.. report.Findings, .. FormulaChecks.Of(formula)] };
    }

    private static ComponentFormula Result(Part part, Mass flour)
    {
        var basis = part.Base;
        var waterBasis = part.Component.Base is null && part.Flour > Mass.Zero ? part.Flour : basis;
        return new()
        {
            Id = part.Component.Id,
            Name = part.Component.Name,
            Kind = part.Component.Kind,
            Mass = part.Mass,
            Flour = part.Flour,
            Water = part.Water,
            Base = basis,
            WaterPercent = part.Water is { } water ? On(waterBasis, water) : null,
            ShareInDough = part.ShareInDough,
            Composition = part.Composition,
            Lines = [.. part.Lines.Select(line => Result(part, line, basis, flour))],
        };
    }

    private static LineFormula Result(Part part, PartLine line, Mass basis, Mass flour) => new()
    {
        Id = line.Source.Id,
        Name = line.Source.Name,
        Role = line.Role,
        Mass = line.Mass,
        Water = line.Water,
        Percent = line.IsWeighed ? On(basis, line.Mass) : null,
        OverallPercent = line.IsWeighed ? On(flour, part.ShareInDough > 0 ? line.Mass * part.ShareInDough : line.Mass) : null,
        Ingredient = line.Ingredient,
        Composition = line.Composition,
        Source = line.Source,
        Kind = KindNames.Of(line.Ingredient, line.Source.Name),
        UsesComponent = line.Uses?.Component.Id,
    };

    private static Percent? On(Mass whole, Mass part) => whole > Mass.Zero ? Percent.Of(part, whole) : null;
}
