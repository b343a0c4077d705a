using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What becomes of a hot loaf in steps that are told in the author's minutes, and while it waits for them.</summary>
internal static class AfterOven
{
    /// <summary>A loaf that waits for its next step stands on a rack in the room.</summary>
    /// <param name="start">When it begins to wait.</param>
    public static HotLoaf Waits(HotLoaf loaf, double minutes, Duration start, Stage stage, bool isHome) =>
        OntoARack(loaf, minutes, start, stage, isHome).After(PerLane.Same(minutes, stage.Lanes));

    /// <summary>How it cools while it waits.</summary>
    public static IReadOnlyList<WayPoint> WayOfWait(HotLoaf loaf, double minutes, Duration start, Stage stage, bool isHome)
    {
        var stands = OntoARack(loaf, minutes, start, stage, isHome);
        var from = stands.Stood.Central;
        return stands.Follow(minutes, from + minutes).Way(from, from + minutes, 1);
    }

    private static HotLoaf OntoARack(HotLoaf loaf, double minutes, Duration start, Stage stage, bool isHome) =>
        loaf.To(Rack.Open(stage.Kitchen.Air.StartingAt(start).MeanOver(Duration.FromMinutes(minutes)).Celsius), stage, isHome);

    /// <summary>A loaf that is turned out, glazed or left to stand cools on; what is baked, cooked or shaped once more is a loaf that nothing tells of.</summary>
    public static StepOutcome Of(StepInput input, StepOutcome outcome)
    {
        if (outcome.After.Hot is null || input.Step.Kind is StepKind.Bake or StepKind.Cool)
        {
            return outcome;
        }

        var stands = input.Step.Kind is StepKind.Prepare or StepKind.Finish or StepKind.Glaze or StepKind.Rest;
        if (!stands || outcome.Minutes is not { } minutes || !double.IsFinite(minutes.Central) || Rack.Of(input, outcome.After) is not { } rack)
        {
            return outcome with { After = outcome.After with { Hot = null } };
        }

        var loaf = outcome.After.Hot.To(rack, input.Stage, input.IsHome);
        var (from, to) = (loaf.Stood.Central, loaf.Stood.Central + minutes.Central);
        return outcome with
        {
            After = outcome.After with { Hot = loaf.After(minutes) },
            Way = minutes.Central > 0 ? () => loaf.Follow(minutes.Central, to).Way(from, to, 1) : outcome.Way,
        };
    }
}
