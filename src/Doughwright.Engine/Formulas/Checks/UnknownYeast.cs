using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>A line counts as yeast, and is none that the equivalence of yeasts knows.</summary>
internal static class UnknownYeast
{
    public static IEnumerable<Finding> Check(Formula formula) => formula.Lines()
        .Where(at => at.Line.Role == Role.Yeast && at.Line.Ingredient is { Yeast: null })
        .Select(at => at.About("yeast-not-known", Grade.Warning, ("name", at.Line.Name)));
}
