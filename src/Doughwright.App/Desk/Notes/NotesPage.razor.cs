using Doughwright.App.Commands;
using Doughwright.App.Desk.Fields;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.TextForm;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Notes;

/// <summary>The teaching notes of the book, each with the recipes that link to it. One is begun, taken away or put back.</summary>
public sealed partial class NotesPage
{
    private const string AwayName = "away";
    private const int LongestTitle = NoteText.LongestTitle;

    /// <summary>Name of the note that was taken away just now.</summary>
    [SupplyParameterFromQuery]
    private string? Taken { get; set; }

    private IReadOnlyList<NoteRow> Rows { get; set; } = [];

    private IReadOnlyList<TakenRow> TakenAway { get; set; } = [];

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    private string Title { get; set; } = "";

    private string Said { get; set; } = "";

    private string? CanComeBack { get; set; }

    private string? Invalid => Faults.Count > 0 ? "true" : null;

    private string Reason => Faults.Count > 0 ? "notes-refused" : "new-note-said";

    protected override void OnInitialized()
    {
        Rows = NoteRow.All(Folder, Voice);
        if (Taken is { Length: > 0 } taken && Folder.NoteTexts.CanPutBack(taken))
        {
            (Said, CanComeBack) = (Voice.Say("notes.taken", ("name", taken)), taken);
        }

        TakenAway = TakenRow.All(Folder.NoteTexts, CanComeBack, text => NoteText.Read(text).Note?.Title);
    }

    private async Task Begin()
    {
        Title = (await Form())["title"].ToString().Trim();
        var faults = new Faults(Voice);
        if (Title.Length == 0)
        {
            faults.Add("note-unnamed");
        }
        else if (NoteText.Read(NoteText.Begin(Title)).Note?.Title != Title)
        {
            faults.Add("note-title-not-taken", ("most", NoteText.LongestTitle));
        }

        if (!faults.Any && Tried(() => Folder.NoteTexts.Lay(TextNames.Of(Title, "note"), NoteText.Begin(Title), Voice.Words["notes.did-begin"]), faults) is { } name)
        {
            SeeThere(Speaker.To(NoteAddress.Of(name)));
            return;
        }

        Faults = faults.All;
        Refuse();
    }

    /// <summary>Carries out what a button asks and leads on, so that loading the page again repeats nothing.</summary>
    private async Task Move()
    {
        var form = await Form();
        var (away, back) = (form[AwayName].ToString(), form[TakenRow.Back].ToString());
        var faults = new Faults(Voice);
        var isThere = Tried(() => (away.Length > 0 ? Folder.NoteTexts.TakeAway(away) : Folder.NoteTexts.PutBack(back)) ? "" : null, faults);
        if (isThere is not null)
        {
            SeeThere(Speaker.To(away.Length > 0 ? QueryHelpers.AddQueryString(NoteAddress.All, "taken", away) : NoteAddress.All));
            return;
        }

        if (!faults.Any)
        {
            faults.Add("note-gone", ("name", away.Length > 0 ? away : back));
        }

        Faults = faults.All;
        Refuse();
    }

    private string? Tried(Func<string?> write, Faults faults)
    {
        try
        {
            return write();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            faults.Add("mend-not-written", ("folder", Folder.NoteTexts.Path), ("reason", problem.Message));
            return null;
        }
    }
}
