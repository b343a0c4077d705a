using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Commands;

/// <summary>swap FILE: the recipe with something swapped, as a text, and what that costs.</summary>
internal static class SwapCommand
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
        if (SwappedRecipe.Of(reading, wishes, file.Text, findings, file.Findings, run.Options.Replace.Name, run.Given.Faults) is not { } made)
        {
            return Answer.None;
        }

        var (swapped, text, times, all) = made;
        return run.Json
            ? new(SwapJson.Write(Stamp.Of(recipe), recipe, swapped, text, times, all, run.Voice), "", CommandRun.CodeOf(all))
            : new(text ?? "", SwapText.Write(recipe, swapped, times, run.Voice), CommandRun.CodeOf(all));
    }

    private static Answer Offer(CommandRun run, InputFile file, Recipe recipe, IReadOnlyList<Finding> findings)
    {
        var offers = Swapping.Offer(recipe, Larder.Shipped);
        var all = FindingList.Judged(file.Text, recipe, findings);
        return run.Json
            ? new(SwapJson.WriteOffers(Stamp.Of(recipe), recipe, offers, all, run.Voice), "", CommandRun.CodeOf(all))
            : new(SwapText.WriteOffers(recipe, offers, run.Voice), "", CommandRun.CodeOf(all));
    }
}
