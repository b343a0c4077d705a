using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>The shelf in finished words and pictures.</summary>
/// <param name="Rows">In the order of their beginning; what has none comes last.</param>
/// <param name="Axis">Markup of the clock above the rows; null while there is nothing to draw.</param>
/// <param name="Nights">Markup of the nights behind every strip.</param>
/// <param name="Progress">How far the rehearsing is; null when it is done.</param>
internal sealed record ShelfView(IReadOnlyList<RowView> Rows, string? Axis, string Nights, string Clock, string? Progress)
{
    private const double Width = 690;
    private const double Height = 64;

    public static ShelfView Of(ShelfWork work, ShelfAsked asked, ShelfClock clock, Voice voice)
    {
        var count = work.Entries.Count;
        var scale = work.Scale;
        var drawn = scale is not null && work.Entries.Any(entry => entry.Strip is not null);
        return new(
            [.. work.Entries.OrderByDescending(OrderOf).Select(entry => RowView.Of(entry, scale is not null, asked, clock, voice))],
            drawn ? ShelfStrips.Axis(scale!, asked.Ready, voice) : null,
            drawn ? NightsOf(clock.Nights(asked.Ready, scale!.Span), scale.Span) : "",
            voice.Say("shelf.clock", ("time", ClockWords.Time(TimeOnly.FromDateTime(asked.Ready), voice))),
            scale is null ? voice.Say("shelf.progress", ("done", work.Done), ("count", count)) : null);
    }

    /// <summary>Unknown lengths after known ones, unread texts after those, and what is no text last.</summary>
    private static double OrderOf(ShelfEntry entry) => entry switch
    {
        { Trouble: not null } => -4,
        { Row: null } => -3,
        { Row.LinesNotUnderstood: not null } => -2,
        { Row.Total: null } => -1,
        { Row.Total: { } total } => total,
    };

    private static string NightsOf(IReadOnlyList<NightSpan> nights, Duration span)
    {
        var svg = new Svg();
        foreach (var night in nights)
        {
            var left = Width * (1 - (night.Falls / span));
            svg.Rect("night", left, 0, (Width * (1 - (night.Ends / span))) - left, Height);
        }

        return FormattableString.Invariant($"<svg class=\"strip mini nights\" viewBox=\"0 0 {Width} {Height}\" aria-hidden=\"true\" preserveAspectRatio=\"xMaxYMid meet\">{svg}</svg>");
    }
}
