using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Checks;

/// <summary>
/// What spoils out of the fridge: egg, and dairy that is moist. A sugar glaze or plain butter holds too little water to matter.
/// Source: home-safety, left-out.
/// </summary>
internal static class Perishable
{
    private const double MoistFromPercent = 25;

    /// <summary>Whether milk or egg goes into a part, or into what it uses without a step of its own; what has steps brings its own clock.</summary>
    public static bool Holds(ComponentFormula part, Formula formula) => part.Lines.Any(line =>
        IsPerishable(line)
        || (line.UsesComponent is { } used && !formula.Recipe.Steps.Any(step => step.Component == used) && formula.FindComponent(used) is { } inner && Holds(inner, formula)));

    /// <summary>Whether it is eaten or baked as something of its own that spoils: moist, with milk or egg in it, or cooked.</summary>
    public static bool IsMoist(ComponentFormula part) => part.Composition.Water is not { } water || water >= MoistFromPercent;

    public static bool IsCooked(string part, Recipe recipe) => recipe.Steps.Any(step => step.Component == part && step.IsCooked);

    private static bool IsPerishable(LineFormula line) =>
        line.Role == Role.Egg
        || (line.Role is not Role.Fat && line.Ingredient is { Composition.Water: >= MoistFromPercent } food && food.Allergens.Contains("milk"));
}
