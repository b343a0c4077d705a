using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Kitchens;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Beside;

/// <summary>The kitchen that both are rehearsed in.</summary>
/// <param name="Name">Name of its text in the book; empty for home.</param>
/// <param name="Kitchen">Null for home.</param>
internal sealed record KitchenChoice(string Name, Kitchen? Kitchen)
{
    public static KitchenChoice Home { get; } = new("", null);

    /// <summary>Home with a fault where there is no such kitchen.</summary>
    public static KitchenChoice Of(string asked, ShelfFolder shelf, Faults faults) =>
        asked.Length == 0 || KitchenAsked.Find([asked], shelf, faults).Kitchen is not { } kitchen ? Home : new(KitchenAsked.FileOf(asked, shelf)!, kitchen);

    public static IReadOnlyList<SideChoice> All(KitchenChoice picked, ShelfFolder shelf, Voice voice) =>
    [
        new("", voice.Words["sides.home"], picked.Name.Length == 0),
        .. KitchenOnShelf.All(shelf).Where(kitchen => kitchen.Kitchen is not null).Select(kitchen => new SideChoice(kitchen.Name, kitchen.Shown, kitchen.Name == picked.Name)),
    ];

    /// <summary>The same typed into a terminal.</summary>
    public string CommandLine(string first, string second, bool because, ShelfFolder shelf) =>
        CommandLineText.OfTwo(first, second, Name.Length == 0 ? [] : [new(Question.Kitchen, Name)], because, shelf);
}
