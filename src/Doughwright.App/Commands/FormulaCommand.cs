using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes.Checks;

namespace Doughwright.App.Commands;

/// <summary>formula FILE: what the quantities come to, and what to buy.</summary>
internal static class FormulaCommand
{
    public static Answer Run(CommandRun run)
    {
        if (ReadRecipe.Of(run, out var refused) is not { Recipe: { } recipe } read)
        {
            return refused;
        }

        var weighed = WeighedText.Read(run.Given, run.Options, new(recipe, run.Given.Faults));
        if (run.Given.Faults.Any)
        {
            return Answer.None;
        }

        var formula = Formula.Balance(WeighedText.Over(recipe, weighed), Larder.Shipped);
        var all = FindingList.Judged(read.File.Text, recipe, read.Findings, RecipeChecks.Of(recipe), formula.Findings);
        var output = run.Json
            ? FormulaJson.Write(Stamp.Of(recipe), formula, all, run.Voice)
            : FormulaText.Write(formula, all, run.Voice);
        return new(output, "", CommandRun.CodeOf(all));
    }
}
