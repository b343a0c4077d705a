using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Commands;

/// <summary>resize FILE: the recipe in another size as a text, and what that changes.</summary>
internal static class ResizeCommand
{
    public static Answer Run(CommandRun run)
    {
        var given = run.Given;
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

        var options = new ResizeOptions(given, run.Options, reading.Recipe!);
        var wish = options.Wish();
        var take = options.Take();
        if (wish is null || given.Faults.Any)
        {
            return Answer.None;
        }

        var resized = Resizing.Resize(reading.Recipe!, Larder.Shipped, new(wish) { Kitchen = named?.Kitchen, Take = take });
        var writing = resized.Recipe is { } recipe ? RecipeText.Write(recipe, reading.Document) : null;
        var all = FindingList.Of(file.Text, kitchenFindings, findings, resized.Findings, writing?.Findings ?? []);
        var stamp = Stamp.Of(reading.Recipe!);
        return run.Json
            ? new(ResizeJson.Write(stamp, resized, writing?.Text, all, run.Voice), "", CommandRun.CodeOf(all))
            : new(writing?.Text ?? "", ResizeText.Write(resized, all, run.Voice), CommandRun.CodeOf(all));
    }
}
