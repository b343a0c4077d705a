using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Shelf;

namespace Doughwright.App.Tests.Desk.Shelf;

/// <summary>A folder of the user's that is gone after the test.</summary>
internal sealed class Scratch : IDisposable
{
    public Scratch() => Data = new(Directory.CreateTempSubdirectory("shelf-").FullName);

    public DataFolder Data { get; }

    public ShelfFolder Folder => new(Data);

    public static Scratch WithTheShipped()
    {
        var scratch = new Scratch();
        scratch.Folder.Make();
        return scratch;
    }

    /// <summary>Lays a text among the recipes, whatever it is called.</summary>
    public Scratch Put(string name, string text)
    {
        Directory.CreateDirectory(Data.Recipes);
        File.WriteAllText(Path.Join(Data.Recipes, name + ".yaml"), text);
        return this;
    }

    public void Dispose() => Directory.Delete(Data.Root, recursive: true);
}
