using System.Globalization;
using Doughwright.App.Desk.Beside;
using Doughwright.App.Desk.Recipes;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Desk.States;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Notes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Notes;
using Doughwright.Publishing.Pictures.Keys;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Notes;

/// <summary>A note on its own page, in finished words.</summary>
/// <param name="Stamp">The state that it is in.</param>
/// <param name="Undo">What comes back by one step back; null where there is none.</param>
/// <param name="Choices">Recipes whose values can stand in it.</param>
/// <param name="At">At which step of the recipe it is read; empty for none.</param>
/// <param name="Told">How it reads there; null where no recipe is understood.</param>
internal sealed record NoteView(
    string Title,
    string Facts,
    string Text,
    string Stamp,
    string Address,
    string? Undo,
    string? Redo,
    IReadOnlyList<NoteFinding> Findings,
    IReadOnlyList<UseView> Uses,
    string HowToLink,
    IReadOnlyList<SideChoice> Choices,
    string At,
    bool IsAtNoStep,
    ToldNote? Told,
    IReadOnlyList<(string Name, string Meaning)> Names)
{
    private static readonly string[] Own =
        [NoteNames.ThisStep, NoteNames.ThisPart, NoteNames.ThisTime, NoteNames.ThisTemperature, NoteNames.ThisPartTemperature, NoteNames.ThisWeight, NoteNames.ThisCue];

    /// <param name="recipe">The recipe that is asked for; null for the first that links to it.</param>
    /// <param name="step">The step of it; null for the first that links to it.</param>
    /// <returns>Null when the book has no note of this name.</returns>
    public static NoteView? Of(string name, string? recipe, string? step, ShelfFolder shelf, StateDays days, Voice voice)
    {
        if (shelf.NoteTexts.Find(name) is not { } paper || shelf.Book.Papers.TextOf(paper.State) is not { } text)
        {
            return null;
        }

        var (reading, titles) = (NoteText.Read(text), RecipeTitle.Apart(shelf, voice));
        var uses = NoteUse.All(shelf)[name].ToArray();
        var shown = recipe is { Length: > 0 } && shelf.Recipes.Contains(recipe, StringComparer.Ordinal) ? recipe : uses.Length > 0 ? uses[0].Recipe : shelf.Recipes.FirstOrDefault();
        var file = shown is null ? null : RecipeFile.Read(shown, shelf);
        var at = file?.Recipe?.FindStep(step ?? "") ?? file?.Recipe?.FindStep(uses.FirstOrDefault(use => use.Recipe == shown)?.Step ?? "");
        return new(
            reading.Note is { Title.Length: > 0 } note ? note.Title : name,
            voice.Say("notes.last-change", ("moment", days.DayAndTime(paper.At))),
            text,
            paper.State.ToString(CultureInfo.InvariantCulture),
            NoteAddress.Of(name),
            BackWords.Undo(shelf.Book, paper, voice),
            paper.Redo is { } redo ? voice.Say("notes.redo", ("did", redo)) : null,
            [.. reading.Findings.Select(finding => NoteFinding.Of(finding, voice))],
            [.. uses.Select(use => new UseView(titles.GetValueOrDefault(use.Recipe, use.Title), "/recipes/" + Uri.EscapeDataString(use.Recipe), use.StepName, NoteAddress.Of(name, use.Recipe, use.Step)))],
            voice.Say("notes.how-to-link", ("name", name.Replace('-', ' '))),
            ChoicesOf(shown, [.. uses.Select(use => use.Recipe)], titles),
            at is null ? "" : voice.Say("notes.at-step", ("step", at.Name)),
            file?.Recipe is not null && at is null,
            file?.Formula is { } formula ? NoteTeller.OnTheDesk(Rehearser.Rehearse(formula, Larder.Shipped, Request.Home), voice).Tell(reading.Note, name, at?.Id, "note") : null,
            [
                .. Own.Select(own => ($"[{own}]", voice.Words[$"notes.name.{Slug.Of(own)}"])),
                .. Enum.GetValues<NotePicture>().Select(picture => ($"[picture: {Publishing.Wording.Voice.Kebab(picture.ToString())}]", voice.Member(picture))),
            ]);
    }

    /// <summary>Those that link to it first.</summary>
    private static IReadOnlyList<SideChoice> ChoicesOf(string? shown, string[] linking, IReadOnlyDictionary<string, string> titles) =>
    [
        .. linking.Distinct().Concat(titles.Keys.Order(StringComparer.Ordinal).Where(recipe => !linking.Contains(recipe, StringComparer.Ordinal)))
            .Select(recipe => new SideChoice(recipe, titles.GetValueOrDefault(recipe, recipe), recipe == shown)),
    ];
}

/// <summary>A step that links to the note.</summary>
/// <param name="Recipe">Address of the recipe.</param>
/// <param name="Here">Address at which the note is read at this step.</param>
internal sealed record UseView(string Title, string Recipe, string Step, string Here);

/// <summary>A finding in the text of a note, in finished words.</summary>
internal sealed record NoteFinding(string Mark, string Head, string Message, string WayOut)
{
    public static NoteFinding Of(Finding finding, Voice voice) => new(
        FindingMark.Draw(FindingShape.Of(finding)),
        voice.Say("notes.line", ("line", finding.Position.Line)),
        FindingWords.Message(finding, voice),
        FindingWords.WayOut(finding, voice));
}
