using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Hosting;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Asking;

/// <summary>A folder of recipes and kitchens of its own for a test; gone with it.</summary>
internal sealed class Bench : IDisposable
{
    public Bench()
    {
        Folder = new(Directory.CreateTempSubdirectory("doughwright-test").FullName);
    }

    public DataFolder Folder { get; }

    public ShelfFolder Shelf => Shelves.At(Folder);

    public static Recipe Rolls { get; } = RecipeText.Read(File.ReadAllText(House.PotatoRolls)).Recipe!;

    public QuestionReader Reader(Recipe? recipe = null, string name = "potato-rolls") => new(recipe ?? Rolls, name, Shelf, Words.Shipped);

    public Understood Read(string query, MeasureSystem measures = MeasureSystem.Metric) => Reader().Read(Question.Of(query), measures);

    public void WriteKitchen(string name, string text) => Shelves.Put(Shelf.KitchenTexts, name, text);

    public void WriteRecipe(string name, string text) => Shelves.Put(Shelf.RecipeTexts, name, text);

    public void Dispose() => Shelves.Remove(Folder);
}
