using CsCheck;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Tests.Rehearsals;
using Doughwright.Engine.Tests.TextForm;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.Formulas;

/// <summary>The dough unlaid into flour, water, sugar, fat and the rest.</summary>
public class MakeupTests
{
    private static Formula Of(string text) => Formula.Balance(RecipeText.Read(text).Recipe!, Larder.Shipped);

    private static void AddsUp(Formula formula)
    {
        var makeup = formula.Makeup()!;
        var all = formula.Dough.Grams;
        Assert.Equal(all, makeup.Total.Mass.Grams, 1e-9 * all);
        Assert.Equal(formula.Flour.Grams, makeup.Total.Flour.Grams, 1e-9 * all);
        Assert.Equal(formula.Water.Total?.Grams ?? -1, makeup.Total.Water?.Grams ?? -1, 1e-9 * all);

        // Flour counts whole, so its own sugar and fat stand in the budgets and not here.
        Assert.Equal(WithoutFlour(formula, formula.Sugar) ?? -1, makeup.Total.Sugar?.Grams ?? -1, 1e-9 * all);
        Assert.Equal(WithoutFlour(formula, formula.Fat) ?? -1, makeup.Total.Fat?.Grams ?? -1, 1e-9 * all);
        Assert.Equal(all, makeup.Rows.Sum(row => row.Mass.Grams), 1e-9 * all);
        foreach (var row in makeup.Rows.Append(makeup.Total).Where(row => row.Rest is not null))
        {
            var sum = row.Flour.Grams + row.Water!.Value.Grams + row.Sugar!.Value.Grams + row.Fat!.Value.Grams + row.Rest!.Value.Grams;
            Assert.Equal(row.Mass.Grams, sum, 1e-9 * all);
            Assert.True(row.Rest.Value.Grams > -1e-9 * all, $"{row.Line}: {row.Rest}");
        }
    }

    private static double? WithoutFlour(Formula formula, Budget budget) => budget.Total is null ? null : budget.Shares
        .Where(share => formula.FindComponent(share.Component)!.Lines.First(line => line.Id == share.Line).Role != Role.Flour)
        .Sum(share => share.Mass!.Value.Grams);

    [Fact]
    public void EveryDemo_AddsUpToItsFormula() => Assert.All(DemoRuns.All.Where(run => run.AtHome), run => AddsUp(run.Formula));

    [Fact]
    public void AnyBake_AddsUpToItsFormula() => Bake.Any.Sample(bake => AddsUp(bake.Formula), iter: 60);

    [Fact]
    public void PotatoRolls_Hold400OfFlourAnd271OfWaterIn801()
    {
        var makeup = Of(Texts.PotatoRolls).Makeup()!;
        Assert.Equal(801, makeup.Total.Mass.Grams, 1e-9);
        Assert.Equal(400, makeup.Total.Flour.Grams, 1e-9);
        Assert.Equal(271, makeup.Total.Water!.Value.Grams, 0.5);
        Assert.Equal(8, makeup.Rows.Count);
        var scald = makeup.Rows.Single(row => row.Line == "scald");
        Assert.Equal((180, 80, 100), (scald.Mass.Grams, scald.Flour.Grams, Math.Round(scald.Water!.Value.Grams, 6)));
        Assert.Equal(0, scald.Rest!.Value.Grams, 1e-9);
    }

    [Fact]
    public void UnknownIngredient_StaysUnknown()
    {
        var makeup = Of(Texts.PotatoRollsWith("    egg: 50 g", "    moonflower paste: 50 g")).Makeup()!;
        var row = makeup.Rows.Single(row => row.Mass == Mass.FromGrams(50) && row.Water is null);
        Assert.Null(row.Rest);
        Assert.Null(makeup.Total.Water);
        Assert.Equal(400, makeup.Total.Flour.Grams, 1e-9);
    }
}
