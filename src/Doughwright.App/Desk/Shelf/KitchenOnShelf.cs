using Doughwright.Engine.Kitchens;

namespace Doughwright.App.Desk.Shelf;

/// <summary>A kitchen of the book.</summary>
/// <param name="Name">Name of its file.</param>
/// <param name="Kitchen">Null when its text was not understood.</param>
internal sealed record KitchenOnShelf(string Name, Kitchen? Kitchen)
{
    /// <summary>What it calls itself, or the name of its file.</summary>
    public string Shown => Kitchen is { Name.Length: > 0 } named ? named.Name : Name;

    public static IReadOnlyList<KitchenOnShelf> All(ShelfFolder folder) =>
        [.. folder.Kitchens.Select(name => new KitchenOnShelf(name, ShelfKitchen.Find(folder, name)?.Kitchen))];
}
