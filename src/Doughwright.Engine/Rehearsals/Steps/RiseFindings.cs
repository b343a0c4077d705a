using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What the author's own rise says about the author's yeast.</summary>
internal static class RiseFindings
{
    private const double Factor = 2;

    /// <summary>By the same share of lanes the range is open: in these the dough does not rise as it was seen to.</summary>
    public static IEnumerable<Finding> OfLanes(Step step, PerLane until, RiseState state)
    {
        var missing = state.StoppedMinutes[0] > 0 ? until.Values.Where((growth, lane) => double.IsInfinity(growth) || state.StoppedMinutes[lane] <= 0).Count() : 0;
        if (missing * Spread.MostEndless > until.Count)
        {
            yield return StepFindings.About(step, "rise-not-as-seen", Grade.Hint, false, ("share", Percent.FromValue(Math.Round(100.0 * missing / until.Count))));
        }
    }

    /// <summary>Yeast against the stated time: a rate beyond a factor of two from the book's is a slip of the pen, a tired yeast or a wrong unit.</summary>
    public static IEnumerable<Finding> OfScale(Step step, RiseAnchor anchor, double bookScale)
    {
        if (!anchor.IsFound[0])
        {
            yield return StepFindings.About(step, "rise-impossible", Grade.Error);
            yield break;
        }

        var ratio = anchor.Scale[0] / bookScale;
        if (ratio is > Factor or < 1 / Factor)
        {
            yield return StepFindings.About(
                step,
                ratio > 1 ? "rise-faster-than-yeast" : "rise-slower-than-yeast",
                Grade.Warning,
                false,
                ("factor", Math.Round(ratio > 1 ? ratio : 1 / ratio, 1)));
        }
    }
}
