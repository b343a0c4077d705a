using Doughwright.App.Commands;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Desk.Shelf;

/// <summary>Writes a recipe that came of another one down as a recipe of its own. The other stays as it is.</summary>
internal static class OwnRecipe
{
    /// <summary>Field of a form that holds the title.</summary>
    public const string TitleName = "title";

    /// <summary>Letters of a title that still fits on a page.</summary>
    public const int LongestTitle = 100;

    /// <summary>Address of its page; null with a fault when the title cannot be taken or the text not be written.</summary>
    /// <param name="from">The text it came from, whose comments go along.</param>
    /// <param name="grownFrom">The state of the recipe that it came from.</param>
    /// <param name="did">Key of the words for what was done.</param>
    public static string? Lay(Recipe recipe, string title, TextDocument? from, long? grownFrom, ShelfFolder shelf, Faults faults, string did = "book.grown")
    {
        var named = recipe with { Title = title };
        if (title.Length == 0)
        {
            faults.Add("own-unnamed");
        }
        else if (title.Length > LongestTitle)
        {
            faults.Add("own-name-long", ("letters", title.Length), ("most", LongestTitle));
        }
        else if (RecipeText.Read(RecipeText.Write(named)) is not { Recipe: { } read } || read.Title != title)
        {
            // A text says everything it holds: a title with a hidden mark in it cannot be read back.
            faults.Add("own-name-signs", ("name", title));
        }

        if (faults.Any)
        {
            return null;
        }

        try
        {
            var text = RecipeText.Write(named, from).Text;
            return "/recipes/" + Uri.EscapeDataString(shelf.RecipeTexts.Lay(TextNames.Of(title, "recipe"), text, faults.Voice.Say(did, ("title", recipe.Title)), grownFrom));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            faults.Add("own-not-written", ("folder", shelf.RecipeTexts.Path), ("reason", problem.Message));
            return null;
        }
    }
}
