using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Recipes.Checks;

/// <summary>Hands or a fold that do not fit into the time their own step takes at home.</summary>
internal static class StepTimes
{
    public static IEnumerable<Finding> Check(Recipe recipe)
    {
        foreach (var step in recipe.Steps)
        {
            if (Lasts(step) is not { } time)
            {
                continue;
            }

            if (step.Hands > time)
            {
                yield return step.About("hands-longer-than-step", Grade.Warning, ("hands", step.Hands), ("time", time));
            }

            // One is enough: the folds stand in one place of the text.
            if (step.Folds.FirstOrDefault(fold => fold.After >= time) is { } late)
            {
                yield return step.About("fold-after-end", Grade.Warning, ("fold", late.After), ("time", time));
            }
        }
    }

    /// <summary>What the author measured goes before what was planned.</summary>
    private static Duration? Lasts(Step step) => step.Measured?.Time ?? step.End switch
    {
        StepEnd.AfterTime after => after.Time,
        StepEnd.ByCue cue => cue.Estimate,
        StepEnd.WhenRipe ripe => ripe.About,
        _ => null,
    };
}
