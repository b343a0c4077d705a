using System.Globalization;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Mending;

/// <summary>What was written down just now, and the way back.</summary>
/// <param name="Stamp">The state that the recipe is in.</param>
/// <param name="Said">"Written down: Add masher to the tools."</param>
/// <param name="Undo">On the button.</param>
public sealed record WrittenView(string Stamp, string Said, string Undo)
{
    /// <summary>Name in an address under which the stamp stands.</summary>
    public const string Name = "written";

    /// <summary>Null when nothing was written, or the text was changed since: then there is another text to go back to.</summary>
    internal static WrittenView? Of(string? stamp, RecipeFile file, Voice voice)
    {
        if (stamp is null || stamp != StampOf(file.Paper))
        {
            return null;
        }

        return file.Paper switch
        {
            { Redo: { } redo } => new(stamp, voice.Say("mend.back", ("verb", redo)), voice.Words["mend.again"]),
            { Undo: { } undo } => new(stamp, voice.Say("mend.written", ("verb", undo)), voice.Words["mend.undo"]),
            _ => null,
        };
    }

    internal static string StampOf(Paper paper) => paper.State.ToString(CultureInfo.InvariantCulture);
}
