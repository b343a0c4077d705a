using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>
/// A sourdough that stands where its yeast is past its best and its bacteria are not: told at the first such step of each part, where the bacteria
/// multiply half as fast again as the yeast, or more. Source: gaenzle-1998.
/// </summary>
internal static class WarmSour
{
    /// <summary>1.3 at 28 °C, 1.8 at 30 °C by the published curves.</summary>
    private const double Felt = 1.5;

    public static readonly Temperature YeastIsQuickest = Temperature.FromCelsius(27);

    public static IEnumerable<Finding> Of(RunResult here)
    {
        var told = new HashSet<string>();
        foreach (var (step, outcome) in here.Each())
        {
            if (step.Kind is not (StepKind.Rest or StepKind.Bulk or StepKind.Proof) || outcome.After.Dough is not { State.Coefficients.IsCulture: true }
                || outcome is not { StartCelsius: { } start, EndCelsius: { } end })
            {
                continue;
            }

            var stands = Temperature.FromCelsius((start.Central + end.Central) / 2);
            var (yeast, bacteria) = (SourdoughGrowth.At(stands, SourdoughGrowth.Yeast), SourdoughGrowth.At(stands, SourdoughGrowth.Bacteria));
            if (stands > YeastIsQuickest && bacteria > Felt * yeast && yeast > 0 && told.Add(step.Component))
            {
                yield return StepFindings.About(
                    step, "sour-stands-warm", Grade.Hint, false, ("stands", stands), ("best", YeastIsQuickest), ("ratio", Math.Round(bacteria / yeast, 1)));
            }
        }
    }
}
