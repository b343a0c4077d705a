using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes;

/// <summary>What a recipe is called on the window: its title, or the name of its file when the text cannot be understood.</summary>
internal static class RecipeTitle
{
    public static string Of(string name, ShelfFolder shelf) => RecipeFile.Read(name, shelf)?.Recipe?.Title ?? name;

    /// <summary>Of every recipe of the shelf what it is called in a list: where a title stands twice, with its name in the book.</summary>
    public static IReadOnlyDictionary<string, string> Apart(ShelfFolder shelf, Voice voice) => Apart(shelf.Recipes.Select(name => (name, Of(name, shelf))), voice);

    public static IReadOnlyDictionary<string, string> Apart(IEnumerable<(string Name, string Title)> recipes, Voice voice) => recipes
        .GroupBy(recipe => recipe.Title, StringComparer.OrdinalIgnoreCase)
        .SelectMany(alike => alike.Select(recipe => (recipe.Name, Shown: alike.Count() == 1 ? recipe.Title : voice.Say("recipe.title-apart", ("title", recipe.Title), ("name", recipe.Name)))))
        .ToDictionary(recipe => recipe.Name, recipe => recipe.Shown, StringComparer.Ordinal);
}
