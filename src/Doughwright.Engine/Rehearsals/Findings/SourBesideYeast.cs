using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Findings;

/// <summary>A dough with yeast of its own that takes in a sourdough as well: it is reckoned as if the yeast did all the work. Told at its first rise.</summary>
internal static class SourBesideYeast
{
    public static IEnumerable<Finding> Of(RunResult here)
    {
        var told = new HashSet<string>();
        foreach (var (step, outcome) in here.Each())
        {
            if (step.Kind is StepKind.Bulk or StepKind.Proof && outcome.After.Dough is { State.Coefficients.IsCulture: false }
                && HoldsSour(step.Component, here.Stage) && told.Add(step.Component))
            {
                yield return StepFindings.About(step, "sour-beside-yeast", Grade.Hint);
            }
        }
    }

    private static bool HoldsSour(string part, Stage stage) => stage.Formula.FindComponent(part) is { } component
        && component.Lines.Any(line => line.UsesComponent is { } used && line.Mass.Grams > 0
            && (stage.Recipe.FindComponent(used) is { Kind: ComponentKind.Starter } || HoldsSour(used, stage)));
}
