using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals;

/// <summary>One run of a method: what every step came to, and when it starts in every lane.</summary>
internal sealed class RunResult(Stage stage, StepGraph graph, StepOutcome[] outcomes, RunTimes times)
{
    public Stage Stage { get; } = stage;

    public StepGraph Graph { get; } = graph;

    public IReadOnlyList<StepOutcome> Outcomes { get; } = outcomes;

    public RunTimes Times { get; } = times;

    /// <summary>What lay in the bowl of a mix, with the parts as warm as they went in; null when the step does not mix.</summary>
    public Bowl? BowlOf(Step step)
    {
        if (step.Kind != StepKind.Mix)
        {
            return null;
        }

        var component = Stage.Component(step.Component);
        var index = Graph.Steps.ToList().IndexOf(step);
        var before = Array.LastIndexOf(Graph.WorksOn, step.Component, Math.Max(0, index - 1));
        var parts = component.Lines.Select(line => line.UsesComponent).OfType<string>()
            .Where(used => Graph.WorksOn.Contains(used))
            .ToDictionary(used => used, used => Outcomes[Array.LastIndexOf(Graph.WorksOn, used)].After);
        if (before >= 0 && before < index)
        {
            parts[step.Component] = Outcomes[before].After;
        }

        return Bowl.Of(step, component, parts, Stage);
    }

    public StepOutcome? Find(string step)
    {
        for (var index = 0; index < Graph.Steps.Count; index++)
        {
            if (Graph.Steps[index].Id == step)
            {
                return Outcomes[index];
            }
        }

        return null;
    }

    public IEnumerable<(Step Step, StepOutcome Outcome)> Each() => Graph.Steps.Zip(Outcomes);
}
