using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Engine.Remedies;

namespace Doughwright.App.Commands;

/// <summary>A rehearsal as a command line asked for it: the recipe of its file in the kitchen of its options.</summary>
internal sealed record AskedRehearsal(Recipe Recipe, Request Request, Rehearsal Rehearsal, Judgement Findings)
{
    /// <summary>The bakes over their sections, by which the rehearsal goes; null where none had to be computed.</summary>
    public BakesOverSections? Bakes { get; private init; }

    /// <summary>Whether the kitchen is another than the one it is named after.</summary>
    public bool IsKitchenChanged { get; private init; }

    /// <param name="more">Reads what else the command line says about the recipe. Faults of it are told with all others.</param>
    /// <param name="write">Writes the answer; with faults it is not written.</param>
    /// <param name="bakesMatter">Whether what a bake takes is told, so that its section is worth its time.</param>
    public static Answer Of(CommandRun run, Action<Recipe> more, Func<AskedRehearsal, string> write, bool bakesMatter = true) =>
        Read(run, more, out var refused, bakesMatter) is { } asked ? new(write(asked), "", CommandRun.CodeOf(asked.Findings)) : refused;

    /// <summary>Null where there is nothing to rehearse; the answer then says why.</summary>
    /// <param name="more">As in <see cref="Of"/>.</param>
    /// <param name="bakesMatter">As in <see cref="Of"/>.</param>
    public static AskedRehearsal? Read(CommandRun run, Action<Recipe> more, out Answer refused, bool bakesMatter = true)
    {
        var given = run.Given;
        var overlay = KitchenOptions.Read(given, run.Options);
        if (ReadRecipe.Of(run, out refused) is not { Recipe: { } recipe } read)
        {
            return null;
        }

        var request = RequestOptions.Read(given, run.Options, recipe, KitchenOf(recipe, read.Kitchen, overlay));
        more(recipe);
        if (given.Faults.Any)
        {
            return null;
        }

        // Where water boils is known once the kitchen has been worked out.
        given.Temperature(run.Options.Pour, RequestOptions.Pourable(Rehearser.Rehearse(recipe, Larder.Shipped, request, lanes: 1).Boils));
        if (given.Faults.Any)
        {
            return null;
        }

        var formula = Formula.Balance(recipe, Larder.Shipped);
        var told = bakesMatter
            ? Rehearser.RehearseOverSections(formula, Larder.Shipped, request)
            : new(Rehearser.Rehearse(formula, Larder.Shipped, request), request, null);
        var all = FindingList.Judged(read.File.Text, recipe, read.KitchenFindings, read.Findings, RecipeChecks.Of(recipe), told.Rehearsal.Formula.Findings, told.Rehearsal.Findings);
        return new(recipe, told.Request, told.Rehearsal, all) { Bakes = told.Bakes, IsKitchenChanged = overlay.Change(read.Kitchen ?? recipe.Home) };
    }

    /// <summary>Null is home: nothing was asked about the kitchen.</summary>
    private static Kitchen? KitchenOf(Recipe recipe, Kitchen? named, KitchenOptions overlay) =>
        overlay.IsEmpty ? named : overlay.Over(named ?? recipe.Home);
}
