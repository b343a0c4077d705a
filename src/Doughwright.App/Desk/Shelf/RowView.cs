using Doughwright.App.Desk.Standing;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Shelf;

/// <summary>A row of the shelf in finished words.</summary>
/// <param name="Address">Where the title leads; null where there is nothing to show.</param>
/// <param name="Lines">Facts, or why there are none.</param>
/// <param name="Marks">Findings by mark.</param>
/// <param name="Strip">Markup of the small strip; null where there is none.</param>
/// <param name="Instead">What is said in place of the strip.</param>
/// <param name="Begin">When the first hand begins; null when that cannot be told.</param>
/// <param name="Beside">Under the beginning: time by hand, and what comes before.</param>
internal sealed record RowView(
    string Title,
    string? Address,
    IReadOnlyList<string> Lines,
    IReadOnlyList<RowMark> Marks,
    string? Strip,
    string? Instead,
    string? Begin,
    IReadOnlyList<string> Beside)
{
    /// <summary>How it stands, in words, and the page on which that is said.</summary>
    public FilterLink? Standing { get; init; }

    public static RowView Of(ShelfEntry entry, bool drawn, ShelfAsked asked, ShelfClock clock, Voice voice)
    {
        if (entry.Row is not { } row)
        {
            return Empty(entry.Name, ShelfAddress.OfRecipe(entry.Name, asked, voice), [voice.Words[entry.Failed ? "shelf.row-fault" : "shelf.waits"]]);
        }

        if (row.LinesNotUnderstood is { } lines)
        {
            return Empty(entry.Name, ShelfAddress.OfText(entry.Name, voice), [NotUnderstood(lines, voice)]);
        }

        string[] hands = row.Hands is { } minutes ? [voice.Say("shelf.by-hand", ("hands", Duration.FromMinutes(minutes)))] : [];
        return new(
            row.Title.Trim().Length > 0 ? row.Title : entry.Name,
            ShelfAddress.OfRecipe(entry.Name, asked, voice),
            [row.Facts],
            [.. row.Findings.Select(count => RowMark.Of(count, voice))],
            entry.Strip,
            row.Total is null ? voice.Words["shelf.length-unknown"]
                : entry.TooTall ? voice.Words["shelf.too-tall"]
                : entry.Strip is null && drawn ? voice.Words["shelf.no-strip"] : null,
            row.Total is { } total ? ClockWords.DayAndTime(clock.Before(asked.Ready, Duration.FromMinutes(total)), voice) : null,
            [.. hands, .. Ahead(row, asked, clock, voice)])
        {
            Standing = new(Standings.Words(entry.Said, voice) ?? voice.Words["standing.link"], ShelfAddress.OfStanding(entry.Name, voice)),
        };
    }

    private static string NotUnderstood(int lines, Voice voice) => lines switch
    {
        0 => voice.Words["shelf.text-not-understood"],
        1 => voice.Words["shelf.line-not-understood"],
        _ => voice.Say("shelf.lines-not-understood", ("count", lines)),
    };

    private static RowView Empty(string title, string? address, IReadOnlyList<string> lines) => new(title, address, lines, [], null, null, null, []);

    private static IEnumerable<string> Ahead(KeptRow row, ShelfAsked asked, ShelfClock clock, Voice voice) => row.Total is { } total
        ? row.Ahead.Select(ahead => voice.Say(
            "shelf.ahead",
            ("time", ClockWords.DayAndTime(clock.Before(asked.Ready, Duration.FromMinutes(total + ahead.Minutes)), voice)),
            ("step", ahead.Name)))
        : [];
}
