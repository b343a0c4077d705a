using Doughwright.App.Desk.Mending;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>Findings by the place that they stand beside.</summary>
/// <param name="worked">With what can be done about them.</param>
internal sealed class PlacedFindings(WorkedOut worked, Recipe recipe, Voice voice)
{
    private readonly List<(string Place, FindingView View)> left =
    [
        .. worked.Findings.Zip(FindingView.All(worked.Findings, recipe, voice), (finding, view) => (finding.Place, view with
        {
            Ways = WayView.All(worked.Offers, finding, voice),
            Accept = worked.Acceptable.Contains(finding) ? finding.Id : null,
            Stop = FindingView.StopOf(finding),
        })),
    ];

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
