namespace Doughwright.Engine.Recipes.Checks;

/// <summary>A bake of pieces nobody has told the size of, or of several that no step divides.</summary>
internal static class Pieces
{
    public static IEnumerable<Finding> Check(Recipe recipe)
    {
        if (recipe.Make is null)
        {
            return recipe.Steps.Where(step => step.Kind == StepKind.Bake).Take(1).Select(step => step.About("piece-not-said", Grade.Hint));
        }

        if (recipe.Make.Pieces == 1)
        {
            return [];
        }

        var shaped = recipe.Steps.Where(step => step.Kind == StepKind.Shape).Select(step => step.Component).ToHashSet();
        return recipe.Steps
            .Where(step => step.Kind is StepKind.Proof or StepKind.Bake && !shaped.Contains(step.Component))
            .Where(step => recipe.FindComponent(step.Component)?.Kind == ComponentKind.Dough)
            .DistinctBy(step => step.Component)
            .Select(step => step.About("nothing-divides", Grade.Hint, ("pieces", recipe.Make.Pieces), ("what", recipe.Make.What)));
    }
}
