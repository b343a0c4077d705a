using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Commands;

/// <summary>The recipe of a command's file, and the kitchen that it names, both understood.</summary>
/// <param name="Findings">Of the text of the recipe.</param>
/// <param name="Kitchen">Null where the command names none.</param>
/// <param name="KitchenFindings">Of the text of that kitchen.</param>
internal sealed record ReadRecipe(InputFile File, Reading Reading, IReadOnlyList<Finding> Findings, Kitchen? Kitchen, IReadOnlyList<Finding> KitchenFindings)
{
    public Recipe Recipe => Reading.Recipe!;

    /// <summary>Null when there is no file, or a text is not understood; then the answer says so, or a fault does.</summary>
    public static ReadRecipe? Of(CommandRun run, out Answer refused)
    {
        refused = Answer.None;
        var named = run.Given.One(run.Options.Kitchen) is { } name ? KitchenShelf.Find(name, run.Given.Files(run.Options.File), run.Given.Faults) : null;
        if (run.ReadFile() is not { } file)
        {
            return null;
        }

        var (reading, findings, understood) = CommandRun.Understand(file);
        var kitchenFindings = named?.Findings ?? [];
        if (understood && named is { IsImpossible: true })
        {
            refused = run.Impossible([.. findings, .. kitchenFindings]);
            return null;
        }

        if (!understood || named is { Understood: false } or { Kitchen: null })
        {
            refused = run.NotUnderstood([.. findings, .. kitchenFindings]);
            return null;
        }

        return new(file, reading, findings, named?.Kitchen, kitchenFindings);
    }
}
