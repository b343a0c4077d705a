using System.Text;
using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Shelf;

namespace Doughwright.App.Tests.Desk.Shelf;

/// <summary>A book of the user's, empty at first, that is gone after the test.</summary>
internal sealed class Scratch : IDisposable
{
    public Scratch()
        : this(new DataFolder(Directory.CreateTempSubdirectory("shelf-").FullName))
    {
        Directory.CreateDirectory(Data.Recipes);
        Directory.CreateDirectory(Data.Kitchens);
    }

    private Scratch(DataFolder data) => Data = data;

    public DataFolder Data { get; }

    public ShelfFolder Folder => Shelves.At(Data);

    public static Scratch WithTheShipped() => new(new DataFolder(Directory.CreateTempSubdirectory("shelf-").FullName));

    /// <summary>Lays a text among the recipes, whatever it is called.</summary>
    public Scratch Put(string name, string text)
    {
        Shelves.Put(Folder.RecipeTexts, name, text);
        return this;
    }

    public Scratch PutKitchen(string name, string text)
    {
        Shelves.Put(Folder.KitchenTexts, name, text);
        return this;
    }

    /// <summary>Every file of it. The copy of the day is none of them: it is made while the desk is open.</summary>
    public IReadOnlyList<string> Files =>
        [.. Directory.GetFiles(Data.Root, "*", SearchOption.AllDirectories).Where(file => !file.StartsWith(Path.Join(Data.Root, "copies"), StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    /// <summary>What a recipe says now.</summary>
    public string Text(string name) => Encoding.UTF8.GetString(Folder.Recipe(name)!);

    public void Dispose() => Shelves.Remove(Data);
}
