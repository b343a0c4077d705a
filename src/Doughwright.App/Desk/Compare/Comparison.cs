using Doughwright.App.Desk.Asking;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Differences;

namespace Doughwright.App.Desk.Compare;

/// <summary>Two kitchens side by side, worked out.</summary>
/// <param name="Question">What was asked, without what was refused, and with what keeps the dough.</param>
/// <param name="Untouched">The second kitchen with the recipe as it is written; null when that is what is shown.</param>
internal sealed record Comparison(
    CompareQuestion Question,
    Side First,
    Side Second,
    Rehearsal? Untouched,
    RehearsalDifferences Differences,
    IReadOnlyList<Refusal> Refusals)
{
    /// <summary>Whether bakes are told along one radius until their sections are computed.</summary>
    public bool AwaitsBakes { get; init; }

    public IEnumerable<Rehearsal> Rehearsals => Untouched is null ? [First.Rehearsal, Second.Rehearsal] : [First.Rehearsal, Second.Rehearsal, Untouched];

    /// <summary>Ids of the steps of both, in order: those that only the second has stand after the one they follow there.</summary>
    public IReadOnlyList<string> Steps
    {
        get
        {
            var ids = First.Rehearsal.Steps.Select(step => step.Id).ToList();
            var after = -1;
            foreach (var step in Second.Rehearsal.Steps)
            {
                var at = ids.IndexOf(step.Id);
                if (at < 0)
                {
                    at = after + 1;
                    ids.Insert(at, step.Id);
                }

                after = at;
            }

            return ids;
        }
    }

    /// <summary>Findings of the second kitchen that the first does not have, whatever figures they carry.</summary>
    public IReadOnlyList<Finding> FoundInSecondOnly
    {
        get
        {
            var known = First.Rehearsal.Findings.Select(finding => (finding.Kind, finding.Place)).ToHashSet();
            return [.. Second.Rehearsal.Findings.Where(finding => !known.Contains((finding.Kind, finding.Place))).OrderByDescending(finding => finding.Grade)];
        }
    }

    /// <summary>A step as the first kitchen has it, else as the second has it.</summary>
    public RehearsedStep Step(string id) => First.Rehearsal.FindStep(id) ?? Second.Rehearsal.FindStep(id)!;
}
