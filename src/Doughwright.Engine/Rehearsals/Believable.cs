using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>
/// A recipe without the values that no kitchen has. Each of them is told as an error where the recipe is read, and the run does without it:
/// what hangs on it is then not told, instead of being computed from nonsense.
/// </summary>
internal static class Believable
{
    public static Recipe Of(Recipe recipe) => recipe.Steps.All(step => Of(step) == step)
        ? recipe
        : recipe with { Steps = [.. recipe.Steps.Select(Of)] };

    private static Step Of(Step step)
    {
        var time = Kept(step.Measured?.Time, Limits.Step);
        var temperature = step.Kind switch
        {
            StepKind.Bake => Kept(step.Measured?.Temperature, Limits.Core),
            StepKind.Mix => Kept(step.Measured?.Temperature, Limits.Mixed),
            _ => step.Measured?.Temperature,
        };
        var measured = step.Measured is null || (time is null && temperature is null) ? null : step.Measured with { Time = time, Temperature = temperature };
        return step with
        {
            Measured = measured,
            End = Of(step.End),
            Depth = Kept(step.Depth, Limits.Depth),
            Variants = step.Variants.All(variant => Of(variant.Step) == variant.Step)
                ? step.Variants
                : [.. step.Variants.Select(variant => variant with { Step = Of(variant.Step) })],
        };
    }

    private static StepEnd? Of(StepEnd? end) => end switch
    {
        StepEnd.AfterTime after => Limits.Step.Holds(after.Time) ? end : null,
        StepEnd.ByCue cue => Limits.Step.Holds(cue.Estimate) ? end : null,
        StepEnd.AtGrowth growth => Limits.Growth.Holds(growth.Times) ? end : null,
        StepEnd.AtCore core => Limits.Core.Holds(core.Temperature) ? end : null,
        _ => end,
    };

    private static T? Kept<T>(T? value, Limit<T> limit) where T : struct, IComparable<T> =>
        value is { } told && limit.Holds(told) ? told : null;
}
