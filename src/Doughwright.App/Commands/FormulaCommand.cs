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
        if (run.ReadFile() is not { } file)
        {
            return Answer.None;
        }

        var (reading, findings, understood) = CommandRun.Understand(file);
        if (!understood)
        {
            return run.NotUnderstood(findings);
        }

        var weighed = WeighedText.Read(run.Given, run.Options, new(reading.Recipe!, run.Given.Faults));
        if (run.Given.Faults.Any)
        {
            return Answer.None;
        }

        var formula = Formula.Balance(WeighedText.Over(reading.Recipe!, weighed), Larder.Shipped);
        var all = FindingList.Judged(file.Text, reading.Recipe!, findings, RecipeChecks.Of(reading.Recipe!), formula.Findings);
        var output = run.Json
            ? FormulaJson.Write(Stamp.Of(reading.Recipe!), formula, all, run.Voice)
            : FormulaText.Write(formula, all, run.Voice);
        return new(output, "", CommandRun.CodeOf(all));
    }
}
