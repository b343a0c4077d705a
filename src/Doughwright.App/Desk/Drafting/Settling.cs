using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;
using Doughwright.Engine.Editing;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting;

/// <summary>What two windows wrote from one state, until the author says what stands. Nothing of either is lost, whoever writes meanwhile.</summary>
internal sealed class Settling(string name, ShelfFolder shelf, OpenDrafts drafts, BookTries tries, Voice voice)
{
    private OpenDraft? kept;

    /// <summary>Null when nothing is to be settled.</summary>
    public Clash? Clash { get; private set; }

    /// <summary>What is called what was done here, once it is laid over the other.</summary>
    public static string Over(Clash clash, Voice voice) => voice.Say("did.mine-over", ("did", clash.MyDeed));

    public void Begin(Clash clash)
    {
        Clash = clash;
        // A window that is closed or loaded anew before it is settled finds what was done here as a text that is begun.
        tries.Do(() =>
        {
            kept = new(clash.From, clash.Mine);
            drafts.Wait(name, kept);
        });
    }

    public void End()
    {
        Clash = null;
        if (kept is { } own)
        {
            tries.Do(() => drafts.DropWaiting(name, own));
            kept = null;
        }
    }

    /// <summary>Lays what was done here aside: it is written and stepped back from, so that it can be done again.</summary>
    /// <returns>Whether it is aside; else it is still to be settled.</returns>
    public bool Aside(Clash clash, Paper other) =>
        Written(clash, other.State, Over(clash, voice)) is { } written && tries.Do(() => shelf.RecipeTexts.Undo(name, written.State), out _);

    /// <summary>Writes what was done here down.</summary>
    /// <param name="from">The state that it is written over.</param>
    /// <returns>Null when it is still to be settled.</returns>
    public WriteAnswer.Written? Written(Clash clash, long from, string did)
    {
        if (!tries.Do(() => shelf.RecipeTexts.Write(name, from, clash.Mine, did), out var answer))
        {
            return null;
        }

        (Clash, tries.Said) = answer switch
        {
            WriteAnswer.Meanwhile again => (clash with { Other = shelf.RecipeTexts.Find(name), OtherText = again.Text }, voice.Words["write.other-again"]),
            WriteAnswer.NoPaper => (clash with { Other = null, OtherText = "" }, voice.Words["write.other-again"]),
            _ => (clash, null),
        };
        return answer as WriteAnswer.Written;
    }

    /// <summary>Makes a recipe of its own of what was written meanwhile.</summary>
    /// <returns>Its name in the book; null when it could not be laid there.</returns>
    public string? GrowOther(Clash clash)
    {
        var title = RecipeText.Read(clash.OtherText).Recipe?.Title ?? name;
        var grown = voice.Say("write.grown-title", ("title", title));
        var text = Editor.Carry(clash.OtherText, recipe => RecipeEdits.Title(recipe, grown)) is EditedText.Changed named ? named.Text : clash.OtherText;
        return Lay(grown, text, voice.Say("book.grown", ("title", title)), clash.From);
    }

    /// <summary>Makes a recipe of its own of what was done here: the recipe that it was done to is gone.</summary>
    /// <returns>Its name in the book; null when it could not be laid there.</returns>
    public string? GrowMine(Clash clash)
    {
        var title = RecipeText.Read(clash.Mine).Recipe?.Title ?? name;
        return Lay(title, clash.Mine, clash.MyDeed, clash.From);
    }

    private string? Lay(string title, string text, string did, long from)
    {
        string? laid = null;
        return tries.Do(() => laid = shelf.RecipeTexts.Lay(TextNames.Of(title, "recipe"), text, did, from)) ? laid : null;
    }
}
