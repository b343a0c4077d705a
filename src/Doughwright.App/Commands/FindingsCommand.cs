using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Commands;

/// <summary>findings FILE: everything that is wrong, missing or risky, from the text to the rehearsal at home.</summary>
internal static class FindingsCommand
{
    public static Answer Run(CommandRun run)
    {
        if (run.ReadFile() is not { } file || run.Given.Faults.Any)
        {
            return Answer.None;
        }

        var (reading, findings, understood) = CommandRun.Understand(file);
        if (!understood)
        {
            return run.NotUnderstood(findings);
        }

        var rehearsal = Rehearser.Rehearse(reading.Recipe!, Larder.Shipped);
        var all = FindingList.Of(file.Text, findings, RecipeChecks.Of(reading.Recipe!), rehearsal.Formula.Findings, rehearsal.Findings);
        var output = run.Json
            ? FindingsJson.Write(Stamp.Of(reading.Recipe!), reading.Recipe!.Title, all, run.Voice)
            : FindingsText.Write(reading.Recipe!.Title, all, run.Voice, quote: true);
        return new(output, "", CommandRun.CodeOf(all));
    }
}
