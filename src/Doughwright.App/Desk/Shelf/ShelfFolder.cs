using Doughwright.App.Desk.Hosting;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The recipes and kitchens that lie in the user's folder, one text each. What a text is called is the name of its file.</summary>
internal sealed class ShelfFolder(DataFolder folder)
{
    private const string Ending = ".yaml";
    private const string Shipped = "demo/";

    public DataFolder Folder => folder;

    /// <summary>Makes the folder with the demo recipes and kitchens, when there is none yet.</summary>
    /// <exception cref="IOException">The folder cannot be made.</exception>
    public void Make()
    {
        Fill(folder.Recipes, Shipped + "recipes/");
        Fill(folder.Kitchens, Shipped + "kitchens/");
    }

    /// <summary>Names of the recipes, in order.</summary>
    public IReadOnlyList<string> Recipes => Names(folder.Recipes);

    public IReadOnlyList<string> Kitchens => Names(folder.Kitchens);

    /// <summary>The bytes of a recipe; null when none has this name. Only names that lie in the folder are looked at, so no name leads out of it.</summary>
    public byte[]? Recipe(string name) => Read(folder.Recipes, name);

    public byte[]? Kitchen(string name) => Read(folder.Kitchens, name);

    private static byte[]? Read(string inside, string name) =>
        Names(inside).Contains(name, StringComparer.Ordinal) ? File.ReadAllBytes(Path.Join(inside, name + Ending)) : null;

    private static string[] Names(string inside) => Directory.Exists(inside)
        ? [.. Directory.EnumerateFiles(inside, "*" + Ending).Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)]
        : [];

    private static void Fill(string into, string from)
    {
        if (Directory.Exists(into))
        {
            return;
        }

        var beside = into + ".new";
        Directory.CreateDirectory(beside);
        foreach (var name in EmbeddedFile.Under(typeof(ShelfFolder).Assembly, from))
        {
            File.WriteAllBytes(Path.Join(beside, name[from.Length..]), EmbeddedFile.Bytes(typeof(ShelfFolder).Assembly, name));
        }

        Directory.Move(beside, into);
    }
}
