using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Commands;

/// <summary>rehearse FILE: the computed run of a recipe, at home or in another kitchen.</summary>
internal static class RehearseCommand
{
    public static Answer Run(CommandRun run)
    {
        List<string> why = [];
        if (Rehearsing.Of(run, recipe => why = Why(run, recipe), out var refused) is not { } rehearsed)
        {
            return refused;
        }

        var output = run.Json
            ? RehearsalJson.Write(rehearsed.Stamp, rehearsed.Rehearsal, rehearsed.Findings, run.Voice)
            : RehearsalText.Write(rehearsed.Rehearsal, rehearsed.Request, rehearsed.Findings, why, run.Voice);
        return new(output, "", CommandRun.CodeOf(rehearsed.Findings));
    }

    /// <summary>Ids of the steps whose reasons are asked for.</summary>
    private static List<string> Why(CommandRun run, Recipe recipe)
    {
        var names = new Names(recipe, run.Given.Faults);
        var asked = run.Given.All(run.Options.Why);
        return asked.Contains("all")
            ? [.. recipe.Steps.Select(step => step.Id)]
            : [.. asked.Select(name => names.Step(run.Options.Why.Name, name)).OfType<Step>().Select(step => step.Id)];
    }
}
