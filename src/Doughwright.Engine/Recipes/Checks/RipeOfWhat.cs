namespace Doughwright.Engine.Recipes.Checks;

/// <summary>A step that ends when it is ripe, and is no rest of a preferment; and a starter that somebody makes in a step.</summary>
internal static class RipeOfWhat
{
    public static IEnumerable<Finding> Check(Recipe recipe)
    {
        foreach (var step in recipe.Steps)
        {
            var kind = recipe.FindComponent(step.Component)?.Kind;
            if (step.End is StepEnd.WhenRipe && (step.Kind != StepKind.Rest || kind != ComponentKind.Preferment))
            {
                yield return step.About("ripe-without-preferment", Grade.Warning);
            }

            if (kind == ComponentKind.Starter)
            {
                yield return step.About("starter-in-a-step", Grade.Warning, ("part", recipe.FindComponent(step.Component)!.Name));
            }
        }
    }
}
