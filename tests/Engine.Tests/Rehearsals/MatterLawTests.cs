using CsCheck;
using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Tests.Rehearsals;

/// <summary>What is weighed is there at the end, and how a recipe is listed changes nothing.</summary>
public class MatterLawTests
{
    private const int Bakes = 60;

    private static RunResult RunOf(Bake bake, int lanes)
    {
        var priors = Priors.For(lanes, RisePriors.For(RiseCeiling.StrongWhite.Likely));
        return Run.Of(new(bake.Formula, bake.Recipe.Home, Request.Home, priors, isHome: true), new Dictionary<string, Anchor>());
    }

    [Fact]
    public void Mass_IsConservedFromFormulaToTheOven() => Bake.Any.Sample(bake =>
    {
        var formula = bake.Formula;
        var weighed = formula.Recipe.Components.SelectMany(component => component.Lines).Where(line => line.Uses is null);
        var lines = weighed.Sum(line => line.Mass!.Value.Grams);
        Assert.Equal(lines, formula.Dough.Grams, 1e-9 * lines);
        var run = RunOf(bake, 2);
        foreach (var (step, outcome) in run.Each().Where(pair => pair.Step.Component == "dough" && !StepGraph.IsBeside(pair.Step)))
        {
            Assert.Equal(lines, outcome.After.Mass.Grams, 1e-9 * lines);
            Assert.Equal(step.Kind is StepKind.Mix or StepKind.Bulk ? 1 : bake.Pieces, outcome.After.Pieces);
        }
    }, iter: Bakes);

    [Fact]
    public void OrderOfListing_ChangesNothing() => Gen.Select(Bake.Any, Bake.AnyKitchen).Sample((bake, kitchen) =>
    {
        var recipe = (bake with { Order = false }).Recipe;
        var components = recipe.Components.Select(component => component with { Lines = [.. component.Lines.Reverse()] });
        var turned = recipe with { Components = [.. components] };
        var one = Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = kitchen });
        var two = Rehearser.Rehearse(turned, Larder.Shipped, new() { Kitchen = kitchen });

        // Sums in another order differ in the last digit, and that can move a crossing into the next step of the grid: far below a second.
        AssertSame(one, two, 1e-4);
    }, iter: Bakes);

    /// <summary>Parts may be made in any order: their steps written before or after one another.</summary>
    [Fact]
    public void OrderOfIndependentParts_ChangesNothing()
    {
        var recipe = new Bake { Scald = true, Puree = true, Enriched = true }.Recipe;
        var scald = recipe.Steps.Where(step => step.Component == "scald").ToList();
        var turned = recipe with { Steps = [.. scald, .. recipe.Steps.Except(scald)], Components = [.. recipe.Components.Reverse()] };
        AssertSame(Rehearser.Rehearse(recipe, Larder.Shipped), Rehearser.Rehearse(turned, Larder.Shipped), 1e-9);
    }

    [Fact]
    public void Doubling_DoublesWeights_AndLeavesPercentages() => Bake.Any.Sample(bake =>
    {
        var recipe = bake.Recipe;
        var one = Formula.Balance(recipe, Larder.Shipped);
        var two = Formula.Balance(recipe with { Components = [.. recipe.Components.Select(Doubled)] }, Larder.Shipped);
        Assert.Equal(2 * one.Dough.Grams, two.Dough.Grams, 1e-9 * two.Dough.Grams);
        Assert.Equal(2 * one.Flour.Grams, two.Flour.Grams, 1e-9 * two.Flour.Grams);
        Assert.Equal(2 * one.Water.Total!.Value.Grams, two.Water.Total!.Value.Grams, 1e-9 * two.Dough.Grams);
        Assert.Equal(one.Percent.TrueWater!.Value.Value, two.Percent.TrueWater!.Value.Value, 1e-9);
        Assert.Equal(one.Percent.Salt!.Value.Value, two.Percent.Salt!.Value.Value, 1e-9);
        foreach (var (first, second) in one.Components.SelectMany(part => part.Lines).Zip(two.Components.SelectMany(part => part.Lines)))
        {
            Assert.Equal(2 * first.Mass.Grams, second.Mass.Grams, 1e-9 * second.Mass.Grams);
            Assert.Equal(first.Percent!.Value.Value, second.Percent!.Value.Value, 1e-9);
        }
    }, iter: Bakes);

    /// <summary>The draws are one sequence, so that more lanes only add to those there were: each lane is a world of its own.</summary>
    [Fact]
    public void MoreLanes_LeaveTheOthersAsTheyWere()
    {
        foreach (var bake in Bake.Table)
        {
            var (few, many) = (RunOf(bake, 32), RunOf(bake, 64));
            foreach (var ((step, one), (_, two)) in few.Each().Zip(many.Each()))
            {
                Assert.Equal(one.Minutes?.Values ?? [], two.Minutes?.Values[..32] ?? []);
                Assert.Equal(one.EndCelsius?.Values ?? [], two.EndCelsius?.Values[..32] ?? []);
                Assert.True(one.Growth is null == two.Growth is null, step.Id);
            }
        }
    }

    private static Component Doubled(Component component) => component with
    {
        Lines = [.. component.Lines.Select(line => line with { Mass = line.Mass is { } mass ? Mass.FromGrams(2 * mass.Grams) : null })],
    };

    private static void AssertSame(Rehearsal one, Rehearsal two, double tolerance)
    {
        foreach (var step in one.Steps)
        {
            var other = two.FindStep(step.Id)!;
            Assert.Equal(step.Time?.Likely.Minutes ?? -1, other.Time?.Likely.Minutes ?? -1, tolerance);
            Assert.Equal(step.Start?.Minutes ?? -1, other.Start?.Minutes ?? -1, tolerance);
            Assert.Equal(step.EndTemperature?.Celsius ?? -99, other.EndTemperature?.Celsius ?? -99, tolerance);
        }

        Assert.Equal(one.Total?.Likely.Minutes ?? -1, two.Total?.Likely.Minutes ?? -1, tolerance);
    }
}
