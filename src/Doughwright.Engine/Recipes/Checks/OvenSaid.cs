namespace Doughwright.Engine.Recipes.Checks;

/// <summary>An oven temperature that does not say fan or static, or a bake without any.</summary>
internal static class OvenSaid
{
    public static IEnumerable<Finding> Check(Recipe recipe)
    {
        foreach (var step in recipe.Steps)
        {
            if (step.Oven is { Mode: null } oven)
            {
                yield return step.About("oven-mode-not-said", Grade.Warning, ("dial", oven.Dial));
            }
            else if (step.Oven is null && step.Kind == StepKind.Bake)
            {
                yield return step.About("oven-not-said", Grade.Warning);
            }
        }
    }
}
