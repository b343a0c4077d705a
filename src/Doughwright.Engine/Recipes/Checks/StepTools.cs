using Doughwright.Engine.Ingredients;

namespace Doughwright.Engine.Recipes.Checks;

/// <summary>The tools of one step, read once.</summary>
/// <param name="Named">Tools the step lists itself.</param>
/// <param name="Spoken">What its words and settings speak of.</param>
/// <param name="Prose">Name, words and cue in normal form.</param>
internal sealed record StepTools(Step Step, ToolName[] Named, ToolWords.Entry[] Spoken, string Prose)
{
    public static StepTools[] Of(Recipe recipe) => [.. recipe.Steps.Select(Of)];

    public bool Uses(ToolName tool)
    {
        if (Step.Vessel is { } vessel && tool.Is(vessel))
        {
            return true;
        }

        // A mass tells one bowl from another, so words that speak of "the bowl" say nothing about this one.
        return tool.Mass is null
            && (Named.Any(tool.WillDoFor) || Spoken.Any(entry => entry.Tools.Any(tool.WillDoFor)) || Phrase.Holds(Prose, tool.Head));
    }

    private static StepTools Of(Step step) =>
        new(
            step,
            [.. step.Tools.Select(ToolName.Read)],
            [.. ToolWords.Of(step)],
            Phrase.Normal($"{step.Name} . {step.Words} . {step.Cue}"));
}
