using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals;

/// <summary>Takes a method step by step, each step handing its portion to the next.</summary>
internal static class Run
{
    /// <summary>Passes until the starts of the steps, and so the air they meet, no longer move.</summary>
    private const int MostPasses = 6;

    private static readonly Duration Settled = Duration.FromMinutes(1);

    /// <param name="anchors">What the author's measurements fixed, by step id; empty in the home run.</param>
    public static RunResult Of(Stage stage, IReadOnlyDictionary<string, Anchor> anchors)
    {
        var graph = StepGraph.Of(stage.Recipe, stage.Kitchen);
        var (starts, waits) = (new double?[graph.Steps.Count], new double[graph.Steps.Count]);
        var passes = 0;
        for (RunResult? before = null; ;)
        {
            var result = Once(stage, graph, anchors, starts, waits, before);
            var waited = HotWaits(result);
            var still = (stage.Kitchen.Air.IsConstant || Same(starts, result.Times.Starts)) && waits.Zip(waited).All(pair => Math.Abs(pair.First - pair.Second) < Settled.Minutes);
            if (still || ++passes == MostPasses)
            {
                return result;
            }

            (starts, waits) = ([.. result.Times.Starts], waited);
            before = stage.Kitchen.Air.IsConstant ? result : null;
        }
    }

    /// <summary>Minutes that a loaf out of the oven stands about before each step: it cools meanwhile.</summary>
    private static double[] HotWaits(RunResult run)
    {
        var waits = new double[run.Outcomes.Count];
        for (var index = 0; index < waits.Length; index++)
        {
            if (run.IndexBefore(index) is { } earlier && run.Outcomes[earlier] is { After.Hot: not null, Minutes: { } minutes }
                && run.Times.Starts[index] - run.Times.Starts[earlier] - minutes.Central is > 0 and var waited)
            {
                waits[index] = waited;
            }
        }

        return waits;
    }

    /// <summary>What lies in the bowl of a mix when its turn comes, each part as warm as its own steps leave it.</summary>
    public static Bowl UntilBowl(Stage stage, IReadOnlyDictionary<string, Anchor> anchors, Step mix)
    {
        var graph = StepGraph.Of(stage.Recipe, stage.Kitchen);
        var starts = stage.Kitchen.Air.IsConstant ? new double?[graph.Steps.Count] : [.. Of(stage, anchors).Times.Starts];
        var portions = new Dictionary<string, Portion>();
        for (var index = 0; graph.Steps[index].Id != mix.Id; index++)
        {
            if (!StepGraph.IsBeside(graph.Steps[index]))
            {
                Take(stage, graph, anchors, starts, 0, index, portions);
            }
        }

        return Bowl.Of(mix, stage.Component(mix.Component), portions, stage);
    }

    /// <param name="before">The pass before in air that stays as it is: what no hot loaf goes into stays as well.</param>
    private static RunResult Once(Stage stage, StepGraph graph, IReadOnlyDictionary<string, Anchor> anchors, double?[] starts, double[] waits, RunResult? before)
    {
        var portions = new Dictionary<string, Portion>();
        var outcomes = new StepOutcome[graph.Steps.Count];
        for (var index = 0; index < outcomes.Length; index++)
        {
            outcomes[index] = before is not null && portions.GetValueOrDefault(graph.WorksOn[index])?.Hot is null
                ? Put(graph, index, before.Outcomes[index], portions)
                : Take(stage, graph, anchors, starts, waits[index], index, portions);
        }

        return new(stage, graph, outcomes, RunTimes.Of(graph, outcomes, stage.Lanes)) { Anchors = anchors, Waits = waits };
    }

    /// <summary>Takes one step and puts its portion in the place of the one before.</summary>
    private static StepOutcome Take(
        Stage stage, StepGraph graph, IReadOnlyDictionary<string, Anchor> anchors, double?[] starts, double waited, int index, Dictionary<string, Portion> portions)
    {
        var step = graph.Steps[index];
        var start = Duration.FromMinutes(starts[index] ?? 0);
        var before = portions.GetValueOrDefault(graph.WorksOn[index]);
        if (before?.Hot is { } loaf && waited > 0)
        {
            before = before with { Hot = AfterOven.Waits(loaf, waited, start - Duration.FromMinutes(waited), stage, stage.Meets(step)) };
        }

        var anchor = stage.Meets(step) ? null : anchors.GetValueOrDefault(step.Id);
        var input = new StepInput(step, before, portions, stage.AirOf(step, start), anchor, stage) { Fillings = graph.FillingsAt(index) };
        return Put(graph, index, AfterOven.Of(input, SectionMove.Of(input, InItsRoom(input, start))), portions);
    }

    private static StepOutcome Put(StepGraph graph, int index, StepOutcome outcome, Dictionary<string, Portion> portions)
    {
        var step = graph.Steps[index];
        if (StepGraph.IsBeside(step))
        {
            return outcome;
        }

        // Kept in the outcome too: what is told of a step later on lies in what it lay in here.
        outcome = outcome with { After = outcome.After with { Vessel = step.Vessel ?? outcome.After.Vessel } };
        portions[graph.WorksOn[index]] = outcome.After;
        return outcome;
    }

    /// <summary>
    /// What was measured in another room fixes the step as it was there, and the author's own room is computed from it. What no measurement
    /// fixes takes the time that was seen.
    /// </summary>
    private static StepOutcome InItsRoom(StepInput input, Duration start)
    {
        var act = OfNothing.Is(input) && !StepGraph.IsBeside(input.Step) ? OfNothing.Run : ActionOf(input.Step);
        if (input.ToMeet?.Air is not { } seen || (input.Air.IsConstant && input.Air.At(Duration.Zero) == seen))
        {
            return act(input);
        }

        var there = input.Stage.In(AirProfile.Constant(seen));
        var measured = act(input with { Stage = there, Air = there.AirOf(input.Step, start) });
        return measured.Anchor is null ? measured : act(input with { Anchor = measured.Anchor, IsHome = false }) with
        {
            Anchor = measured.Anchor,
            Findings = measured.Findings,
        };
    }

    private static bool Same(double?[] starts, IReadOnlyList<double?> others) => starts.Zip(others).All(pair =>
        pair.First is null && pair.Second is null || Math.Abs((pair.First ?? 0) - (pair.Second ?? 0)) < Settled.Minutes);

    private static Func<StepInput, StepOutcome> ActionOf(Step step) => step.Kind switch
    {
        StepKind.Warm when StepGraph.IsAdded(step) => TakeOutStep.Run,
        StepKind.Prepare or StepKind.Finish or StepKind.Glaze => PlainSteps.Prepare,
        StepKind.Cook => PlainSteps.Cook,
        StepKind.Scald => ScaldStep.Run,
        StepKind.Cool or StepKind.Warm => CoolStep.Run,
        StepKind.Mix => MixStep.Run,
        StepKind.Rest => RestStep.Run,
        StepKind.Bulk => BulkStep.Run,
        StepKind.Shape => ShapeStep.Run,
        StepKind.Proof => ProofStep.Run,
        StepKind.Preheat => OvenSteps.Preheat,
        StepKind.Bake => OvenSteps.Bake,
        _ => throw new ArgumentOutOfRangeException(nameof(step), step.Kind, "No such kind of step."),
    };
}
