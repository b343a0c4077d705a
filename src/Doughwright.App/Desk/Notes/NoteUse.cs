using System.Text;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Notes;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Desk.Notes;

/// <summary>A step of a recipe that links to a note.</summary>
/// <param name="Recipe">Name of the recipe in the book.</param>
internal sealed record NoteUse(string Note, string Recipe, string Title, string Step, string StepName)
{
    private const string Key = "learn";

    /// <summary>All links of all recipes, by the name of the note that they lead to.</summary>
    public static ILookup<string, NoteUse> All(ShelfFolder shelf) => shelf.RecipeTexts.Papers()
        .Select(paper => (paper.Name, Bytes: shelf.RecipeTexts.Read(paper)))
        // Most recipes of a large book link to none, and reading them all would take long.
        .Where(text => text.Bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes(Key)) >= 0)
        .SelectMany(text => Of(text.Name, RecipeText.Read(InputFile.Of(text.Name, text.Bytes).Text).Recipe))
        .ToLookup(use => use.Note, StringComparer.Ordinal);

    private static IEnumerable<NoteUse> Of(string name, Recipe? recipe) => recipe is null
        ? []
        : NoteLinks.Of(recipe).Select(link => new NoteUse(BookNotes.NameOf(link.Name), name, recipe.Title.Length > 0 ? recipe.Title : name, link.Step.Id, link.Step.Name));
}
