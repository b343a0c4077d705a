using Doughwright.App.Commands;
using Doughwright.App.Desk.Mending;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>Findings by the place that they stand beside.</summary>
/// <param name="offers">What can be done about them.</param>
internal sealed class PlacedFindings(IReadOnlyList<Finding> findings, Offers offers, Recipe recipe, Voice voice)
{
    private readonly List<(string Place, FindingView View)> left =
        [.. findings.Zip(FindingView.All(findings, recipe, voice), (finding, view) => (finding.Place, view with { Ways = WayView.All(offers, finding, voice) }))];

    /// <summary>Those of a place and of what lies in it.</summary>
    public IReadOnlyList<FindingView> Take(string place)
    {
        FindingView[] taken = [.. left.Where(one => Lies(one.Place, place)).Select(one => one.View)];
        left.RemoveAll(one => Lies(one.Place, place));
        return taken;
    }

    /// <summary>Those that no place took.</summary>
    public IReadOnlyList<FindingView> Rest => [.. left.Select(one => one.View)];

    private static bool Lies(string at, string place) => at == place || at.StartsWith(place + ".", StringComparison.Ordinal);
}
