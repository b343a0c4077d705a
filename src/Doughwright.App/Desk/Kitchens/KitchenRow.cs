using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Kitchens;

/// <summary>A kitchen that is kept.</summary>
/// <param name="Id">Of its head on the page; names of files may have signs that no id has.</param>
/// <param name="Name">Name of its file.</param>
/// <param name="Said">The kitchen in words, or that its text is not understood.</param>
/// <param name="Shelf">Address of the recipes in it.</param>
/// <param name="Text">Address of the page with its text.</param>
/// <param name="Change">Address of the page on which it is changed.</param>
internal sealed record KitchenRow(string Id, string Name, string Title, string Said, string Shelf, string Text, string Change)
{
    public static IReadOnlyList<KitchenRow> All(ShelfFolder folder, Voice voice) => [.. KitchenOnShelf.All(folder).Select((kitchen, index) => new KitchenRow(
        FormattableString.Invariant($"kitchen-{index + 1}"),
        kitchen.Name,
        kitchen.Shown,
        kitchen.Kitchen is { } known ? KitchenSentence.Of(known, voice) : voice.Words["kitchens.not-understood"],
        ShelfAddress.InMeasures(QueryHelpers.AddQueryString("/", ShelfAsked.KitchenName, kitchen.Name), voice),
        ShelfAddress.OfKitchenText(kitchen.Name, voice),
        ShelfAddress.InMeasures($"/kitchens/{Uri.EscapeDataString(kitchen.Name)}/change", voice)))];
}
