namespace Doughwright.Engine.Recipes.Checks;

/// <summary>A step that ends when it is ripe, and is no rest of a preferment; and a starter that somebody makes in a step.</summary>
internal static class RipeOfWhat
{
    public static IEnumerable<Finding> Check(Recipe recipe)
    {
        foreach (var step in recipe.Steps)
        {
            var part = recipe.FindComponent(step.Component);
            if (step.End is StepEnd.WhenRipe && part is not null && Told(step, part) is { } told)
            {
                yield return told;
            }

            if (part is { Kind: ComponentKind.Starter })
            {
                yield return step.About("starter-in-a-step", Grade.Warning, ("part", part.Name));
            }
        }
    }

    /// <summary>What is wanting: the kind of the step, that of the part, or both.</summary>
    private static Finding? Told(Step step, Component part) => (step.Kind == StepKind.Rest, part.Kind == ComponentKind.Preferment) switch
    {
        (true, true) => null,
        (false, true) => step.About("ripe-needs-rest", Grade.Warning, ("part", part.Name)),
        (true, false) => step.About("ripe-needs-preferment", Grade.Warning, ("part", part.Name)),
        _ => step.About("ripe-without-preferment", Grade.Warning, ("part", part.Name)),
    };
}
