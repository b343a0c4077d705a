using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Recipes.Checks;

/// <summary>A tool on the list that no step names, needs or speaks of.</summary>
internal static class ToolsNotUsed
{
    public static IEnumerable<Finding> Check(Recipe recipe) => (recipe.Tools ?? [])
        .Select(ToolName.Read)
        .Where(tool => tool.Words.Length > 0 && recipe.Steps.Count > 0 && !recipe.Steps.Any(step => Uses(step, tool)))
        .Select(tool => new Finding
        {
            Kind = "tool-not-used",
            Grade = Grade.Hint,
            Place = $"tools.{string.Join('-', tool.Words)}",
            Arguments = new Dictionary<string, object> { ["tool"] = tool.Written },
        });

    private static bool Uses(Step step, ToolName tool)
    {
        if (step.Vessel is { } vessel && tool.Is(vessel))
        {
            return true;
        }

        // A mass tells one bowl from another, so words that speak of "the bowl" say nothing about this one.
        if (tool.Mass is not null)
        {
            return false;
        }

        return step.Tools.Select(ToolName.Read).Any(tool.WillDoFor)
            || ToolWords.Of(step).Any(entry => entry.Tools.Any(tool.WillDoFor))
            || Phrase.Holds(Phrase.Normal($"{step.Name} . {step.Words} . {step.Cue}"), tool.Head);
    }
}
