using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Engine.Ingredients;

namespace Doughwright.App.Commands;

/// <summary>swap FILE: the recipe with something swapped, as a text, and what that costs.</summary>
internal static class SwapCommand
{
    public static Answer Run(CommandRun run)
    {
        if (ReadRecipe.Of(run, out var refused) is not { } read)
        {
            return refused;
        }

        var wishes = SwapOptions.Read(run.Given, run.Options, read.Recipe);
        if (run.Given.Faults.Any)
        {
            return Answer.None;
        }

        return run.Given.Has(run.Options.Replace) ? Swap(run, read, wishes) : Offer(run, read);
    }

    private static Answer Swap(CommandRun run, ReadRecipe read, IReadOnlyList<Wish> wishes)
    {
        var recipe = read.Recipe;
        if (SwappedRecipe.Of(read.Reading, wishes, read.File.Text, read.Findings, read.File.Findings, run.Options.Replace.Name, run.Given.Faults) is not { } made)
        {
            return Answer.None;
        }

        var (swapped, text, times, all) = made;
        return run.Json
            ? new(SwapJson.Write(Stamp.Of(recipe), recipe, swapped, text, times, all, run.Voice), "", CommandRun.CodeOf(all))
            : new(text ?? "", SwapText.Write(recipe, swapped, times, run.Voice), CommandRun.CodeOf(all));
    }

    private static Answer Offer(CommandRun run, ReadRecipe read)
    {
        var recipe = read.Recipe;
        var offers = Swapping.Offer(recipe, Larder.Shipped);
        var all = FindingList.Judged(read.File.Text, recipe, read.Findings);
        return run.Json
            ? new(SwapJson.WriteOffers(Stamp.Of(recipe), recipe, offers, all, run.Voice), "", CommandRun.CodeOf(all))
            : new(SwapText.WriteOffers(recipe, offers, run.Voice), "", CommandRun.CodeOf(all));
    }
}
