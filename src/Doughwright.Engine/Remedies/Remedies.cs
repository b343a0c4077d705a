using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Remedies;

/// <summary>What can be done about a finding.</summary>
public static class Remedies
{
    private static readonly Dictionary<string, Func<Found, IEnumerable<Remedy>>> OfRecipe = new[]
    {
        ToolRemedies.All, StepRemedies.All, OvenRemedies.All, PartRemedies.All, KindRemedies.All, LineRemedies.All, DoseRemedies.All, AdviceRemedies.All,
    }.SelectMany(room => room).ToDictionary();

    /// <summary>
    /// The remedies of a finding, the likeliest first; empty when only the author can know. Where a line was not understood the recipe lacks
    /// something, so only changes of the text are offered.
    /// </summary>
    /// <param name="recipe">The recipe the finding is about; null when a line of its text was not understood.</param>
    public static IReadOnlyList<Remedy> For(Finding finding, Recipe? recipe)
    {
        var offered = recipe is not null && OfRecipe.TryGetValue(finding.Kind, out var offer)
            ? offer(new(finding, recipe))
            : TextRemedies.Of(finding);
        return [.. RegionRemedies.Of(finding).Concat(offered).GroupBy(remedy => remedy.Verb).SelectMany(group => group.Select((remedy, index) => remedy with { Choice = index + 1 }))];
    }

    /// <summary>Kinds of finding that some remedy is known for.</summary>
    internal static IEnumerable<string> Kinds => OfRecipe.Keys.Concat(TextRemedies.Kinds);
}
