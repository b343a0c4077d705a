using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>A rise that ends higher than doughs of this flour usually hold. The author saw it, so it is taken as seen. Source: rise-ceiling.</summary>
internal static class HighRise
{
    public static IEnumerable<Finding> Of(Stage stage)
    {
        var (flour, ceiling) = HomeRun.FlourOf(stage.Formula);
        return flour is null ? [] : stage.Recipe.Steps
            .Where(step => step is { Kind: StepKind.Bulk or StepKind.Proof, End: StepEnd.AtGrowth } && ((StepEnd.AtGrowth)step.End).Times > ceiling.UsualMost)
            .Select(step => StepFindings.About(
                step,
                "rise-above-flour",
                Grade.Warning,
                false,
                ("growth", ((StepEnd.AtGrowth)step.End!).Times),
                ("flour", flour.Name),
                ("most", ceiling.UsualMost)));
    }
}
