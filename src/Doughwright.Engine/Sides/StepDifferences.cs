using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>What differs in the methods of two recipes.</summary>
internal static class StepDifferences
{
    public static IEnumerable<RecipeDifference> Between(Recipe first, Recipe second)
    {
        IReadOnlyList<string> before = [.. first.Steps.Select(step => step.Id)];
        IReadOnlyList<string> after = [.. second.Steps.Select(step => step.Id)];
        foreach (var id in RecipeDifferences.Woven(before, after))
        {
            var (one, other) = (first.FindStep(id), second.FindStep(id));
            if (one is null || other is null)
            {
                yield return new(Aspect.Step, one?.Name, other?.Name) { Step = id };
                continue;
            }

            foreach (var difference in RecipeDifferences.Of(StepTraits.All, one, other).Concat(Items.PhotosBetween(one, other, first, second)))
            {
                yield return difference with { Step = id };
            }
        }

        if (RecipeDifferences.OrderOf(Aspect.StepOrder, before, after) is { } order)
        {
            yield return order;
        }
    }
}
