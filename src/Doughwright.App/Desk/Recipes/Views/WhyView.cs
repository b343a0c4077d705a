using Doughwright.App.Text;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>A reason in words, and what it rests on.</summary>
/// <param name="Source">Id of the source; null when it has none.</param>
public sealed record WhyView(string Said, string? Source, IReadOnlyList<WhyView> Parts)
{
    internal static WhyView Of(Reason reason, Voice voice) => new(
        ReasonWords.Said(reason, voice), reason.Source, [.. reason.Parts.Select(part => Of(part, voice))]);
}
