using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Papers;

namespace Doughwright.App.Desk.Fields;

/// <summary>Steps back and forth through the states of a paper.</summary>
internal static class Stepping
{
    /// <param name="shown">The state that was shown.</param>
    /// <param name="isOn">Whether forward again.</param>
    /// <returns>Whether it was done; else a fault says why not.</returns>
    public static bool Step(BookTexts texts, Paper paper, long? shown, bool isOn, string title, Faults faults)
    {
        var from = shown ?? paper.State;
        if ((isOn ? texts.Redo(paper.Name, from) : texts.Undo(paper.Name, from)) is WriteAnswer.Written)
        {
            return true;
        }

        faults.Add("paper-meanwhile", ("name", title));
        return false;
    }
}
