using Doughwright.App.Commands;
using Doughwright.App.Desk.Ingredients;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting;

/// <summary>
/// A recipe that is being written. What is understood is in the book before the page shows it; what is not stays in its field, with the reason, and the last
/// good value holds.
/// </summary>
internal sealed class Manuscript
{
    private readonly ShelfFolder shelf;
    private readonly OpenDrafts drafts;
    private readonly Voice voice;
    private readonly Dictionary<string, RefusedField> refused = [];
    private Rehearsal? atHome;
    private IReadOnlyList<Finding>? findings;
    private Offers? offers;

    private Manuscript(RecipeFile file, ShelfFolder shelf, OpenDrafts drafts, Voice voice)
    {
        (this.shelf, this.drafts, this.voice, File) = (shelf, drafts, voice, file);
        Take(file);
        Recall();
    }

    /// <summary>As it is in the book.</summary>
    public RecipeFile File { get; private set; }

    /// <summary>By field.</summary>
    public IReadOnlyDictionary<string, RefusedField> Refused => refused;

    /// <summary>What another window wrote meanwhile; null when nothing is to be settled.</summary>
    public Clash? Clash { get; private set; }

    /// <summary>What was typed over the text and is not understood; null when the text is the book's.</summary>
    public OpenDraft? Draft { get; private set; }

    public IReadOnlyList<Finding> DraftFaults { get; private set; } = [];

    /// <summary>Rehearsed in the kitchen it was tested in, once for each state; null where there is no recipe.</summary>
    public Rehearsal? AtHome => atHome ??= File.Formula is { } formula ? Rehearser.Rehearse(formula, Larder.Shipped, Request.Home, lanes: 1) : null;

    /// <summary>Findings of what is written, without those that its author accepts.</summary>
    public IReadOnlyList<Finding> Findings => findings ??= File is { Recipe: { } recipe, Formula: { } formula }
        ? FindingList.Judged(File.Text, recipe, File.Findings, RecipeChecks.Of(recipe), formula.Findings).Open
        : File.Findings;

    /// <summary>What can be done about the findings.</summary>
    public Offers Offers => offers ??= File.IsWhole ? Offers.Of(Findings, File.Recipe) : Offers.None;

    /// <summary>The recipe as if it held every own ingredient of the book that a new line could name; null where there is no recipe.</summary>
    public Recipe? RecipeAtHand => File.Recipe is { } recipe ? OwnEdits.AtHand(recipe, OwnPaper.AtHand(shelf)) : null;

    /// <summary>What happened that no field is the place for.</summary>
    public string? Said { get; private set; }

    /// <summary>Null when the book has no recipe of this name.</summary>
    public static Manuscript? Open(string name, ShelfFolder shelf, OpenDrafts drafts, Voice voice) =>
        RecipeFile.Read(name, shelf) is { } file ? new(file, shelf, drafts, voice) : null;

    /// <summary>Makes a change of the sheet.</summary>
    /// <param name="field">Where it was typed; what is refused stays there.</param>
    /// <returns>Whether it is in the book, or was there already.</returns>
    public bool Change(string field, string typed, Func<Recipe, EditAnswer> change)
    {
        Said = null;
        switch (Editor.Carry(File.Text, OwnEdits.With(OwnPaper.AtHand(shelf), change)))
        {
            case EditedText.Refused no:
                refused[field] = new(typed, [.. no.Reasons.Select(reason => $"{FindingWords.Message(reason, voice)} {FindingWords.WayOut(reason, voice)}".Trim())]);
                return false;
            case EditedText.Changed yes when !Write(yes.Text, DeedWords.Of(yes.Deed, voice), File.Paper.State, field, typed):
                return false;
            default:
                refused.Remove(field);
                return true;
        }
    }

    /// <summary>Takes the text as it was typed: into the book when every line of it is understood.</summary>
    public void Type(string typed)
    {
        Said = null;
        var lines = typed.Replace("\r\n", "\n");
        var text = File.Text.Contains("\r\n", StringComparison.Ordinal) ? lines.Replace("\n", "\r\n") : lines;
        if (text == File.Text)
        {
            Forget();
            return;
        }

        var draft = new OpenDraft(Draft?.From ?? File.Paper.State, text);
        Hold(draft);
        if (DraftFaults.Count == 0)
        {
            Write(text, TextDifference.Words(File.Text, text, voice), draft.From, TextField, text);
        }
    }

    /// <summary>Says why what was typed into a field is not taken.</summary>
    public void Refuse(string field, string typed, string reason) => refused[field] = new(typed, [reason]);

    /// <summary>Carries a way out of a finding out; the state is called by what it does.</summary>
    /// <param name="way">Id of one of the offers.</param>
    public void Mend(string way)
    {
        Said = null;
        if (Offers.All.FirstOrDefault(offer => offer.Id == way) is not { } remedy)
        {
            Said = voice.Words["write.way-gone"];
            return;
        }

        var (text, verb) = (remedy.CarryOut(File.Text), RemedyWords.Verb(remedy, voice));
        if (File.Recipe is not null && RecipeText.Read(text) is not { Understood: true, Recipe: not null })
        {
            Said = voice.Say("write.way-not-carried", ("verb", verb));
            return;
        }

        Write(text, verb, File.Paper.State, MendField, "");
    }

