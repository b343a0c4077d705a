using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Publishing.Pictures.Strips.Plans;

/// <summary>A step with a place in time. Minutes after the first hand.</summary>
/// <param name="Written">As the author wrote it; null for one that was put in.</param>
/// <param name="End">Null when it never ends here or cannot be computed.</param>
internal sealed record PlannedStep(RehearsedStep Step, Step? Written, double Start, double? End)
{
    public string Id => Step.Id;

    public StepKind Kind => Step.Kind;

    /// <summary>The likely end, or the start where there is none.</summary>
    public double EndOrStart => End ?? Start;

    /// <summary>Whether it ends by its cue and not by the clock: then its end is a range.</summary>
    public bool EndsByCue => Kind is StepKind.Bulk or StepKind.Proof or StepKind.Rest && Step.Time is { } time && !time.High.Equals(time.Low);

    public static IReadOnlyList<PlannedStep> AllOf(Rehearsal rehearsal) =>
    [
        .. rehearsal.Steps
            .Where(step => step.Start is not null)
            .Select(step => new PlannedStep(
                step,
                rehearsal.Recipe.FindStep(step.Id),
                step.Start!.Value.Minutes,
                step.Time is { } time ? step.Start.Value.Minutes + time.Likely.Minutes : null))
            .OrderBy(step => step.Start),
    ];
}
