using Doughwright.App.Desk.Asking;

namespace Doughwright.App.Desk.Recipes.State;

/// <summary>What is set on the desk: what holds, and what was refused.</summary>
/// <param name="Read">The question that holds, as it is understood.</param>
/// <param name="Refusals">Beside it: what was typed and could not be used.</param>
/// <param name="Keep">Whether the dough is kept as at home, or why not; null when nobody has changed the kitchen on this page.</param>
internal sealed record Setting(Understood Read, IReadOnlyList<Refusal> Refusals, KeepState? Keep)
{
    public Question Question => Read.Accepted;

    public Refusal? RefusalOf(string option) => Refusals.FirstOrDefault(refusal => refusal.Option == option);
}
