using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// A dough that is to rise and holds nothing that makes it rise. A starter, or a preferment that is called a sourdough, holds a culture of its own, and an
/// ingredient that is not known may be one.
/// </summary>
internal static class MissingYeast
{
    private static readonly string[] Cultures = ["sourdough", "starter", "levain", "leaven", "culture", "mother", "madre", "sauerteig"];

    public static IEnumerable<Finding> Check(Formula formula)
    {
        var rises = formula.Recipe.Steps.Where(step => step.Kind is StepKind.Bulk or StepKind.Proof).Select(step => step.Component).ToHashSet();
        if (formula.FinalDough() is not { } dough || !rises.Contains(dough.Id) || dough.Mass <= Mass.Zero)
        {
            yield break;
        }

        var inDough = formula.Lines().Where(at => at.Component.ShareInDough > 0).ToArray();
        if (inDough.Any(at => at.Line.Role == Role.Yeast || at.Component.Kind == ComponentKind.Starter || IsCulture(at.Component.Name) || IsCulture(at.Component.Id) || IsCulture(at.Line.Name) || (at.Line is { UsesComponent: null, Ingredient: null })))
        {
            yield break;
        }

        if (inDough.FirstOrDefault(at => RaisedTwice.Raises(at.Line)).Line is { } powder)
        {
            yield return formula.About(dough, "powder-does-not-wait", Grade.Hint, ("name", powder.Name));
        }
        else if (inDough.FirstOrDefault(at => at.Component.Kind == ComponentKind.Preferment).Component is { } preferment)
        {
            yield return formula.About(dough, "yeast-missing-in-preferment", Grade.Warning, ("preferment", preferment.Name));
        }
        else
        {
            yield return formula.About(dough, "yeast-missing", Grade.Warning);
        }
    }

    private static bool IsCulture(string name) => Array.Exists(Cultures, word => Phrase.Says(name, word));
}
