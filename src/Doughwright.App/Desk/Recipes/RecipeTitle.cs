using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;

namespace Doughwright.App.Desk.Recipes;

/// <summary>What a recipe is called on the window: its title, or the name of its file when the text cannot be understood.</summary>
internal static class RecipeTitle
{
    public static string Of(string name, ShelfFolder shelf) => RecipeFile.Read(name, shelf)?.Recipe?.Title ?? name;
}
