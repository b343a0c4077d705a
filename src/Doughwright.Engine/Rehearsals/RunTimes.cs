using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>When the steps of a run start, and how long it takes in all.</summary>
/// <param name="Starts">Likely start of each step in minutes; null when something before it never ends or cannot be computed.</param>
/// <param name="Total">From the first hand to the end, in every lane; null when some step has no end.</param>
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
            total[lane] = outcomes.Any(outcome => outcome.Minutes is { } minutes && double.IsInfinity(minutes[lane]))
                ? double.PositiveInfinity
                : Lay(graph, outcomes, open, lane, out _);
        }

        return new([.. starts.Select((start, index) => open[index] ? (double?)null : start)], open.Any(isOpen => isOpen) ? null : new PerLane(total));
    }

    /// <summary>Hands of a step in one lane: at its start, and at its folds.</summary>
    public static List<(double Offset, double Minutes)> HandsOf(Step step, StepOutcome outcome, int lane)
    {
        var hands = new List<(double, double)>();
        if (step.Hands.Minutes > 0)
        {
            hands.Add((0, step.Hands.Minutes));
        }

        hands.AddRange(outcome.Folds.Where(fold => double.IsFinite(fold.Minutes[lane])).Select(fold => (fold.Minutes[lane], fold.Hands.Minutes)));
        return hands;
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

    private static bool HasNoEnd(StepOutcome outcome) => outcome.Minutes is not { } minutes || double.IsInfinity(minutes.Central);

    private static double Lay(StepGraph graph, IReadOnlyList<StepOutcome> outcomes, bool[] open, int lane, out double[] starts)
    {
        var work = graph.Steps.Select((step, index) => new Work(
            open[index] || HasNoEnd(outcomes[index]) ? 0 : outcomes[index].Minutes!.Value[lane],
            graph.Before[index],
            HandsOf(step, outcomes[index], lane),
            step.Kind is StepKind.Preheat or StepKind.Bake)).ToList();
        var laid = Timeline.Lay(work);

        // The day begins with the first hand. Butter may have to leave the fridge before that: its start is then negative.
        var first = laid.Where((_, index) => !StepGraph.IsTakeOut(graph.Steps[index])).DefaultIfEmpty(0).Min();
        starts = [.. laid.Select(start => start - first)];
        return work.Select((piece, index) => laid[index] + piece.Minutes - first).DefaultIfEmpty(0).Max();
    }
}
