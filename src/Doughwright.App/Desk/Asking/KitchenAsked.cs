using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Asking;

/// <summary>A kitchen of the book, by its name there or by its own. An address leads to no other file.</summary>
/// <param name="Kitchen">Null when none was asked for, or when a fault says why there is none.</param>
internal readonly record struct KitchenAsked(Kitchen? Kitchen, IReadOnlyList<Finding> Findings)
{
    private static KitchenAsked None => new(null, []);

    /// <summary>What a kitchen's own file is called, however it was asked for; null when there is none.</summary>
    public static string? FileOf(string asked, ShelfFolder shelf)
    {
        var names = shelf.Kitchens;
        return names.FirstOrDefault(name => string.Equals(name, asked, StringComparison.OrdinalIgnoreCase))
            ?? names.FirstOrDefault(name => string.Equals(Read(name, shelf)?.Kitchen?.Name, asked, StringComparison.OrdinalIgnoreCase));
    }

    public static KitchenAsked Find(IReadOnlyList<string> asked, ShelfFolder shelf, Faults faults)
    {
        if (asked.Count > 1)
        {
            faults.Add("option-twice", ("option", "--" + Question.Kitchen), ("values", asked));
        }

        if (asked.Count == 0)
        {
            return None;
        }

        if (FileOf(asked[0], shelf) is not { } name || Read(name, shelf) is not { } found)
        {
            faults.AddUnknown("kitchen-unknown", asked[0], shelf.Kitchens);
            return None;
        }

        if (!found.Understood || found.Kitchen is null)
        {
            var first = found.Findings.OrderByDescending(finding => finding.Grade).First();
            faults.Add("kitchen-not-understood", ("kitchen", name), ("line", first.Position.Line), ("reason", FindingWords.Message(first, faults.Voice)));
            return None;
        }

        return new(found.Kitchen, found.Findings);
    }

    private static KitchenShelf.Found? Read(string name, ShelfFolder shelf) =>
        shelf.Kitchen(name) is { } bytes ? KitchenShelf.Read(InputFile.Of(name, bytes)) : null;
}
