using Doughwright.App.Desk.Layout;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Shelf;

/// <summary>Addresses that the shelf leads to.</summary>
internal static class ShelfAddress
{
    /// <summary>Value of the measures in an address.</summary>
    public const string Us = "us";

    /// <summary>The page of a recipe in the kitchen and the measures of the shelf.</summary>
    public static string OfRecipe(string name, ShelfAsked asked, Voice voice) => QueryHelpers.AddQueryString(
        "recipes/" + Uri.EscapeDataString(name),
        new Dictionary<string, string?> { [ShelfAsked.KitchenName] = asked.Kitchen, [Speaker.MeasuresName] = MeasuresOf(voice) });

    /// <summary>Null for the usual measures, which no address names.</summary>
    public static string? MeasuresOf(Voice voice) => voice.Measures == MeasureSystem.Us ? Us : null;
}
