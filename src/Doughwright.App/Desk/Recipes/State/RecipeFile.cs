using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Desk.Recipes.State;

/// <summary>A recipe's text as it lay in the folder when it was opened.</summary>
/// <param name="Name">Name of the file, without its ending.</param>
/// <param name="Findings">Of the text itself.</param>
/// <param name="Recipe">Null when a line of the text was not understood; then nothing is worked out.</param>
internal sealed record RecipeFile(string Name, string Text, IReadOnlyList<Finding> Findings, Recipe? Recipe)
{
    /// <summary>The text as it was read, for what is written from it.</summary>
    public required Reading Reading { get; init; }

    /// <summary>Whether all bytes could be read: a text that was read in part is not written back.</summary>
    public required bool IsWhole { get; init; }

    /// <summary>The quantities as written; only where there is a recipe.</summary>
    public Formula? Formula { get; init; }

    /// <summary>Null when no recipe of this name lies in the folder.</summary>
    public static RecipeFile? Read(string name, ShelfFolder shelf)
    {
        if (shelf.Recipe(name) is not { } bytes)
        {
            return null;
        }

        var file = InputFile.Of(name, bytes);
        var (reading, findings, understood) = CommandRun.Understand(file);
        var recipe = understood ? reading.Recipe : null;
        return new(name, file.Text, FindingList.Of(file.Text, findings), recipe)
        {
            Reading = reading,
            IsWhole = file.Findings.Count == 0,
            Formula = recipe is null ? null : Formula.Balance(recipe, Larder.Shipped),
        };
    }
}
