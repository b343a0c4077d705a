using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// What people may be allergic to, over every part of the recipe.
/// Labels of what is really used, and local rules, go before this.
/// </summary>
internal static class Allergens
{
    public static IEnumerable<Finding> Check(Formula formula)
    {
        var codes = formula.Lines().SelectMany(at => at.Line.Ingredient?.Allergens ?? []).Distinct().ToArray();
        var certain = codes.Where(code => !AllergenNames.Depends(code)).Select(AllergenNames.Of).ToArray();
        var depends = codes.Where(AllergenNames.Depends).Select(AllergenNames.Of).Except(certain).ToArray();
        var unknown = formula.Lines()
            .Where(at => at.Line is { Ingredient: null or { AllergensKnown: false }, Source.Uses: null })
            .Select(at => at.Line.Name)
            .Distinct()
            .ToArray();
        (string Kind, string Argument, string[] Names)[] found =
        [
            ("allergens", "allergens", certain),
            ("allergens-by-label", "allergens", depends),
            ("allergens-not-known", "names", unknown),
        ];
        return found
            .Where(each => each.Names.Length > 0)
            .Select(each => Say(each.Kind, each.Argument, string.Join(", ", each.Names)));
    }

    private static Finding Say(string kind, string argument, string names) =>
        Report.Make(kind, Grade.Hint, "", Position.None, (argument, names)) with { Safety = true };
}
