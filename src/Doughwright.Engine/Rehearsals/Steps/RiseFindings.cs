using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What the author's own rise says about the author's yeast.</summary>
internal static class RiseFindings
{
    private const double Factor = 2;

    /// <summary>How strong a ripe sour is, is known to a factor of about 3; beyond this it is not the sour. Source: sour-yeast-count.</summary>
    private const double FactorOfSour = 5;

    /// <summary>By the same share of lanes the range is open: in these the dough does not rise as it was seen to.</summary>
    public static IEnumerable<Finding> OfLanes(Step step, PerLane until, RiseState state)
    {
        var missing = state.StoppedMinutes[0] > 0 ? until.Values.Where((growth, lane) => double.IsInfinity(growth) || state.StoppedMinutes[lane] <= 0).Count() : 0;
        if (Spread.IsOpen(missing, until.Count))
        {
            yield return StepFindings.About(step, "rise-not-as-seen", Grade.Hint, false, ("share", Percent.FromValue(Math.Round(100.0 * missing / until.Count))));
        }
    }

    /// <summary>Yeast against the stated time: a rate beyond a factor of two from the book's is a slip of the pen, a tired yeast or a wrong unit.</summary>
    public static IEnumerable<Finding> OfScale(Step step, RiseAnchor anchor, double bookScale, bool isSour)
    {
        if (!anchor.IsFound[0])
        {
            yield return StepFindings.About(step, "rise-impossible", Grade.Error);
            yield break;
        }

        var ratio = anchor.Scale[0] / bookScale;
        var factor = isSour ? FactorOfSour : Factor;
        if (ratio > factor || ratio < 1 / factor)
        {
            var times = Math.Round(ratio > 1 ? ratio : 1 / ratio, 1);
            yield return isSour
                ? StepFindings.About(step, ratio > 1 ? "rise-faster-than-sour" : "rise-slower-than-sour", Grade.Warning, false, ("factor", times))
                : StepFindings.About(step, ratio > 1 ? "rise-faster-than-yeast" : "rise-slower-than-yeast", Grade.Warning, false, ("factor", times));
        }
    }
}
