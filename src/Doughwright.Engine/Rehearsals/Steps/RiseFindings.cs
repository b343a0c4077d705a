using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>What the author's own rise says about the author's yeast.</summary>
internal static class RiseFindings
{
    private const double Factor = 2;

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
