using Doughwright.App.Desk.Hosting;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The recipes and kitchens that lie in the user's folder, one text each. What a text is called is the name of its file.</summary>
internal sealed class ShelfFolder(DataFolder folder)
{
    private const string Shipped = "demo/";

    public DataFolder Folder => folder;

    public TextFolder RecipeTexts { get; } = new(folder.Recipes);

    public TextFolder KitchenTexts { get; } = new(folder.Kitchens);

    /// <summary>Makes the folder with the demo recipes and kitchens, when there is none yet.</summary>
    /// <exception cref="IOException">The folder cannot be made.</exception>
    public void Make()
    {
        ShippedTexts.Fill(folder.Recipes, Shipped + "recipes/");
        ShippedTexts.Fill(folder.Kitchens, Shipped + "kitchens/");
    }

    /// <summary>Names of the recipes that can be read, in order.</summary>
    public IReadOnlyList<string> Recipes => RecipeTexts.Names();

    public IReadOnlyList<string> Kitchens => KitchenTexts.Names();

    /// <summary>The bytes of a recipe; null when none that can be read has this name.</summary>
    public byte[]? Recipe(string name) => RecipeTexts.Read(name);

    public byte[]? Kitchen(string name) => KitchenTexts.Read(name);
}
