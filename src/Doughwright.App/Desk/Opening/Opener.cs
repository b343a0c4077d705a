using System.Text;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Opening;

/// <summary>Takes a text: lays it into the folder when every line of it is understood, and says what is the matter otherwise.</summary>
internal static class Opener
{
    private const string KitchenKey = "kitchen";
    private static readonly string[] RecipeKeys = ["title", "parts", "steps", "home", "make"];

    public static OpenAnswer Take(OpenedText given, ShelfFolder folder, Voice voice)
    {
        if (ByteFaults.Of(given, voice) is { } fault)
        {
            return new() { Fault = fault };
        }

        var file = InputFile.Of("", given.Bytes);
        return IsKitchen(file.Text) ? TakeKitchen(given, file, folder, voice) : TakeRecipe(given, file, folder, voice);
    }

    /// <summary>Everything that is found in a text that stands in the book already; nothing is written.</summary>
    /// <returns>No finding when every line is understood.</returns>
    public static OpenAnswer Show(byte[] bytes, bool kitchen, Voice voice)
    {
        if (ByteFaults.Of(new(bytes, null), voice) is { } fault)
        {
            return new() { Fault = fault };
        }

        var file = InputFile.Of("", bytes);
        var (findings, understood) = kitchen ? OfKitchen(file) : OfRecipe(file);
        return understood ? new() { Text = file.Text } : NotUnderstood(file, findings, voice);
    }

    /// <summary>A text with a way out carried out, and what was done in words; null when the text has no such way out.</summary>
    /// <param name="way">Id of the way out.</param>
    public static (string Text, string Verb)? Mended(string text, string way, Voice voice)
    {
        var file = new InputFile("", text, []);
        var (findings, _) = IsKitchen(text) ? OfKitchen(file) : OfRecipe(file);
        return OffersOf(file, findings).All.FirstOrDefault(offer => offer.Id == way) is { } remedy ? (remedy.CarryOut(text), RemedyWords.Verb(remedy, voice)) : null;
    }

    /// <summary>Everything that is found in a text that was typed; nothing is written.</summary>
    public static OpenAnswer ShowTyped(string text, Voice voice) => Show(Encoding.UTF8.GetBytes(text), IsKitchen(text), voice);

    private static Offers OffersOf(InputFile file, IReadOnlyList<Finding> findings) => file.Findings.Count == 0 ? Offers.Of(findings, null) : Offers.None;

    private static OpenAnswer TakeRecipe(OpenedText given, InputFile file, ShelfFolder folder, Voice voice)
    {
        var (reading, findings, understood) = CommandRun.Understand(file);
        return understood
            ? Lay(folder.RecipeTexts, TextNames.Of(reading.Recipe!.Title, "recipe"), given, file, name => "/recipes/" + Uri.EscapeDataString(name), voice)
            : NotUnderstood(file, findings, voice);
    }

    private static OpenAnswer TakeKitchen(OpenedText given, InputFile file, ShelfFolder folder, Voice voice)
    {
        var (findings, understood) = OfKitchen(file);
        var kitchen = KitchenText.Read(file.Text).Kitchen;
        return understood && kitchen is not null
            ? Lay(folder.KitchenTexts, TextNames.Of(kitchen.Name, KitchenKey), given, file, name => QueryHelpers.AddQueryString("/", ShelfAsked.KitchenName, name), voice)
            : NotUnderstood(file, findings, voice);
    }

    private static OpenAnswer Lay(BookTexts folder, string wanted, OpenedText given, InputFile file, Func<string, string> addressOf, Voice voice)
    {
        try
        {
            return new() { Address = ShelfAddress.InMeasures(addressOf(folder.Lay(wanted, file.Text, voice.Words["book.laid"])), voice) };
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return new() { Fault = OpenFault.Of("open-not-written", voice, ("folder", folder.Path), ("reason", problem.Message)), Text = file.Text };
        }
    }

    private static (IReadOnlyList<Finding> Findings, bool Understood) OfRecipe(InputFile file)
    {
        var (_, findings, understood) = CommandRun.Understand(file);
        return (findings, understood);
    }

    private static (IReadOnlyList<Finding> Findings, bool Understood) OfKitchen(InputFile file)
    {
        var reading = KitchenText.Read(file.Text);
        return ([.. file.Findings, .. reading.Findings], reading.Understood && reading.Kitchen is not null && file.Findings.Count == 0);
    }

    /// <summary>A text whose bytes could not all be read does not go into the field: what it shows there would not be what the file holds.</summary>
    private static OpenAnswer NotUnderstood(InputFile file, IReadOnlyList<Finding> findings, Voice voice) => new()
    {
        Findings = QuotedFinding.All(findings, file.Text, OffersOf(file, findings), voice),
        Text = file.Findings.Count == 0 ? file.Text : "",
    };

    /// <summary>A kitchen text names its kitchen on a line of its own and has nothing that only a recipe has.</summary>
    private static bool IsKitchen(string text)
    {
        var keys = text.Split('\n').Where(line => line.Length > 0 && char.IsLetter(line[0])).Select(line => line.Split(':')[0].TrimEnd()).ToHashSet(StringComparer.Ordinal);
        return keys.Contains(KitchenKey) && !RecipeKeys.Any(keys.Contains);
    }
}
