using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Commands;

/// <summary>rehearse FILE: the computed run of a recipe, at home or in another kitchen.</summary>
internal static class RehearseCommand
{
    public static Answer Run(CommandRun run)
    {
        var given = run.Given;
        var overlay = KitchenOptions.Read(given, run.Options);
        var named = given.One(run.Options.Kitchen) is { } name ? KitchenShelf.Find(name, given.Faults) : null;
        if (run.ReadFile() is not { } file)
        {
            return Answer.None;
        }

        var (reading, findings, understood) = CommandRun.Understand(file);
        var kitchenFindings = named?.Findings ?? [];
        if (!understood || named is { Understood: false } or { Kitchen: null })
        {
            return run.NotUnderstood([.. findings, .. kitchenFindings]);
        }

        var recipe = reading.Recipe!;
        var request = RequestOptions.Read(given, run.Options, recipe, KitchenOf(recipe, named?.Kitchen, overlay));
        var why = Why(run, recipe);
        if (given.Faults.Any)
        {
            return Answer.None;
        }

        var rehearsal = Rehearser.Rehearse(recipe, Larder.Shipped, request);
        // Where water boils is known once the kitchen has been worked out.
        given.Temperature(run.Options.Pour, RequestOptions.Pourable(rehearsal.Boils));
        if (given.Faults.Any)
        {
            return Answer.None;
        }

        var all = FindingList.Of(file.Text, kitchenFindings, findings, RecipeChecks.Of(recipe), rehearsal.Formula.Findings, rehearsal.Findings);
        var output = run.Json
            ? RehearsalJson.Write(Stamp.Of(recipe), rehearsal, all, run.Voice)
            : RehearsalText.Write(rehearsal, request, all, why, run.Voice);
        return new(output, "", CommandRun.CodeOf(all));
    }

    /// <summary>Null is home: nothing was asked about the kitchen.</summary>
    private static Kitchen? KitchenOf(Recipe recipe, Kitchen? named, KitchenOptions overlay) =>
        overlay.IsEmpty ? named : overlay.Over(named ?? recipe.Home);

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
