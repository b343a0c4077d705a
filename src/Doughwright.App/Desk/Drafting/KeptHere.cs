using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.App.Desk.States;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting;

/// <summary>States of the recipe that is being written: the one it is in is kept without leaving the sheet, and whoever writes is told what readers have.</summary>
internal sealed record KeptHere(RecipeFile File, ShelfFolder Shelf, TimeProvider Time, Voice Voice)
{
    private StateDays Days => new(Time, Voice);

    /// <summary>The day of the state that readers have, in words; null where they have none.</summary>
    public string? Given => Shelf.Book.Kept.All(PaperSort.Recipe, File.Name).FirstOrDefault(kept => kept.Published) is { } given
        ? Voice.Say("write.given", ("day", Days.Day(given.At)))
        : null;

    /// <summary>Keeps the state that the sheet shows.</summary>
    /// <returns>Why it is not kept; nothing when it is.</returns>
    public IReadOnlyList<string> Keep(string name, string note)
    {
        var faults = new Faults(Voice);
        try
        {
            new RecipeStates(File, Shelf, Days, Voice).Keep(File.Paper.State, name, note, false, faults);
        }
        catch (BookException problem)
        {
            BookFaults.Add(problem, faults);
        }

        return [.. faults.All.Select(fault => $"{fault.Message} {fault.WayOut}")];
    }
}
