using System.Globalization;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Notes;
using Doughwright.Publishing.Pages.Method;

namespace Doughwright.Publishing.Pages;

/// <summary>Everything that a page says, in words, before it is written as markup. Markup and structured data both come from it.</summary>
internal sealed record PageContent
{
    /// <summary>Where the drawing of the day stands in the page.</summary>
    public const string StripId = "day";

    public required string Title { get; init; }

    /// <summary>What the author says to the reader first.</summary>
    public required IReadOnlyList<string> Lead { get; init; }

    /// <summary>Photos of the whole.</summary>
    public required IReadOnlyList<PagePhoto> Photos { get; init; }

    /// <summary>Whether a photo stands in the page.</summary>
    public bool ShowsPhotos => Photos.Concat(Steps.SelectMany(step => step.Photos)).Any(photo => photo.Made is not null);

    /// <summary>What comes out: "10 rolls"; null when the recipe does not say.</summary>
    public required string? Yield { get; init; }

    /// <summary>From the first hand to the last step, in fives as printed; null when it cannot be told.</summary>
    public required Duration? Total { get; init; }

    /// <summary>The facts of the head: a name and its words.</summary>
    public required IReadOnlyList<(string Term, string Words)> Facts { get; init; }

    /// <summary>The drawing of the day, wide and tall; null without steps.</summary>
    public required (string Wide, string Tall)? Strip { get; init; }

    public required string StripCaption { get; init; }

    public required RoomSection? Rooms { get; init; }

    public required IReadOnlyList<PagePart> Parts { get; init; }

    /// <summary>Whether a line has no US measure that comes near enough.</summary>
    public required bool HasNoMeasure { get; init; }

    public required IReadOnlyList<PageStep> Steps { get; init; }

    /// <summary>Teaching notes that the steps link to, each once.</summary>
    public IReadOnlyList<PageNote> Notes { get; init; } = [];

    /// <summary>What stands before a cue.</summary>
    public required string DoneWhen { get; init; }

    public required IReadOnlyList<PageTool> Tools { get; init; }

    /// <summary>What to do without something that is no tool of the list.</summary>
    public required IReadOnlyList<PageTool> Without { get; init; }

    public required IReadOnlyList<string> Swaps { get; init; }

    public required IReadOnlyList<string> Keeping { get; init; }

    /// <summary>Cautions: safety first, then allergens.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>What is not settled in the recipe and was not accepted by its author.</summary>
    public required IReadOnlyList<string> Unsettled { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required IReadOnlyList<string> Basis { get; init; }

    /// <summary>Where a note stands in the page, counted from zero.</summary>
    public static string NoteId(int index) => string.Create(CultureInfo.InvariantCulture, $"note-{index + 1}");

    /// <summary>Where a step stands in the page, counted from zero.</summary>
    public static string StepId(int index) => string.Create(CultureInfo.InvariantCulture, $"step-{index + 1}");
}

/// <summary>A teaching note with the values of this recipe.</summary>
/// <param name="Id">Where it stands in the page.</param>
internal sealed record PageNote(string Id, ToldNote Note)
{
    /// <summary>What it is called in the book.</summary>
    public required string Name { get; init; }
}

/// <summary>A part of the recipe with its lines.</summary>
/// <param name="Note">What to buy for it, where that differs; null for none.</param>
internal sealed record PagePart(string Name, string? Note, IReadOnlyList<PageLine> Lines);

/// <summary>One ingredient in both systems, the reader's first.</summary>
/// <param name="Weight">In grams, which one of the two columns holds.</param>
/// <param name="IsPart">Whether it is a part of the recipe made beforehand.</param>
internal sealed record PageLine(string Name, string First, string Second, string Weight, bool IsPart);

/// <summary>A tool, or something else that a reader may lack.</summary>
/// <param name="Without">What to do without it; null when the author does not say.</param>
internal sealed record PageTool(string Name, string? Without);

/// <summary>The rises by the warmth of the room, in words.</summary>
/// <param name="Notes">What is kept in every room, and how to read the table.</param>
/// <param name="Lever">Head of the column that says what goes in warmer or colder; null where nothing does.</param>
internal sealed record RoomSection(IReadOnlyList<string> Notes, string? Lever, IReadOnlyList<string> Rises, IReadOnlyList<RoomLine> Rows);

/// <param name="Times">Likely time and range; the range is null where there is none.</param>
internal sealed record RoomLine(string Room, bool IsHere, string? Lever, IReadOnlyList<(string Likely, string? Range)> Times);
