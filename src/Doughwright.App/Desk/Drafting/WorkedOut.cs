using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Book.Opening;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting;

/// <summary>What follows from a state of a recipe, each worked out when it is first asked for.</summary>
/// <param name="shownBefore">What the window showed before; null where it is just opened.</param>
internal sealed class WorkedOut(RecipeFile file, RecipeFile? shownBefore, ShelfFolder shelf, Voice voice)
{
    private Rehearsal? atHome;
    private IReadOnlyList<Finding>? findings;
    private Offers? offers;
    private string? back;

    /// <summary>Rehearsed in the kitchen it was tested in; null where there is no recipe.</summary>
    public Rehearsal? AtHome => atHome ??= file.Formula is { } formula ? Rehearser.Rehearse(formula, Larder.Shipped, Request.Home, lanes: 1) : null;

    /// <summary>Findings without those that its author accepts.</summary>
    public IReadOnlyList<Finding> Findings => findings ??= file is { Recipe: { } recipe, Formula: { } formula }
        ? FindingList.Judged(file.Text, recipe, file.Findings, RecipeChecks.Of(recipe), formula.Findings).Open
        : file.Findings;

    /// <summary>What can be done about the findings.</summary>
    public Offers Offers => offers ??= file.IsWhole ? Offers.Of(Findings, file.Recipe) : Offers.None;

    /// <summary>What comes back by a step back, in words; null at the beginning.</summary>
    public string? Back => file.Paper.Before is { } before ? back ??= BackTo(before) : null;

    private string BackTo(long before)
    {
        if (shownBefore is { } shown && shown.Paper.State == before)
        {
            return ChangeWords.Back(new(file.Text, file.Formula), new(shown.Text, shown.Formula), voice);
        }

        try
        {
            var then = shelf.Book.Papers.TextOf(before)!;
            return ChangeWords.Back(
                new(file.Text, file.Formula), new(then, RecipeText.Read(then) is { Understood: true, Recipe: { } recipe } ? Formula.Balance(recipe, Larder.Shipped) : null), voice);
        }
        catch (BookException)
        {
            // The state before cannot be read. Writing on does not hang on it, so it is only called by what was done.
            return voice.Say("back.before", ("did", file.Paper.Did));
        }
    }
}
