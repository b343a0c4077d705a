using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>The author's own minutes for a step.</summary>
internal static class StatedTime
{
    /// <summary>Measured before written, written before the hands; null when the text has none of them.</summary>
    public static double? Of(Step step) => step switch
    {
        { Measured.Time: { } measured } => measured.Minutes,
        { End: StepEnd.AfterTime end } => end.Time.Minutes,
        { End: StepEnd.ByCue end } => end.Estimate.Minutes,
        { Hands.Minutes: > 0 and var hands } => hands,
        { Kind: StepKind.Prepare or StepKind.Glaze } => 0,
        _ => null,
    };
}
