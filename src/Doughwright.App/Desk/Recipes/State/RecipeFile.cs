using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Notes;

namespace Doughwright.App.Desk.Recipes.State;

/// <summary>A recipe's text as it stood in the book when it was opened.</summary>
/// <param name="Name">What it is called there.</param>
/// <param name="Paper">Its state then.</param>
/// <param name="Findings">Of the text itself.</param>
/// <param name="Recipe">Null when a line of the text was not understood; then nothing is worked out.</param>
internal sealed record RecipeFile(string Name, Paper Paper, string Text, IReadOnlyList<Finding> Findings, Recipe? Recipe)
{
    /// <summary>The text as it was read, for what is written from it.</summary>
    public required Reading Reading { get; init; }

    /// <summary>Whether all bytes could be read: a text that was read in part is not written back.</summary>
    public required bool IsWhole { get; init; }

    /// <summary>Notes of the book.</summary>
    public required BookNotes Notes { get; init; }

    /// <summary>Notes that its steps link to, as they said when they were first looked at.</summary>
    public required Lazy<IReadOnlyList<LinkedNote>> Learn { get; init; }

    /// <summary>What its author says of it; null when nothing.</summary>
    public IReadOnlyDictionary<Saying, string>? Said { get; init; }

    /// <summary>The quantities as written; only where there is a recipe.</summary>
    public Formula? Formula { get; init; }

    /// <summary>Null when the book has no recipe of this name.</summary>
    public static RecipeFile? Read(string name, ShelfFolder shelf)
    {
        if (shelf.RecipeTexts.Find(name) is not { } paper)
        {
            return null;
        }

        var notes = shelf.Notes;
        var file = InputFile.Of(name, shelf.RecipeTexts.Read(paper)) with { Notes = notes };
        var (reading, findings, understood) = CommandRun.Understand(file);
        var recipe = understood ? reading.Recipe : null;
        return new(name, paper, file.Text, FindingList.Of(file.Text, findings), recipe)
        {
            Reading = reading,
            IsWhole = file.Findings.Count == 0,
            Notes = notes,
            Learn = new(() => recipe is null ? [] : notes.LinkedFrom(recipe)),
            Said = shelf.Book.Said.All(PaperSort.Recipe).GetValueOrDefault(name),
            Formula = recipe is null ? null : Formula.Balance(recipe, Larder.Shipped),
        };
    }
}