    private const string MendField = "write-way";

    /// <summary>Field of the text as a whole.</summary>
    public const string TextField = "write-text";

    /// <summary>Lets go of what was typed over the text; the last good text is shown again.</summary>
    public void PutBack() => Forget();

    public void Undo() => Step(shelf.RecipeTexts.Undo);

    public void Redo() => Step(shelf.RecipeTexts.Redo);

    /// <summary>Takes what was written meanwhile. What was done here is a state too, a step forward from it.</summary>
    public void TakeOther()
    {
        if (Clash is not { } clash)
        {
            return;
        }

        if (clash.Other is { } other && !Aside(clash, other))
        {
            return;
        }

        if (clash.Field == TextField)
        {
            Forget();
        }

        Clash = null;
        Reload();
    }

    /// <summary>Writes what was done here and steps back from it, so that it can be done again.</summary>
    private bool Aside(Clash clash, Paper other) =>
        Tried(() => shelf.RecipeTexts.Write(File.Name, other.State, clash.Mine, voice.Say("did.mine-over", ("did", clash.MyDeed))), out var answer)
        && (answer is not WriteAnswer.Written written || Tried(() => shelf.RecipeTexts.Undo(File.Name, written.State), out _));

    /// <summary>Writes what was done here over what was written meanwhile, which stays a step back.</summary>
    public void TakeMine()
    {
        if (Clash is { Other: { } other } clash)
        {
            Clash = null;
            Write(clash.Mine, voice.Say("did.mine-over", ("did", clash.MyDeed)), other.State, clash.Field, clash.Mine);
        }
    }

    /// <summary>Makes a recipe of its own of what was written meanwhile, and goes on with what was done here.</summary>
    public void KeepBoth()
    {
        if (Clash is not { Other: not null } clash)
        {
            return;
        }

        var title = RecipeText.Read(clash.OtherText).Recipe?.Title ?? File.Name;
        var grown = voice.Say("write.grown-title", ("title", title));
        var text = Editor.Carry(clash.OtherText, recipe => RecipeEdits.Title(recipe, grown)) is EditedText.Changed named ? named.Text : clash.OtherText;
        string? name = null;
        if (!Tried(() => name = shelf.RecipeTexts.Lay(TextNames.Of(grown, "recipe"), text, voice.Say("book.grown", ("title", title)), clash.From)))
        {
            return;
        }

        TakeMine();
        Said = voice.Say("write.kept-both", ("name", name ?? ""));
    }

    private void Step(Func<string, long, WriteAnswer> step)
    {
        Said = null;
        if (Tried(() => step(File.Name, File.Paper.State), out var answer) && answer is WriteAnswer.Meanwhile or WriteAnswer.NoPaper)
        {
            Said = voice.Words["write.step-meanwhile"];
        }

        Reload();
    }

    /// <returns>Whether it is in the book now.</returns>
    private bool Write(string text, string did, long from, string field, string typed)
    {
        if (!Tried(() => shelf.RecipeTexts.Write(File.Name, from, text, did), out var answer))
        {
            refused[field] = new(typed, [$"{Said} {voice.Words["write.not-written-way"]}"]);
            return false;
        }

        switch (answer)
        {
            case WriteAnswer.Meanwhile other:
                Clash = new(field, text, did, from, shelf.RecipeTexts.Find(File.Name), other.Text);
                return false;
            case WriteAnswer.NoPaper:
                Clash = new(field, text, did, from, null, "");
                return false;
            default:
                if (field == TextField)
                {
                    Forget();
                }

                Reload();
                return true;
        }
    }

    private bool Tried(Func<WriteAnswer> write, out WriteAnswer? answer)
    {
        WriteAnswer? got = null;
        var done = Tried(() => got = write());
        answer = got;
        return done;
    }

    private bool Tried(Action write)
    {
        try
        {
            write();
            return true;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Said = voice.Say("write.not-written", ("reason", problem.Message));
            return false;
        }
    }

    private void Reload()
    {
        if (RecipeFile.Read(File.Name, shelf) is { } file)
        {
            Take(file);
        }
    }

    private void Take(RecipeFile file)
    {
        (File, atHome, findings, offers) = (file, null, null, null);
        if (Draft is { } own)
        {
            Judge(own);
        }
    }

    /// <summary>What was typed before this window, and not taken.</summary>
    private void Recall()
    {
        OpenDraft? draft = null;
        if (Tried(() => draft = drafts.Of(File.Name)) && draft is not null)
        {
            Judge(draft);
        }
    }

    private void Hold(OpenDraft draft)
    {
        Tried(() => drafts.Keep(File.Name, draft));
        Judge(draft);
    }

    private void Judge(OpenDraft draft)
    {
        Draft = draft;
        var reading = RecipeText.Read(draft.Text);
        DraftFaults = reading.Understood && reading.Recipe is not null ? [] : [.. reading.Findings.Where(finding => finding.NotUnderstood || finding.Grade == Grade.Error)];
    }

    private void Forget()
    {
        if (Draft is { } draft)
        {
            Tried(() => drafts.Drop(File.Name, draft));
        }

        (Draft, DraftFaults) = (null, []);
        refused.Remove(TextField);
    }
}
