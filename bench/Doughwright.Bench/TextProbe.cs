using BenchmarkDotNet.Attributes;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.Bench;

/// <summary>From the text of the potato rolls to its findings: all of it, and what each part takes.</summary>
[BenchmarkCategory("text")]
public class TextProbe
{
    [Benchmark(Baseline = true, Description = "text to findings, rehearsal at home included")]
    public int All()
    {
        var recipe = RecipeText.Read(PotatoRolls.Text).Recipe!;
        return RecipeChecks.Of(recipe).Count() + Rehearser.Rehearse(recipe, Larder.Shipped).Findings.Count;
    }

    [Benchmark(Description = "text to findings, without a rehearsal")]
    public int WithoutRehearsal()
    {
        var recipe = RecipeText.Read(PotatoRolls.Text).Recipe!;
        return RecipeChecks.Of(recipe).Count() + Formula.Balance(recipe, Larder.Shipped).Findings.Count;
    }

    [Benchmark(Description = "  read")]
    public Recipe? Read() => RecipeText.Read(PotatoRolls.Text).Recipe;

    [Benchmark(Description = "  formula")]
    public Formula Balance() => Formula.Balance(PotatoRolls.Recipe, Larder.Shipped);

    [Benchmark(Description = "  checks")]
    public int Checks() => RecipeChecks.Of(PotatoRolls.Recipe).Count();
}
