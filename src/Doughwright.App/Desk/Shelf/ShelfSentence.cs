using Doughwright.App.Commands;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The sentence of the shelf, whose values are controls.</summary>
internal sealed record ShelfSentence(
    IReadOnlyList<SentencePart> Parts,
    IReadOnlyList<Choice> Days,
    IReadOnlyList<Choice> Kitchens,
    string Time,
    string? TimeRefused,
    IReadOnlyList<string> Said)
{
    private const int DaysAhead = 7;

    public static ShelfSentence Of(ShelfAsked asked, ShelfClock clock, IReadOnlyList<KitchenOnShelf> kitchens, Fault? measuresRefused, Voice voice)
    {
        var today = DateOnly.FromDateTime(clock.Now);
        Choice[] days = [.. Enumerable.Range(0, DaysAhead).Select(today.AddDays).Select(day => DayOf(day, ClockWords.Day(day.DayOfWeek, voice), asked))];
        // A link of last week still says which day it means.
        Choice[] other = days.Any(day => day.IsChosen) ? [] : [DayOf(asked.Day, ClockWords.Date(asked.Day, voice), asked)];
        var known = kitchens.Where(kitchen => kitchen.Kitchen is not null)
            .Select(kitchen => new Choice(kitchen.Name, kitchen.Shown, kitchen.Name == asked.Kitchen));
        var past = asked.Ready <= clock.Now ? voice.Words["shelf.past"] : null;
        return new(
            SentencePart.Cut(voice.Words["shelf.ready"]),
            [.. other, .. days],
            [new("", voice.Words["shelf.own-kitchen"], asked.Kitchen is null), .. known],
            asked.TimeTyped,
            asked.TimeRefused,
            [.. asked.Refused, .. measuresRefused is { } fault ? [$"{fault.Message} {fault.WayOut}"] : Array.Empty<string>(), .. past is null ? Array.Empty<string>() : [past]]);
    }

    private static Choice DayOf(DateOnly day, string name, ShelfAsked asked) => new(ShelfAsked.AddressOf(day), name, day == asked.Day);
}

/// <summary>One entry of a list to choose from.</summary>
internal sealed record Choice(string Value, string Name, bool IsChosen);
