using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>
/// Moves a bake that was computed along one radius to what it takes over a section through the piece: its likely lane takes so long, and all
/// others as many times as long as they would have.
/// </summary>
internal static class SectionMove
{
    /// <summary>What the author timed, and what has no end or is not computed, stays as it is.</summary>
    public static StepOutcome Of(StepInput input, StepOutcome outcome)
    {
        if (outcome is not { Basis: Basis.Computed, Minutes: { Central: > 0 } told } || !double.IsFinite(told.Central)
            || !input.Stage.Request.SectionMinutes.TryGetValue(input.Step.Id, out var sections))
        {
            return outcome;
        }

        var likely = (input.Stage.IsHome ? sections.Home : sections.Here).Minutes;
        var times = likely / told.Central;
        // Of a bake that somebody timed, what is left is how two ovens differ; of one that nobody did, it is the piece.
        var slower = input.Anchor?.Scale is null ? times : 1;
        return outcome with
        {
            After = outcome.After with { Hot = outcome.After.Hot is { } hot ? hot with { Slower = slower } : null },
            Minutes = told.Each((lane, minutes) => lane == 0 ? likely : times * minutes),
            MovedFrom = told.Central,
            Findings = [.. outcome.Findings.Select(finding => Moved(finding, times))],
            Bake = outcome.Bake is { } bake ? bake with { Moved = times, Slower = slower } : null,
            Way = outcome.Way is { } way ? () => [.. way().Select(point => point with { Minutes = times * point.Minutes })] : null,
            Why = () => Reason.From("bake-minutes", likely, "min", [.. Reasons(likely, told.Central), .. outcome.Why?.Invoke().Parts ?? []]),
        };
    }

    /// <summary>What is said of core and crust is said of the minutes that are told.</summary>
    private static Finding Moved(Finding finding, double times) => finding.Kind is not ("pale-when-done" or "brown-before-done") ? finding : finding with
    {
        Arguments = finding.Arguments.ToDictionary(argument => argument.Key, argument => argument.Value is Duration time ? times * time : argument.Value),
    };

    private static Reason[] Reasons(double likely, double told) =>
    [
        Reason.Leaf("bake-over-section", likely, "min", source: "house-bake-section"),
        Reason.Leaf("bake-along-radius", told, "min", source: "house-bake-lanes"),
    ];
}
