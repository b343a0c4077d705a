using Doughwright.App.Desk.Recipes.Views;
using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>What a recipe says beside its lines and its method.</summary>
/// <param name="Lead">First words, as written.</param>
/// <param name="Tools">One on each line.</param>
/// <param name="Swaps">What each says, in the order of <see cref="SwapSaid"/>.</param>
/// <param name="Without">What is lacking, and what to do.</param>
/// <param name="Keeping">As written.</param>
public sealed record AroundView(
    string Lead, string Tools, IReadOnlyList<IReadOnlyDictionary<SwapSaid, string>> Swaps, IReadOnlyList<(string What, string Words)> Without, IReadOnlyList<string> Keeping,
    IReadOnlyList<FindingView> ToolFindings, IReadOnlyList<FindingView> SwapFindings, IReadOnlyList<FindingView> WithoutFindings, IReadOnlyList<FindingView> KeepingFindings)
{
    /// <summary>Photos of the whole.</summary>
    public IReadOnlyList<Photo> Photos { get; init; } = [];

    internal static AroundView Of(Recipe recipe, PlacedFindings findings) => new(
        recipe.Words ?? "",
        string.Join('\n', recipe.Tools ?? []),
        [.. recipe.Swaps.Select(swap => Enum.GetValues<SwapSaid>().ToDictionary(said => said, said => AdviceEdits.Said(swap, said)))],
        [.. recipe.Without.Select(one => (one.What, one.Words))],
        [.. recipe.Keeping.Select(AdviceEdits.Said)],
        findings.Take("tools"),
        findings.Take("swaps"),
        findings.Take("without"),
        findings.Take("keeping"))
    {
        Photos = recipe.Photos,
    };
}
