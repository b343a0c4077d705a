using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// Honey anywhere in the recipe, baked or not: spores that only the youngest cannot bear outlive the oven. Once per recipe. Source: home-safety.
/// </summary>
internal static class HoneyForInfants
{
    public static IEnumerable<Finding> Check(Formula formula)
    {
        if (formula.Lines().Any(at => IsHoney(at.Line)))
        {
            yield return Report.Make("honey-and-infants", Grade.Hint, "", Position.None) with { Safety = true };
        }
    }

    /// <summary>By the larder's row, and by its name for what the author brings: "heather honey".</summary>
    private static bool IsHoney(LineFormula line) =>
        line.UsesComponent is null && (line.Ingredient?.Id == "honey" || Phrase.Says(line.Name, "honey"));
}
