using Doughwright.App.Desk.Recipes.State;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Mending;

/// <summary>A finding that the author accepts.</summary>
/// <param name="Id">Of the finding.</param>
/// <param name="Said">What is the case.</param>
/// <param name="Reason">Why the author accepts it.</param>
public sealed record AcceptedView(string Id, string Said, string Reason)
{
    internal static IReadOnlyList<AcceptedView> All(DeskState state, Voice voice) => All(state.Accepted, voice);

    internal static IReadOnlyList<AcceptedView> All(IReadOnlyList<(Finding Finding, string Reason)> accepted, Voice voice) =>
        [.. accepted.Select(one => new AcceptedView(one.Finding.Id, FindingWords.Message(one.Finding, voice), voice.Say("accepted-line", ("reason", one.Reason))))];
}
