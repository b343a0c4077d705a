namespace Doughwright.Engine.Recipes.Checks;

/// <summary>A tool on the list that no step names, needs or speaks of.</summary>
internal static class ToolsNotUsed
{
    public static IEnumerable<Finding> Check(Recipe recipe)
    {
        if (recipe.Tools is not { Count: > 0 } tools || recipe.Steps.Count == 0)
        {
            return [];
        }

        var steps = StepTools.Of(recipe);
        return tools
            .Select(ToolName.Read)
            .Where(tool => tool.Words.Length > 0 && !steps.Any(step => step.Uses(tool)))
            .Select(tool => new Finding
            {
                Kind = "tool-not-used",
                Grade = Grade.Hint,
                Place = $"tools.{string.Join('-', tool.Words)}",
                Arguments = new Dictionary<string, object> { ["tool"] = tool.Written },
            });
    }
}
