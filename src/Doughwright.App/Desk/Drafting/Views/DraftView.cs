using Doughwright.App.Desk.Mending;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.App.Desk.Shelf;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>Everything the page shows of a recipe that is being written.</summary>
/// <param name="Status">"Written down; last change 16:04."</param>
/// <param name="Undo">What comes back by one step back; null at the beginning.</param>
/// <param name="Redo">What one step forward does again; null when nothing was taken back.</param>
/// <param name="Parts">Null where the text in the book is not understood.</param>
/// <param name="Steps">The method; what is closed has no fields.</param>
/// <param name="Elsewhere">Findings that no place of the sheet took.</param>
public sealed record DraftView(
    string Title, string Status, string? Undo, string? Redo, MakeView? Make, IReadOnlyList<PartView>? Parts, IReadOnlyList<StepView> Steps, IReadOnlyList<FindingView> Elsewhere, TextView Text)
{
    /// <summary>What the author accepts of what is looked for here.</summary>
    public IReadOnlyList<AcceptedView> Accepted { get; init; } = [];

    /// <summary>That readers have the recipe; null where they have not.</summary>
    public string? Given { get; init; }

    /// <summary>What stands beside lines and method; null where the text is not understood.</summary>
    public AroundView? Around { get; init; }

    internal static DraftView Of(Manuscript manuscript, Func<string, bool> isOpen, string held, Voice voice, ShelfClock clock)
    {
        var file = manuscript.File;
        var text = TextView.Of(manuscript, voice);
        var paper = file.Paper;
        var blank = new DraftView(
            file.Recipe?.Title ?? file.Name,
            StatusOf(clock.Here(paper.At), clock.Now, voice),
            manuscript.Worked.Back is { } back ? voice.Say("write.undo", ("back", back)) : null,
            paper.Redo is { } redo ? voice.Say("write.redo", ("did", redo)) : null,
            null, null, [], [], text);
        if (file is not { Recipe: { } recipe, Formula: { } formula })
        {
            return blank;
        }

        var findings = new PlacedFindings(manuscript.Worked, recipe, voice);
        var warmth = new WarmthCells(manuscript.Worked.AtHome);
        PartView[] parts = [.. formula.Components.Select(part => PartView.Of(formula, part, findings, warmth, voice))];
        var steps = StepView.All(manuscript, recipe, findings, isOpen, voice);
        var around = AroundView.Of(recipe, findings);
        return blank with { Around = around, Steps = steps, Make = MakeView.Of(formula, held, voice), Parts = parts, Elsewhere = findings.Rest, Accepted = AcceptedView.All(manuscript.Worked.Accepted, voice) };
    }

    private static string StatusOf(DateTime at, DateTime now, Voice voice)
    {
        var time = ClockWords.Time(TimeOnly.FromDateTime(at), voice);
        return at.Date == now.Date
            ? voice.Say("write.written", ("time", time))
            : voice.Say("write.written-on", ("day", ClockWords.Date(DateOnly.FromDateTime(at), voice)), ("time", time));
    }
}
