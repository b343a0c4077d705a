using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>When the steps of a run start, and how long it takes in all.</summary>
/// <param name="Starts">Likely start of each step in minutes; null when something before it never ends or cannot be computed.</param>
/// <param name="Total">From the first hand to the end, in every lane; null when some step has no end, and without steps.</param>
internal sealed record RunTimes(IReadOnlyList<double?> Starts, PerLane? Total)
{
    public static RunTimes Of(StepGraph graph, IReadOnlyList<StepOutcome> outcomes, int lanes)
    {
        var open = Open(graph, outcomes);
        var likely = Lay(graph, outcomes, open, 0, out var starts);
        var total = new double[lanes];
        total[0] = likely;
        for (var lane = 1; lane < lanes; lane++)
        {
            total[lane] = NeverEnds(outcomes, lane) ? double.PositiveInfinity : Lay(graph, outcomes, open, lane, out _);
        }

        return new([.. starts.Select((start, index) => open[index] || IsLoose(graph, outcomes, index) ? (double?)null : start)], open.Length == 0 || open.Any(isOpen => isOpen) || outcomes.Any(HasNoEnd) ? null : new PerLane(total));
    }

    /// <summary>Hands of a step in one lane: at its start, and at its folds.</summary>
    private static (double Offset, double Minutes)[] HandsOf(Step step, StepOutcome outcome, int lane)
    {
        if (outcome.Folds.Count == 0)
        {
            return step.Hands.Minutes > 0 ? [(0, step.Hands.Minutes)] : [];
        }

        var hands = new List<(double, double)>();
        if (step.Hands.Minutes > 0)
        {
            hands.Add((0, step.Hands.Minutes));
        }

        foreach (var fold in outcome.Folds)
        {
            if (double.IsFinite(fold.Minutes[lane]))
            {
                hands.Add((fold.Minutes[lane], fold.Hands.Minutes));
            }
        }

        return [.. hands];
    }

    /// <summary>Steps whose start cannot be told: those after a step without an end, and what is made ready just in time for them.</summary>
    private static bool[] Open(StepGraph graph, IReadOnlyList<StepOutcome> outcomes)
    {
        var open = new bool[graph.Steps.Count];
        for (var index = 0; index < open.Length; index++)
        {
            open[index] = graph.Before[index].Any(before => open[before] || HasNoEnd(outcomes[before]));
        }

        for (var index = 0; index < open.Length; index++)
        {
            open[index] |= StepGraph.IsBeside(graph.Steps[index])
                && Enumerable.Range(0, open.Length).Any(later => graph.Before[later].Contains(index) && open[later]);
        }

        return open;
    }

    /// <summary>Whether nothing says when a step starts: nothing comes before it, and how long before the next one it must begin cannot be told.</summary>
    private static bool IsLoose(StepGraph graph, IReadOnlyList<StepOutcome> outcomes, int index) =>
        graph.Before[index].Length == 0 && HasNoEnd(outcomes[index]);

    private static bool HasNoEnd(StepOutcome outcome) => outcome.Minutes is not { } minutes || double.IsInfinity(minutes.Central);

    /// <summary>Lays the steps of one lane; gives the end of the last of them.</summary>
    private static double Lay(StepGraph graph, IReadOnlyList<StepOutcome> outcomes, bool[] open, int lane, out double[] starts)
    {
        var work = new Work[graph.Steps.Count];
        for (var index = 0; index < work.Length; index++)
        {
            var (step, outcome) = (graph.Steps[index], outcomes[index]);
            var minutes = open[index] || HasNoEnd(outcome) ? 0 : outcome.Minutes!.Value[lane];
            work[index] = new(minutes, graph.Before[index], HandsOf(step, outcome, lane), step.Kind is StepKind.Preheat or StepKind.Bake || step.Where == Where.Oven);
        }

        starts = Timeline.Lay(work);
        var first = FirstHand(graph, starts);
        var end = 0.0;
        for (var index = 0; index < work.Length; index++)
        {
            end = Math.Max(end, starts[index] + work[index].Minutes - first);
            starts[index] -= first;
        }

        return end;
    }

    /// <summary>The day begins with the first hand. Butter may have to leave the fridge before that: its start is then negative.</summary>
    private static double FirstHand(StepGraph graph, double[] starts)
    {
        var first = double.PositiveInfinity;
        for (var index = 0; index < starts.Length; index++)
        {
            if (!StepGraph.IsTakeOut(graph.Steps[index]))
            {
                first = Math.Min(first, starts[index]);
            }
        }

        return double.IsFinite(first) ? first : 0;
    }

    private static bool NeverEnds(IReadOnlyList<StepOutcome> outcomes, int lane)
    {
        foreach (var outcome in outcomes)
        {
            if (outcome.Minutes is { } minutes && double.IsInfinity(minutes[lane]))
            {
                return true;
            }
        }

        return false;
    }
}
