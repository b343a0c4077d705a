using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;

namespace Doughwright.Engine.Recipes.Checks;

/// <summary>
/// A tool that a step needs and the recipe's list of tools leaves out.
/// A recipe without such a list has nothing to leave out.
/// </summary>
internal static class ToolsNotListed
{
    public static IEnumerable<Finding> Check(Recipe recipe)
    {
        if (recipe.Tools is null)
        {
            yield break;
        }

        var listed = recipe.Tools.Select(ToolName.Read).ToArray();
        var said = new HashSet<string>(StringComparer.Ordinal);
        foreach (var step in StepTools.Of(recipe))
        {
            foreach (var missing in Missing(step, listed).Where(said.Add))
            {
                yield return step.Step.About("tool-not-listed", Grade.Warning, ("tool", missing)) with
                {
                    Place = $"steps.{step.Step.Id}.tools.{string.Join('-', Phrase.Words(missing.Split(" or ")[0]))}",
                };
            }
        }
    }

    private static IEnumerable<string> Missing(StepTools step, ToolName[] listed)
    {
        foreach (var asked in step.Named.Where(asked => !listed.Any(tool => tool.WillDoFor(asked))))
        {
            yield return asked.Written;
        }

        if (step.Step.Vessel is { Shape: not (VesselShape.Board or VesselShape.None) } vessel)
        {
            var shape = ToolName.Read(vessel.Shape.ToString());
            if (!listed.Any(tool => tool.Words.Contains(shape.Head)))
            {
                yield return shape.Head;
            }
        }

        foreach (var entry in step.Spoken.Where(entry => entry.Needed))
        {
            if (!listed.Concat(step.Named).Any(tool => entry.Tools.Any(tool.WillDoFor)))
            {
                yield return string.Join(" or ", entry.Tools.Select(tool => tool.Written));
            }
        }
    }
}
