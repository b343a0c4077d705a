using Doughwright.Publishing.Pictures.Strips;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The shelf in finished words and pictures.</summary>
/// <param name="Rows">In the order of their beginning; what has none comes last.</param>
/// <param name="Axis">Markup of the clock above the rows; null while there is nothing to draw.</param>
/// <param name="Nights">Markup of the nights behind every strip.</param>
/// <param name="Progress">How far the rehearsing is; null when it is done.</param>
internal sealed record ShelfView(IReadOnlyList<RowView> Rows, string? Axis, string Nights, string Clock, string? Progress)
{
    public static ShelfView Of(ShelfWork work, ShelfAsked asked, ShelfClock clock, Voice voice)
    {
        var count = work.Entries.Count;
        var scale = work.Scale;
        var drawn = scale is not null && work.Entries.Any(entry => entry.Strip is not null);
        return new(
            [.. work.Entries.OrderByDescending(OrderOf).Select(entry => RowView.Of(entry, scale is not null, asked, clock, voice))],
            drawn ? ShelfStrips.Axis(scale!, asked.Ready, voice) : null,
            drawn ? Strips.Nights(clock.Nights(asked.Ready, scale!.Span), scale.Span) : "",
            voice.Say("shelf.clock", ("time", ClockWords.Time(TimeOnly.FromDateTime(asked.Ready), voice))),
            scale is null ? voice.Say("shelf.progress", ("done", work.Done), ("count", count)) : null);
    }

    /// <summary>Unknown lengths after known ones, and unread texts last.</summary>
    private static double OrderOf(ShelfEntry entry) => entry switch
    {
        { Row: null } => -3,
        { Row.LinesNotUnderstood: not null } => -2,
        { Row.Total: null } => -1,
        { Row.Total: { } total } => total,
    };
}
