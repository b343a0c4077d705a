using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Commands;

/// <summary>swap FILE: the recipe with something swapped, as a text, and what that costs.</summary>
internal static class SwapCommand
{
    // Minutes: less is lost in reading a rise.
    private const double WorthSaying = 2;

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

        var recipe = reading.Recipe!;
        var wishes = SwapOptions.Read(run.Given, run.Options, recipe);
        if (run.Given.Faults.Any)
        {
            return Answer.None;
        }

        return run.Given.Has(run.Options.Replace) ? Swap(run, file, reading, findings, wishes) : Offer(run, file, recipe, findings);
    }

    private static Answer Swap(CommandRun run, InputFile file, Reading reading, IReadOnlyList<Finding> findings, IReadOnlyList<Wish> wishes)
    {
        var recipe = reading.Recipe!;
        var swapped = Swapping.Swap(recipe, wishes, Larder.Shipped);
        if (swapped.Recipe is null)
        {
            var refused = FindingList.Judged(file.Text, recipe, findings, swapped.Consequences);
            return new(
                run.Json ? SwapJson.Write(Stamp.Of(recipe), recipe, swapped, null, [], refused, run.Voice) : "",
                run.Json ? "" : SwapText.Write(recipe, swapped, [], run.Voice),
                ExitCode.Errors);
        }

        var writing = RecipeText.Write(swapped.Recipe, reading.Document);
        var again = RecipeText.Read(writing.Text);
        if (!again.Understood || again.Recipe is null)
        {
            run.Given.Faults.Add("swap-not-plain", ("option", run.Options.Replace.Name), ("given", wishes.Select(wish => wish.By).Distinct().ToArray()));
            return Answer.None;
        }

        // What was found is told of the new text, with its lines.
        var formula = Formula.Balance(again.Recipe, Larder.Shipped);
        var all = FindingList.Judged(writing.Text, again.Recipe, file.Findings, again.Findings, writing.Findings, RecipeChecks.Of(again.Recipe), formula.Findings, swapped.Consequences);
        var times = Times(recipe, swapped);
        return run.Json
            ? new(SwapJson.Write(Stamp.Of(recipe), recipe, swapped, writing.Text, times, all, run.Voice), "", CommandRun.CodeOf(all))
            : new(writing.Text, SwapText.Write(recipe, swapped, times, run.Voice), CommandRun.CodeOf(all));
    }

    /// <summary>The rises that take another time now, by what was measured before.</summary>
    private static IReadOnlyList<RehearsedStep> Times(Recipe recipe, Swapped swapped) => swapped.Lines.Count == 0
        ? []
        :
        [
            .. Rehearser.RehearseSwapped(recipe, swapped.Recipe!, Larder.Shipped).Steps
                .Where(step => step.Kind is StepKind.Bulk or StepKind.Proof && recipe.FindStep(step.Id)?.Measured?.Time is not null)
                .Where(step => step.Time is { } time && step.HomeTime is { } home && Math.Abs(time.Likely.Minutes - home.Minutes) >= WorthSaying),
        ];

    private static Answer Offer(CommandRun run, InputFile file, Recipe recipe, IReadOnlyList<Finding> findings)
    {
        var offers = Swapping.Offer(recipe, Larder.Shipped);
        var all = FindingList.Judged(file.Text, recipe, findings);
        return run.Json
            ? new(SwapJson.WriteOffers(Stamp.Of(recipe), recipe, offers, all, run.Voice), "", CommandRun.CodeOf(all))
            : new(SwapText.WriteOffers(recipe, offers, run.Voice), "", CommandRun.CodeOf(all));
    }
}
