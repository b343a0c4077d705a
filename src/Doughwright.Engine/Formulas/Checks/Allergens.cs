using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>What people may be allergic to, over every part of the recipe. Labels of what is really used, and local rules, go before this.</summary>
internal static class Allergens
{
    public static IEnumerable<Finding> Check(Formula formula)
    {
        var codes = formula.Lines().SelectMany(at => at.Line.Ingredient?.Allergens ?? []).Distinct().ToArray();
        var certain = codes.Where(code => !AllergenNames.Depends(code)).Select(AllergenNames.Of).ToArray();
        var depends = codes.Where(AllergenNames.Depends).Select(AllergenNames.Of).Except(certain).ToArray();
        var unknown = formula.Lines().Where(at => at.Line is { Ingredient: null, Source.Uses: null }).Select(at => at.Line.Name).Distinct().ToArray();
        return new[]
        {
            ("allergens", "allergens", certain),
            ("allergens-by-label", "allergens", depends),
            ("allergens-not-known", "names", unknown),
        }
            .Where(found => found.Item3.Length > 0)
            .Select(found => Report.Make(found.Item1, Grade.Hint, "", Position.None, (found.Item2, string.Join(", ", found.Item3))) with { Safety = true });
    }
}
