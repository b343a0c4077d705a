using Doughwright.App.Desk.Asking;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Desk.Compare;

/// <summary>One of the two kitchens: what is asked of it and what that comes to.</summary>
/// <param name="Choice">What stands for it in the address.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Keep">Whether its dough is kept as warm as at home, or why not.</param>
internal sealed record Side(string Choice, string Name, Understood Asked, KeepState Keep, Rehearsal Rehearsal)
{
    /// <summary>How warm the free lines must go in; null when nothing was asked for, or nothing answers it.</summary>
    public Solution? Answer => Asked.Request.Dough is not null && Rehearsal.Solutions is [{ } first, ..] && (first.Warmth is not null || first.Ice is not null) ? first : null;

    /// <summary>The last mix of a dough: what the parts go into.</summary>
    public Step? MixOfDough => Rehearsal.Recipe.Steps.LastOrDefault(step =>
        step.Kind == StepKind.Mix && Rehearsal.Recipe.FindComponent(step.Component) is { Kind: ComponentKind.Dough });
}
