using System.Text;
using Doughwright.App.Desk.Ingredients;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
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
    private readonly Voice voice;
    private readonly BookTries tries;
    private readonly TypedText typedText;
    private readonly Settling settling;
    private readonly Dictionary<string, RefusedField> refused = [];

    private Manuscript(RecipeFile file, ShelfFolder shelf, OpenDrafts drafts, Voice voice)
    {
        (this.shelf, this.voice, File, Worked, tries) = (shelf, voice, file, new(file, null, shelf, voice), new(voice));
        (typedText, settling) = (new(file.Name, drafts, tries), new(file.Name, shelf, drafts, tries, voice));
        typedText.Recall();
    }

    /// <summary>As it is in the book.</summary>
    public RecipeFile File { get; private set; }

    /// <summary>By field.</summary>
    public IReadOnlyDictionary<string, RefusedField> Refused => refused;

    /// <returns>Whether there was something.</returns>
    public bool Forget(string field) => refused.Remove(field);

    /// <summary>What another window wrote meanwhile; null when nothing is to be settled.</summary>
    public Clash? Clash => settling.Clash;

    /// <summary>What was typed over the text and is not understood; null when the text is the book's.</summary>
    public OpenDraft? Draft => typedText.Draft;

    public IReadOnlyList<Finding> DraftFaults => typedText.Faults;

    /// <summary>What follows from it.</summary>
    public WorkedOut Worked { get; private set; }

    /// <summary>The recipe as if it held every own ingredient of the book that a new line could name; null where there is no recipe.</summary>
    public Recipe? RecipeAtHand => File.Recipe is { } recipe ? OwnEdits.AtHand(recipe, OwnPaper.AtHand(shelf)) : null;

    /// <summary>What happened that no field is the place for.</summary>
    public string? Said
    {
        get => tries.Said;
        private set => tries.Said = value;
    }

    /// <summary>What another window did since this one last showed the recipe; null for nothing.</summary>
    public Elsewhere? Elsewhere { get; private set; }

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
        typedText.Hold(draft);
        if (DraftFaults.Count == 0)
        {
            Write(text, TextDifference.Words(File.Text, text, voice), draft.From, TextField, text);
        }
    }

    /// <summary>Says why what was typed into a field is not taken.</summary>
    public void Refuse(string field, string typed, string reason) => refused[field] = new(typed, [reason]);

    /// <summary>Carries a way out of a finding out; the state is called by what it does.</summary>
    /// <param name="way">Id of one of the offers.</param>
    public void Mend(string way) => Carry(MendField, "", FindingDeed.WayOut(File, Worked, way, voice));

    /// <summary>Accepts a finding with a reason, which the text keeps.</summary>
    /// <param name="field">Where the reason was typed.</param>
    /// <param name="id">Of the finding.</param>
    /// <returns>Whether it is in the book.</returns>
    public bool Accept(string field, string id, string typed) => Carry(field, typed, FindingDeed.Accept(File, Worked, id, typed, voice));

    /// <summary>Accepts a finding no longer.</summary>
    /// <returns>Whether that is in the book.</returns>
    public bool Stop(string id) => Carry(MendField, "", FindingDeed.Stop(File, id, voice));

    private bool Carry(string field, string typed, FindingDeed deed)
    {
        Said = deed.Said;
        if (deed.Refused.Count > 0)
        {
            refused[field] = new(typed, deed.Refused);
        }

        return deed.Text is { } text && Write(text, deed.Did, File.Paper.State, field, typed);
    }

    private const string MendField = "write-way";

    /// <summary>Field of the text as a whole.</summary>
    public const string TextField = "write-text";

    /// <summary>Lets go of what was typed over the text; the last good text is shown again.</summary>
    public void PutBack() => Forget();

    /// <summary>Looks whether the recipe is still as this window shows it.</summary>
    /// <returns>Whether there is something else to say of it.</returns>
    public bool Look()
    {
        var before = Elsewhere;
        Elsewhere = Elsewhere.Of(File, shelf, voice);
        return Elsewhere != before;
    }

    /// <summary>Shows the recipe as another window has written it. What is typed here and not written down stays.</summary>
    public void ShowOther()
    {
        Said = null;
        Reload();
    }

    public void Undo() => Step(shelf.RecipeTexts.Undo);

    public void Redo() => Step(shelf.RecipeTexts.Redo);

    /// <summary>Takes what was written meanwhile. What was done here is a state too, a step forward from it.</summary>
    public void TakeOther()
    {
        Said = null;
        if (Clash is { Other: { } other } clash && settling.Aside(clash, other))
        {
            Settle(clash);
        }
    }

    /// <summary>Writes what was done here over what was written meanwhile, which stays a step back.</summary>
    public void TakeMine()
    {
        Said = null;
        if (Clash is { Other: { } other } clash && settling.Written(clash, other.State, Settling.Over(clash, voice)) is not null)
        {
            Settle(clash);
        }
    }

    private string TitleOf(string name) => shelf.RecipeTexts.Find(name) is { } paper && RecipeText.Read(Encoding.UTF8.GetString(shelf.RecipeTexts.Read(paper))).Recipe?.Title is { Length: > 0 } title ? title : name;

    /// <summary>Makes a recipe of its own of what was written meanwhile, and goes on with what was done here.</summary>
    public void KeepBoth()
    {
        if (Clash is { Other: not null } clash && settling.GrowOther(clash) is { } name)
        {
            TakeMine();
            Said = $"{voice.Say("write.kept-both", ("name", TitleOf(name)))} {Said}".Trim();
        }
    }

    /// <summary>Makes a recipe of its own of what was done here: the one that it was done to was taken off the shelf.</summary>
    /// <returns>Its name in the book; null when it could not be laid there.</returns>
    public string? OnItsOwn()
    {
        Said = null;
        if (Clash is not { Other: null } clash || settling.GrowMine(clash) is not { } name)
        {
            return null;
        }

        Settle(clash);
        return name;
    }

    /// <summary>Puts the recipe back on the shelf, and writes down what was done here.</summary>
    public void BackOnShelf()
    {
        Said = null;
        if (!tries.Do(() => shelf.RecipeTexts.PutBack(File.Name)))
        {
            return;
        }

        if (Clash is not { Other: null } clash)
        {
            Reload();
        }
        else if (settling.Written(clash, clash.From, clash.MyDeed) is not null)
        {
            Settle(clash);
        }
    }

    private void Settle(Clash clash)
    {
        settling.End();
        refused.Remove(clash.Field);
        if (clash.Field == TextField)
        {
            Forget();
        }

        Reload();
    }

    private void Step(Func<string, long, WriteAnswer> step)
    {
        Said = null;
        if (tries.Do(() => step(File.Name, File.Paper.State), out var answer))
        {
            Said = answer switch
            {
                WriteAnswer.Meanwhile => voice.Say("write.step-meanwhile", ("name", File.Name)),
                WriteAnswer.NoPaper => voice.Say("write.step-gone", ("name", File.Name)),
                _ => null,
            };
        }

        Reload();
    }

    /// <returns>Whether it is in the book now.</returns>
    private bool Write(string text, string did, long from, string field, string typed)
    {
        if (!tries.Do(() => shelf.RecipeTexts.Write(File.Name, from, text, did), out var answer))
        {
            refused[field] = new(typed, [$"{Said} {voice.Words["write.not-written-way"]}"]);
            return false;
        }

        switch (answer)
        {
            case WriteAnswer.Meanwhile other:
                settling.Begin(new(field, text, did, from, shelf.RecipeTexts.Find(File.Name), other.Text));
                return false;
            case WriteAnswer.NoPaper:
                settling.Begin(new(field, text, did, from, null, ""));
                return false;
            default:
                if (field == TextField)
                {
                    Forget();
                }

                refused.Remove(field);
                Reload();
                return true;
        }
    }

    private void Reload()
    {
        if (RecipeFile.Read(File.Name, shelf) is { } file)
        {
            (File, Worked, Elsewhere) = (file, new(file, File, shelf, voice), null);
            typedText.Judge();
        }
    }

    private void Forget()
    {
        typedText.Forget();
        refused.Remove(TextField);
    }
}
