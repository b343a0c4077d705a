using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Doughwright.App.Desk.Drafting;

/// <summary>What the parts of the page write with: a change goes into the book, and the whole page shows what follows from it.</summary>
public sealed class Pen
{
    private readonly Manuscript manuscript;
    private readonly Action show;
    private readonly Func<ValueTask> toUndo;
    private readonly HashSet<string> open = [];
    private string? next;

    private readonly PhotoLaying photos;
    private readonly Func<string, bool> hasPhoto;

    internal Pen(Manuscript manuscript, ShelfFolder shelf, Voice voice, Action show, Func<ValueTask> toUndo)
    {
        (this.manuscript, this.show, this.toUndo) = (manuscript, show, toUndo);
        (photos, hasPhoto) = (new(manuscript, shelf, voice), shelf.Book.Photos.Holds);
        var measures = voice.Measures;
        WeightUnit = measures == MeasureSystem.Us ? "" : "g";
    }

    /// <summary>What a bare number in a column of weights is; empty where the column has no unit of its own.</summary>
    public string WeightUnit { get; }

    /// <summary>Name of the recipe in the book.</summary>
    internal string Name => manuscript.File.Name;

    /// <summary>The recipe as it is in the book; null where its text is not understood.</summary>
    internal Recipe? Recipe => manuscript.File.Recipe;

    /// <summary>The recipe with the book's own ingredients at hand, for what a new line may name.</summary>
    internal Recipe? RecipeAtHand => manuscript.RecipeAtHand;

    /// <summary>The recipe rehearsed at home; null where its text is not understood.</summary>
    internal Rehearsal? AtHome => manuscript.Worked.AtHome;

    /// <summary>Whether the book holds a photo of this name.</summary>
    public bool HasPhoto(string name) => hasPhoto(name);

    /// <summary>Lays a photo to the recipe or to a step of it.</summary>
    /// <param name="field">Where it is said why not, if not.</param>
    /// <param name="step">Id of the step; null for the recipe.</param>
    /// <param name="words">What is to be seen on it.</param>
    /// <returns>Whether it is laid.</returns>
    public async Task<bool> LayPhoto(string field, string? step, IBrowserFile? file, string words)
    {
        var done = await photos.Lay(field, step, file, words);
        show();
        return done;
    }

    /// <summary>Carries a way out of a finding out.</summary>
    /// <param name="way">Its id.</param>
    public void Mend(string way)
    {
        manuscript.Mend(way);
        show();
    }

    /// <summary>Accepts a finding with a reason. Its button is gone with it, so whoever used it stands at the one that steps back.</summary>
    /// <param name="field">Where it is said why not, if not.</param>
    /// <param name="id">Of the finding.</param>
    public Task Accept(string field, string id, string reason) => Gone(manuscript.Accept(field, id, reason));

    /// <summary>Accepts a finding no longer.</summary>
    /// <param name="id">Of the finding.</param>
    public Task Stop(string id) => Gone(manuscript.Stop(id));

    private async Task Gone(bool done)
    {
        show();
        if (done)
        {
            await toUndo();
        }
    }

    /// <summary>What a bare temperature is in; empty where that must be said.</summary>
    public string WarmthUnit => WeightUnit.Length == 0 ? "" : "C";

    /// <summary>What is held while the sentence changes; of this window, not of the recipe.</summary>
    public string Held { get; private set; } = HoldEdits.Nothing;

    /// <summary>Holds something else from now on.</summary>
    public void Hold(string held)
    {
        Held = held;
        show();
    }

    /// <summary>Sets what was typed into a field.</summary>
    /// <returns>Whether it was taken.</returns>
    public bool Set(string field, ChangeEventArgs change, Func<Recipe, string, EditAnswer> edit)
    {
        var typed = change.Value?.ToString() ?? "";
        return Do(field, typed, recipe => edit(recipe, typed));
    }

    /// <summary>Makes a change.</summary>
    /// <param name="field">Where it is said why not, if not.</param>
    public bool Do(string field, string typed, Func<Recipe, EditAnswer> edit)
    {
        var done = manuscript.Change(field, typed, edit);
        show();
        return done;
    }

    /// <summary>A new part after another: whoever added it goes on with its next line.</summary>
    /// <param name="field">Where it is said why not, if not.</param>
    /// <param name="after">Id of the part it comes after.</param>
    /// <param name="line">Its first line, in words.</param>
    /// <returns>Id of the part; null when it is not added.</returns>
    public string? AddPart(string field, string kind, string after, string line)
    {
        var before = Recipe?.Components.Select(part => part.Id).ToHashSet(StringComparer.Ordinal) ?? [];
        var done = manuscript.Change(field, line, recipe => PartEdits.Add(recipe, kind, "", after, line));
        var added = done ? Recipe?.Components.FirstOrDefault(part => !before.Contains(part.Id))?.Id : null;
        next = added is null ? next : LineFieldOf(added);
        show();
        return added;
    }

    /// <summary>The field in which the next line of a part is typed.</summary>
    /// <param name="part">Id of the part.</param>
    public static string LineFieldOf(string part) => "add-" + part;

    /// <summary>A new step after another: it is open at once, and whoever added it stands in the first field that says something of it.</summary>
    /// <param name="field">Where it is said why not, if not.</param>
    /// <param name="after">Id of the step it comes after; null puts it first.</param>
    /// <returns>Whether it is added.</returns>
    public bool AddStep(string field, string? after, string kind, string part, string name)
    {
        var before = Recipe?.Steps.Select(step => step.Id).ToHashSet(StringComparer.Ordinal) ?? [];
        if (!manuscript.Change(field, name, recipe => StepEdits.Add(recipe, after, kind, part, name)))
        {
            show();
            return false;
        }

        if (Recipe?.Steps.FirstOrDefault(step => !before.Contains(step.Id)) is { } added)
        {
            open.Add($"steps.{added.Id}");
            next = $"step-{added.Id}-hands";
        }

        show();
        return true;
    }

    /// <summary>Whether the hand is to go into this field now; asked once.</summary>
    internal bool GoesTo(string field)
    {
        if (next != field)
        {
            return false;
        }

        next = null;
        return true;
    }

    /// <summary>Takes something out. Its button is gone with it, so whoever used it stands at the one that puts it back.</summary>
    public async Task TakeOut(string field, Func<Recipe, EditAnswer> edit)
    {
        if (Do(field, "", edit))
        {
            await toUndo();
        }
    }

    /// <summary>Why what was typed into a field was not taken; null when it was.</summary>
    public RefusedField? RefusedIn(string field) => manuscript.Refused.GetValueOrDefault(field);

    /// <summary>What was refused is not asked any more.</summary>
    public void Forget(string field)
    {
        if (manuscript.Forget(field))
        {
            show();
        }
    }

    /// <summary>Whether a line or part is opened in place.</summary>
    public bool IsOpen(string place) => open.Contains(place);

    /// <summary>Opens what is closed, and closes what is open.</summary>
    public void Toggle(string place)
    {
        if (!open.Remove(place))
        {
            open.Add(place);
        }

        show();
    }

    /// <summary>What was open under one name is open under another.</summary>
    public void Renamed(string was, string now)
    {
        if (open.Remove(was))
        {
            open.Add(now);
        }

        show();
    }
}
