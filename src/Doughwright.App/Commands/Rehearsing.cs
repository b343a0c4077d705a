using Doughwright.App.Json;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Commands;

/// <summary>A rehearsal as a command line asks for it: the recipe of a file, in the kitchen and with the changes that were named.</summary>
/// <param name="Findings">Of the texts, the recipe, the formula and the rehearsal.</param>
internal sealed record Rehearsing(Recipe Recipe, Request Request, Rehearsal Rehearsal, IReadOnlyList<Finding> Findings)
{
    public Stamp Stamp => Stamp.Of(Recipe);

    /// <summary>Null where there is nothing to rehearse: the answer then says why.</summary>
    /// <param name="check">Reads what else was typed, once there is a recipe and before anything is computed.</param>
    public static Rehearsing? Of(CommandRun run, Action<Recipe>? check, out Answer refused)
    {
        refused = Answer.None;
        var given = run.Given;
        var overlay = KitchenOptions.Read(given, run.Options);
        var named = given.One(run.Options.Kitchen) is { } name ? KitchenShelf.Find(name, given.Faults) : null;
        if (run.ReadFile() is not { } file)
        {
            return null;
        }

        var (reading, findings, understood) = CommandRun.Understand(file);
        var kitchenFindings = named?.Findings ?? [];
        if (!understood || named is { Understood: false } or { Kitchen: null })
        {
            refused = run.NotUnderstood([.. findings, .. kitchenFindings]);
            return null;
        }

        var recipe = reading.Recipe!;
        var request = RequestOptions.Read(given, run.Options, recipe, KitchenOf(recipe, named?.Kitchen, overlay));
        check?.Invoke(recipe);
        if (given.Faults.Any)
        {
            return null;
        }

        var rehearsal = Rehearser.Rehearse(recipe, Larder.Shipped, request);
        // Where water boils is known once the kitchen has been worked out.
        given.Temperature(run.Options.Pour, RequestOptions.Pourable(rehearsal.Boils));
        if (given.Faults.Any)
        {
            return null;
        }

        return new(
            recipe, request, rehearsal, FindingList.Of(file.Text, kitchenFindings, findings, RecipeChecks.Of(recipe), rehearsal.Formula.Findings, rehearsal.Findings));
    }

    /// <summary>Null is home: nothing was asked about the kitchen.</summary>
    private static Kitchen? KitchenOf(Recipe recipe, Kitchen? named, KitchenOptions overlay) =>
        overlay.IsEmpty ? named : overlay.Over(named ?? recipe.Home);
}
