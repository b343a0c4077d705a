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

    /// <summary>What was carried here from the author's measurements, by step; empty at home.</summary>
    public IReadOnlyDictionary<string, Anchor> Anchors { get; init; } = new Dictionary<string, Anchor>();

    /// <summary>Minutes that a hot loaf was taken to wait before each step.</summary>
    public IReadOnlyList<double> Waits { get; init; } = [];

    /// <summary>What lay in the bowl of a mix, with the parts as warm as they went in; null when the step does not mix.</summary>
    public Bowl? BowlOf(Step step)
    {
        if (step.Kind != StepKind.Mix)
        {
            return null;
        }

        var component = Stage.Component(step.Component);
        var index = Graph.Steps.ToList().IndexOf(step);
        var parts = new Dictionary<string, Portion>();
        foreach (var part in component.Lines.Select(line => line.UsesComponent).OfType<string>().Append(step.Component))
        {
            if (LastBefore(index, part) is { } before)
            {
                parts[part] = before.After;
            }
        }

        return Bowl.Of(step, component, parts, Stage);
    }

    /// <summary>What a step works on, as the step before left it; null for the first step of a part.</summary>
    public Portion? Before(int index) => LastBefore(index, Graph.WorksOn[index])?.After;

    /// <summary>The last step before another that left the portion of a part; heating an oven or softening butter leaves none.</summary>
    private StepOutcome? LastBefore(int index, string part) => IndexBefore(index, part) is { } earlier ? Outcomes[earlier] : null;

    /// <summary>The step that left what another works on.</summary>
    public int? IndexBefore(int index) => IndexBefore(index, Graph.WorksOn[index]);

    private int? IndexBefore(int index, string part)
    {
        for (var earlier = index - 1; earlier >= 0; earlier--)
        {
            if (Graph.WorksOn[earlier] == part && !StepGraph.IsBeside(Graph.Steps[earlier]))
            {
                return earlier;
            }
        }

        return null;
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
