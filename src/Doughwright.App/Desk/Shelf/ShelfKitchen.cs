using Doughwright.App.Commands;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The kitchen of a shelf.</summary>
/// <param name="Kitchen">Null is the own kitchen of each recipe.</param>
/// <param name="Bytes">Its text; null like <paramref name="Kitchen"/>.</param>
internal sealed record ShelfKitchen(Kitchen? Kitchen, byte[]? Bytes)
{
    public static ShelfKitchen Own { get; } = new(null, null);

    /// <summary>A kitchen of the folder; null when its text is not there or not understood.</summary>
    public static ShelfKitchen? Find(ShelfFolder folder, string name) =>
        folder.Kitchen(name) is { } bytes && Understood(bytes) is { } kitchen ? new(kitchen, bytes) : null;

    /// <summary>The kitchen in a text; null when a line was not understood.</summary>
    public static Kitchen? Understood(byte[] bytes)
    {
        var file = InputFile.Of("", bytes);
        var reading = KitchenText.Read(file.Text);
        return reading.Understood && file.Findings.Count == 0 ? reading.Kitchen : null;
    }
}
