using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Shelf;

/// <summary>Addresses that the shelf leads to.</summary>
internal static class ShelfAddress
{
    /// <summary>The page of a recipe in the kitchen and the measures of the shelf.</summary>
    public static string OfRecipe(string name, ShelfAsked asked, Voice voice) => QueryHelpers.AddQueryString(
        "recipes/" + Uri.EscapeDataString(name),
        new Dictionary<string, string?> { [ShelfAsked.KitchenName] = asked.Kitchen, [Question.Measures] = MeasuresOf(voice) });

    /// <summary>The page on which it is said how a recipe stands.</summary>
    public static string OfStanding(string name, Voice voice) => InMeasures($"recipes/{Uri.EscapeDataString(name)}/standing", voice);

    /// <summary>The page that shows the lines of a recipe's text.</summary>
    public static string OfText(string name, Voice voice) => InMeasures(QueryHelpers.AddQueryString("open", "name", name), voice);

    /// <summary>The page that shows the lines of a kitchen's text.</summary>
    public static string OfKitchenText(string name, Voice voice) => InMeasures(QueryHelpers.AddQueryString("open", ShelfAsked.KitchenName, name), voice);

    /// <summary>An address that keeps the measures of the page it stands on.</summary>
    public static string InMeasures(string address, Voice voice) =>
        MeasuresOf(voice) is { } measures ? QueryHelpers.AddQueryString(address, Question.Measures, measures) : address;

    /// <summary>Null for the usual measures, which no address names.</summary>
    public static string? MeasuresOf(Voice voice) => MeasureNames.InAddress(voice.Measures);
}
