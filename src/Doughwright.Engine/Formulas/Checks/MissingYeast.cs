using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// A dough that is to rise and holds nothing that makes it rise. A part of kind preferment may hold a culture of its own, and an ingredient
/// that is not known may be one.
/// </summary>
internal static class MissingYeast
{
    public static IEnumerable<Finding> Check(Formula formula)
    {
        var rises = formula.Recipe.Steps.Where(step => step.Kind is StepKind.Bulk or StepKind.Proof).Select(step => step.Component).ToHashSet();
        if (formula.FinalDough() is not { } dough || !rises.Contains(dough.Id) || dough.Mass <= Mass.Zero)
        {
            yield break;
        }

        var inDough = formula.Lines().Where(at => at.Component.ShareInDough > 0).ToArray();
        if (inDough.Any(at => at.Line.Role == Role.Yeast || at.Component.Kind == ComponentKind.Preferment || (at.Line is { UsesComponent: null, Ingredient: null })))
        {
            yield break;
        }

        yield return formula.About(dough, "yeast-missing", Grade.Warning);
    }
}
