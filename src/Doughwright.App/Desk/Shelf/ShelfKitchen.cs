using Doughwright.App.Commands;
using Doughwright.Engine.Kitchens;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The kitchen of a shelf.</summary>
/// <param name="Kitchen">Null is the own kitchen of each recipe.</param>
/// <param name="Bytes">Its text; null like <paramref name="Kitchen"/>.</param>
internal sealed record ShelfKitchen(Kitchen? Kitchen, byte[]? Bytes)
{
    public static ShelfKitchen Own { get; } = new(null, null);

    /// <summary>A kitchen of the book; null when its text is not there or not understood.</summary>
    public static ShelfKitchen? Find(ShelfFolder folder, string name) =>
        folder.Kitchen(name) is { } bytes && KitchenShelf.Read(InputFile.Of(name, bytes)) is { Understood: true, Kitchen: { } kitchen } ? new(kitchen, bytes) : null;
}
