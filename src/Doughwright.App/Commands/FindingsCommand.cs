using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Remedies;

namespace Doughwright.App.Commands;

/// <summary>findings FILE: everything that is wrong, missing or risky, from the text to the rehearsal at home, and what can be done about it.</summary>
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
            return FindingsChange.Of(run, file, null, null, findings) ?? NotUnderstood(run, findings);
        }

        var recipe = reading.Recipe!;
        var rehearsal = Rehearser.Rehearse(recipe, Larder.Shipped);
        var all = FindingList.Of(file.Text, findings, RecipeChecks.Of(recipe), rehearsal.Formula.Findings, rehearsal.Findings);
        if (FindingsChange.Of(run, file, recipe, reading.Document, all) is { } changed)
        {
            return changed;
        }

        var judged = Acceptances.Judge(all, recipe);
        judged = judged with { Open = FindingList.Of(file.Text, judged.Open) };
        var output = run.Json
            ? FindingsJson.Write(Stamp.Of(recipe), recipe, judged, run.Voice)
            : FindingsText.Write(recipe.Title, judged.Open, run.Voice, quote: true, Offers.Of(judged.Open, recipe), judged.Accepted);
        return new(output, "", CommandRun.CodeOf(judged));
    }

    private static Answer NotUnderstood(CommandRun run, IReadOnlyList<Engine.Recipes.Finding> findings) => run.Json
        ? run.NotUnderstood(findings)
        : run.NotUnderstood(findings) with { Output = FindingsText.Write(null, findings, run.Voice, quote: true, Offers.Of(findings, null), []) };
}
