using System.Globalization;
using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Desk.Standing;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.States;

/// <summary>All states that a recipe was ever in, those that were kept, and what is done with them.</summary>
internal sealed class RecipeStates(RecipeFile file, ShelfFolder shelf, StateDays days, Voice voice)
{
    /// <summary>Letters of a name that still fits on a knot of the family line.</summary>
    public const int LongestName = 60;

    public const int LongestNote = 400;

    public IReadOnlyList<KeptState> Kept { get; } = shelf.Book.Kept.All(PaperSort.Recipe, file.Name);

    /// <summary>The latest first.</summary>
    public IReadOnlyList<StateOfPaper> Written { get; } = shelf.Book.Papers.States(PaperSort.Recipe, file.Name);

    public long Now => file.Paper.State;

    public StateOfPaper? Find(long id) => Written.FirstOrDefault(state => state.Id == id);

    /// <summary>What a state is called: as it is now, the day it was kept, or the moment it was written.</summary>
    public string NameOf(long id)
    {
        if (id == Now)
        {
            return voice.Words["states.now"];
        }

        if (Kept.FirstOrDefault(kept => kept.State == id) is not { } known)
        {
            return Find(id) is { } state ? voice.Say("states.written-at", ("moment", days.DayAndTime(state.At))) : voice.Words["not-known"];
        }

        // Two kept on one day are told apart by their names.
        var day = days.Day(known.At);
        return known.Name.Length > 0 ? voice.Say("states.kept-named", ("day", day), ("name", known.Name)) : voice.Say("states.kept", ("day", day));
    }

    /// <summary>What a state of another recipe is called here: its title and the day it was written.</summary>
    public string OtherNameOf(string paper, string title, long id) =>
        shelf.Book.Papers.States(PaperSort.Recipe, paper).FirstOrDefault(state => state.Id == id) is { } state
            ? voice.Say("states.of-other", ("title", title), ("day", days.Day(state.At)))
            : title;

    /// <summary>Keeps the state the recipe is in.</summary>
    /// <param name="shown">The state that was shown to the person who keeps it.</param>
    /// <param name="published">Whether readers have it: then it is frozen, and what is put right afterwards is listed.</param>
    /// <returns>Whether it was kept; else a fault says why not.</returns>
    public bool Keep(long? shown, string name, string note, bool published, Faults faults)
    {
        if (name.Length > LongestName)
        {
            faults.Add("state-name-long", ("letters", name.Length), ("most", LongestName));
        }

        if (note.Length > LongestNote)
        {
            faults.Add("state-note-long", ("letters", note.Length), ("most", LongestNote));
        }

        // What readers have is published: it is not said twice.
        if (!faults.Any && (shown is not { } state || shelf.Book.Kept.Keep(PaperSort.Recipe, file.Name, state, name, note, published, published ? Standings.Published : null) is null))
        {
            faults.Add("state-meanwhile", ("name", file.Name));
        }

        return !faults.Any;
    }

    /// <summary>Writes the recipe as it is now down as one of its own, which knows what it came from.</summary>
    /// <returns>Address of its page; null with a fault when it cannot be called so or not be written.</returns>
    public string? Grow(string title, Faults faults)
    {
        if (file.Recipe is { } recipe)
        {
            return OwnRecipe.Lay(recipe, title, file.Reading.Document, Now, shelf, faults);
        }

        faults.Add("own-not-understood", ("name", file.Name));
        return null;
    }

    /// <summary>Brings an earlier state back: it is written down anew, so nothing is lost.</summary>
    /// <param name="shown">The state that was shown to the person who brings it back.</param>
    public bool BringBack(long? shown, long? state, Faults faults)
    {
        if (state is not { } wanted || Find(wanted) is null || shelf.Book.Papers.TextOf(wanted) is not { } text)
        {
            faults.Add("state-unknown", ("name", file.Name));
            return false;
        }

        return Write(shown, text, voice.Say("states.did-back", ("state", NameOf(wanted))), faults);
    }

    /// <summary>Writes a text down as the next state.</summary>
    public bool Write(long? shown, string text, string did, Faults faults)
    {
        if (text == file.Text)
        {
            faults.Add("state-same");
            return false;
        }

        try
        {
            if (shown is { } from && shelf.RecipeTexts.Write(file.Name, from, text, did) is WriteAnswer.Written)
            {
                return true;
            }

            faults.Add("state-meanwhile", ("name", file.Name));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            faults.Add("mend-not-written", ("folder", shelf.RecipeTexts.Path), ("reason", problem.Message));
        }

        return false;
    }

    /// <summary>The number of a state as it stands in a form or an address; null when it is none.</summary>
    public static long? Number(string? text) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
