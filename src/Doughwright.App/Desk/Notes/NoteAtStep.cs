using Doughwright.App.Desk.Recipes.Views;
using Doughwright.Publishing.Notes;

namespace Doughwright.App.Desk.Notes;

/// <summary>A note as it is opened at a step of a recipe on the desk.</summary>
/// <param name="Id">Unique on the page.</param>
/// <param name="Address">Where it is written.</param>
public sealed record NoteAtStep(string Id, string Address, ToldNote Note)
{
    /// <summary>All notes of the recipe by the id of their step.</summary>
    internal static ILookup<string, NoteAtStep> All(Figures figures)
    {
        var teller = NoteTeller.OnTheDesk(figures.Here, figures.Voice);
        return figures.State.File.Learn.Value
            .Select((link, index) => (link.Step, Note: Of(link, FormattableString.Invariant($"learn-{index}"), figures.State.File.Name, teller)))
            .ToLookup(each => each.Step, each => each.Note);
    }

    private static NoteAtStep Of(LinkedNote link, string id, string recipe, NoteTeller teller) =>
        new(id, NoteAddress.Of(link.Name, recipe, link.Step), teller.Tell(link.Note, link.Name, link.Step, id));
}
