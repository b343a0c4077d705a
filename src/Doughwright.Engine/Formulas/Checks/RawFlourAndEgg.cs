using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>Raw flour and raw egg can carry germs until they are baked: hands, and what is left of a wash. Source: home-safety.</summary>
internal static class RawFlourAndEgg
{
    public static IEnumerable<Finding> Check(Formula formula)
    {
        var flour = formula.Lines().Any(at => at.Line.Role == Role.Flour);
        var egg = formula.Lines().Any(at => at.Line.Ingredient?.Allergens.Contains("egg") ?? false);
        var kind = (flour, egg) switch
        {
            (true, true) => "raw-flour-and-egg",
            (true, false) => "raw-flour",
            (false, true) => "raw-egg",
            _ => null,
        };
        if (kind is not null)
        {
            yield return Report.Make(kind, Grade.Hint, "", Position.None) with { Safety = true };
        }
    }
}
