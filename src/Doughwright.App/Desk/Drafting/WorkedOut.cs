using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Formulas;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Recipes.Checks;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Remedies;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting;

/// <summary>What follows from a state of a recipe, each worked out when it is first asked for.</summary>
/// <param name="shownBefore">What the window showed before; null where it is just opened.</param>
internal sealed class WorkedOut(RecipeFile file, RecipeFile? shownBefore, ShelfFolder shelf, Voice voice)
{
    private Rehearsal? atHome;
    private Judgement? judged;
    private IReadOnlyList<Finding>? acceptable;
    private Offers? offers;
    private string? back;

    /// <summary>Rehearsed in the kitchen it was tested in; null where there is no recipe.</summary>
    public Rehearsal? AtHome => atHome ??= file.Formula is { } formula ? Rehearser.Rehearse(formula, Larder.Shipped, Request.Home, lanes: 1) : null;

    /// <summary>Findings without those that its author accepts.</summary>
    public IReadOnlyList<Finding> Findings => Judged.Open;

    /// <summary>What its author accepts of what is looked for here, each with the reason.</summary>
    public IReadOnlyList<(Finding Finding, string Reason)> Accepted => Judged.Accepted;

    /// <summary>Findings that can be accepted with a reason.</summary>
    public IReadOnlyList<Finding> Acceptable => acceptable ??= file is { IsWhole: true, Recipe: not null }
        ? [.. Findings.Where(finding => Acceptances.Refusal(finding) is null && FindingView.StopOf(finding) is null)]
        : [];

    private Judgement Judged => judged ??= file is { Recipe: { } recipe, Formula: { } formula }
        ? FindingList.Judged(file.Text, recipe, file.Findings, RecipeChecks.Of(recipe), formula.Findings)
        : new(file.Findings, []);

    /// <summary>What can be done about the findings.</summary>
    public Offers Offers => offers ??= file.IsWhole ? Offers.Of(Findings, file.Recipe) : Offers.None;

    /// <summary>What comes back by a step back, in words; null at the beginning.</summary>
    public string? Back => file.Paper.Before is { } before ? back ??= BackWords.Said(() => ChangeWords.Back(new(file.Text, file.Formula), Before(before), voice), file.Paper, voice) : null;

    private Stand Before(long state)
    {
        if (shownBefore is { } shown && shown.Paper.State == state)
        {
            return new(shown.Text, shown.Formula);
        }

        var text = shelf.Book.Papers.TextOf(state)!;
        return new(text, RecipeText.Read(text) is { Understood: true, Recipe: { } recipe } ? Formula.Balance(recipe, Larder.Shipped) : null);
    }
}
