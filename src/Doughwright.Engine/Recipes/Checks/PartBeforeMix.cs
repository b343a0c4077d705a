namespace Doughwright.Engine.Recipes.Checks;

/// <summary>A mix that takes in a part whose own steps all stand below it. Steps are done in the order of the text.</summary>
internal static class PartBeforeMix
{
    public static IEnumerable<Finding> Check(Recipe recipe)
    {
        for (var index = 0; index < recipe.Steps.Count; index++)
        {
            var step = recipe.Steps[index];
            if (step.Kind == StepKind.Mix && recipe.FindComponent(step.Component) is { } part
                && part.Lines.Select(line => line.Uses).OfType<string>().FirstOrDefault(used => StandsBelow(recipe, used, index)) is { } late)
            {
                var first = recipe.Steps.First(other => other.Component == late);
                yield return step.About("part-used-before-made", Grade.Warning, ("part", recipe.FindComponent(late)?.Name ?? late), ("first", first.Name));
            }
        }
    }

    private static bool StandsBelow(Recipe recipe, string part, int index) =>
        recipe.Steps.Any(step => step.Component == part) && !recipe.Steps.Take(index).Any(step => step.Component == part);
}
