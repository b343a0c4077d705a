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
        return AskedRehearsal.Of(run, recipe => why = Why(run, recipe), asked => run.Json
            ? RehearsalJson.Write(Stamp.Of(asked.Recipe), asked.Rehearsal, asked.Findings, run.Voice, asked.IsKitchenChanged)
            : RehearsalText.Write(asked.Rehearsal, asked.Request, asked.Findings, why, run.Voice, asked.IsKitchenChanged));
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
