namespace Doughwright.Engine.Recipes.Checks;

/// <summary>Where a method says what is added in which order: lines that are never added, and names that are not among the lines.</summary>
internal static class MixingOrder
{
    public static IEnumerable<Finding> Check(Recipe recipe)
    {
        foreach (var component in recipe.Components)
        {
            var mixes = recipe.Steps.Where(step => step.Component == component.Id && step.Order.Count > 0).ToArray();
            foreach (var (step, id) in mixes.SelectMany(step => step.Order.Select(id => (step, id))))
            {
                if (component.Lines.All(line => line.Id != id))
                {
                    yield return step.About("added-not-listed", Grade.Warning, ("name", id), ("component", component.Name)) with { Place = $"steps.{step.Id}.{id}" };
                }
            }

            // A mix without an order of its own adds everything as listed.
            if (mixes.Length == 0 || recipe.Steps.Any(step => step is { Kind: StepKind.Mix, Order.Count: 0 } && step.Component == component.Id))
            {
                continue;
            }

            var added = mixes.SelectMany(step => step.Order).ToHashSet();
            foreach (var line in component.Lines.Where(line => !added.Contains(line.Id)))
            {
                yield return mixes[0].About("listed-not-added", Grade.Warning, ("name", line.Name)) with
                {
                    Place = $"parts.{component.Id}.{line.Id}",
                    Position = line.Position,
                };
            }
        }
    }
}
