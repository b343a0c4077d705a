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
        { End: StepEnd.WhenRipe { About: { } about } } => about.Minutes,
        { Hands.Minutes: > 0 and var hands } when !GoesOnWithoutHands(step) => hands,
        { Kind: StepKind.Prepare or StepKind.Glaze } => 0,
        _ => null,
    };

    /// <summary>Whether the author's minutes are an estimate beside a cue, and nobody timed the step.</summary>
    public static bool IsEstimate(Step step) => step.End is StepEnd.ByCue or StepEnd.WhenRipe && step.Measured?.Time is null;

    /// <summary>
    /// Whether the step ends at a warmth, a growth, a ripeness or a core that comes by itself: the hands that began it say nothing of its length. On the
    /// hob somebody stands by until it is warm.
    /// </summary>
    private static bool GoesOnWithoutHands(Step step) => step switch
    {
        { Kind: StepKind.Bulk or StepKind.Proof or StepKind.Bake } => true,
        { End: StepEnd.WhenRipe } => true,
        { IsCooked: true } => false,
        { Kind: StepKind.Scald or StepKind.Cool or StepKind.Warm, End: StepEnd.AtTemperature } => true,
        _ => false,
    };
}
