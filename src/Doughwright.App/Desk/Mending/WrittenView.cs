using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Mending;

/// <summary>What was written down just now, and the way back.</summary>
/// <param name="Stamp">Name under which the text is kept as it was before.</param>
/// <param name="Said">"Written down: Add masher to the tools."</param>
/// <param name="Undo">On the button.</param>
public sealed record WrittenView(string Stamp, string Said, string Undo)
{
    /// <summary>Name in an address under which the stamp stands.</summary>
    public const string Name = "written";

    /// <summary>Null when nothing was written, or the text was changed since: then there is another text to go back to.</summary>
    internal static WrittenView? Of(string? stamp, RecipeFile file, ShelfFolder shelf, Voice voice)
    {
        if (stamp is null || new EarlierTexts(shelf.RecipeTexts, file.Name).Find(stamp) is not { } kept || kept.Change.After != StateId.OfText(file.Text))
        {
            return null;
        }

        var (key, verb) = (kept.Change.IsBack ? "mend.back" : "mend.written", kept.Change.Verb);
        return new(stamp, voice.Say(key, ("verb", verb)), voice.Words[kept.Change.IsBack ? "mend.again" : "mend.undo"]);
    }
}
