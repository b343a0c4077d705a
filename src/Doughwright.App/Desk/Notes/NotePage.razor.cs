using Doughwright.App.Commands;
using Doughwright.App.Desk.Opening;
using Doughwright.App.Desk.States;
using Doughwright.Book.Papers;
using Doughwright.Engine.TextForm;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Notes;

/// <summary>One teaching note: its text, and how it reads in a recipe. What is written is its next state.</summary>
public sealed partial class NotePage
{
    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    /// <summary>What it is called in the book.</summary>
    [Parameter]
    public string Name { get; set; } = "";

    /// <summary>Name of the recipe whose values stand in it.</summary>
    [SupplyParameterFromQuery]
    private string? Recipe { get; set; }

    /// <summary>Id of the step of that recipe at which it stands.</summary>
    [SupplyParameterFromQuery]
    private string? Step { get; set; }

    private NoteView? View { get; set; }

    private string Text { get; set; } = "";

    /// <summary>What was written meanwhile; null when nothing was.</summary>
    private string? Others { get; set; }

    private IReadOnlyList<Fault> Faults { get; set; } = [];

    /// <summary>A field leaves out the first new line of its text, so one more stands before it.</summary>
    private string Field => "\n" + Text;

    private string Action => Speaker.To(NoteAddress.Of(Name, Recipe, Step));

    protected override void OnInitialized()
    {
        if (!Lay())
        {
            Navigation.NotFound();
        }
    }

    private bool Lay()
    {
        View = NoteView.Of(Name, Recipe, Step, Folder, new StateDays(Clock, Voice), Voice);
        Text = View?.Text ?? "";
        return View is not null;
    }

    private async Task Write()
    {
        var form = await Form();
        var typed = OpenedText.AsTyped(form["text"].ToString());
        var faults = new Faults(Voice);
        if (typed.Length > NoteText.Characters)
        {
            faults.Add("note-text-long", ("letters", typed.Length), ("most", NoteText.Characters));
        }
        else if (typed == View?.Text)
        {
            faults.Add("note-same");
        }
        else if (Answered(() => Folder.NoteTexts.Write(Name, RecipeStates.Number(form["shown"]) ?? 0, typed, Voice.Words["notes.did-write"]), faults))
        {
            return;
        }

        // What was typed stays in the field.
        Stay(faults);
        Text = typed;
    }

    private async Task Move()
    {
        var form = await Form();
        var from = RecipeStates.Number(form["shown"]) ?? 0;
        var faults = new Faults(Voice);
        if (!Answered(() => form["way"] == "redo" ? Folder.NoteTexts.Redo(Name, from) : Folder.NoteTexts.Undo(Name, from), faults))
        {
            Stay(faults);
            Others = null;
        }
    }

    private void Stay(Faults faults)
    {
        Faults = faults.All;
        // What is shown now is what the next form starts from.
        Lay();
        Refuse();
    }

    /// <returns>Whether it is in the book; else a fault says why not.</returns>
    private bool Answered(Func<WriteAnswer> write, Faults faults)
    {
        try
        {
            switch (write())
            {
                case WriteAnswer.Written:
                    SeeThere(Action);
                    return true;
                case WriteAnswer.Meanwhile meanwhile:
                    Others = meanwhile.Text;
                    faults.Add("note-meanwhile");
                    return false;
                case WriteAnswer.Nothing:
                    faults.Add("note-no-step");
                    return false;
                default:
                    faults.Add("note-gone", ("name", Name));
                    return false;
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            faults.Add("mend-not-written", ("folder", Folder.NoteTexts.Path), ("reason", problem.Message));
            return false;
        }
    }
}
