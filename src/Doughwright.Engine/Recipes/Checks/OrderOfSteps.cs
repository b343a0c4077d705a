namespace Doughwright.Engine.Recipes.Checks;

/// <summary>A rise or a bake that stands before the mix of the same part. Steps are done in the order of the text.</summary>
internal static class OrderOfSteps
{
    public static IEnumerable<Finding> Check(Recipe recipe)
    {
        var mixed = new HashSet<string>(StringComparer.Ordinal);
        for (var index = 0; index < recipe.Steps.Count; index++)
        {
            var step = recipe.Steps[index];
            if (step.Kind == StepKind.Mix)
            {
                mixed.Add(step.Component);
            }
            else if (step.Kind is StepKind.Bulk or StepKind.Proof or StepKind.Bake
                && !mixed.Contains(step.Component)
                && recipe.Steps.Skip(index).FirstOrDefault(later => later.Kind == StepKind.Mix && later.Component == step.Component) is { } mix)
            {
                yield return step.About("order-of-steps", Grade.Warning, ("mix", mix.Name));
            }
        }
    }
}
