using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>Core and crust that are not done together here, though they were at home.</summary>
internal static class CrustFindings
{
    public static IEnumerable<Finding> Of(Step step, PerLane core, PerLane? colour)
    {
        if (colour is not { } brown)
        {
            yield break;
        }

        var minutes = Duration.FromMinutes(core.Central);
        if (Crusts.Rank(core.Central, brown.Central) == CrustRank.Paler)
        {
            yield return StepFindings.About(step, "pale-when-done", Grade.Hint, false, ("minutes", minutes));
        }
        else if (Crusts.Rank(core.Central, brown.Central) == CrustRank.Browner)
        {
            yield return StepFindings.About(step, "brown-before-done", Grade.Hint, false, ("minutes", minutes), ("colour", Duration.FromMinutes(brown.Central)));
        }
    }
}
