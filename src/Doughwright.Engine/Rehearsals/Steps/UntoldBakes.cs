using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Bakes whose heat does not come to rest in some step: what is not known is said.</summary>
internal static class UntoldBakes
{
    /// <summary>The likely piece itself.</summary>
    public static Finding Whole(Step step) => StepFindings.About(step, "bake-not-worked-out", Grade.Warning);

    /// <summary>So many lanes that its range has no end: more than one in ten.</summary>
    public static IEnumerable<Finding> Partly(Step step, BakedPiece baked, PerLane minutes)
    {
        var untold = baked.Untold(minutes);
        if (10 * untold > minutes.Count)
        {
            yield return StepFindings.About(step, "bake-partly-worked-out", Grade.Warning, false, ("open", untold), ("lanes", minutes.Count));
        }
    }
}
