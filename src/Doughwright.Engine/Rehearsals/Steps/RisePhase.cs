using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>One dough at the start of a step in which it rises.</summary>
internal sealed class RisePhase(StepInput input, Portion before, PerLane start, Body body, RiseDough dough, int doughIndex)
{
    /// <summary>min: only how finely a run is cut and how long it goes on hang on these.</summary>
    private const double UsualRise = 90;
    private const double UsualRipening = 12 * 60;

    public StepInput Input { get; } = input;

    public Portion Before { get; } = before;

    /// <summary>How warm it is at the start, °C.</summary>
    public PerLane Start { get; } = start;

    public RiseDough Dough { get; } = dough;

    public int DoughIndex { get; } = doughIndex;

    /// <summary>What the dough is to the air around it.</summary>
    public Body Body { get; } = body;

    /// <summary>Length of the steps of heat and rise: the author's own time in so many, but never so long that a drift to the room is missed.</summary>
    public Duration StepLength => Duration.FromMinutes(Math.Min(OwnMinutes / Rising.StepsAtHome, Rising.LongestStep.Minutes));

    /// <summary>How long a run goes on before it says that the step does not end here.</summary>
    public Duration Patience => Duration.FromMinutes(OwnMinutes * Rising.Patience);

    /// <summary>How far the author's own minutes may be off, as a factor in every lane: read by eye, or only estimated.</summary>
    public PerLane TimeError => StatedTime.IsEstimate(Input.Step)
        ? Input.Stage.Priors.EstimateError(DoughIndex)
        : Input.Stage.Priors.ReadingError(DoughIndex);

    /// <summary>The author's own minutes at home, as far as they are known; else a usual time.</summary>
    public double OwnMinutes => Input.Anchor?.HomeMinutes?.Central ?? StatedTime.Of(Input.Step) ?? (Input.Step.End is StepEnd.WhenRipe ? UsualRipening : UsualRise);

    /// <summary>
    /// The phase that a step begins; null when the dough's temperature or composition is not known, or when it holds no living yeast.
    /// </summary>
    public static RisePhase? Of(StepInput input, Portion before)
    {
        var component = input.Stage.Component(input.Step.Component);
        return before.YeastDied is null && before.Celsius is { } start && Bodies.Of(input.Step, before) is { } body && Rising.DoughOf(component, input.Stage, Leaven.Of(component, input.Parts, input.Stage)) is { } dough
            ? new(input, before, start, body, dough, input.Stage.DoughIndex(component.Id))
            : null;
    }

    /// <summary>The step where nothing can be computed: the author's own time, said to be that.</summary>
    public static StepOutcome NotComputed(StepInput input, Portion before)
    {
        var stated = PlainSteps.NotCarried(input, before, before.Celsius);
        var drifted = stated.Minutes is null
            ? stated with { After = before with { Celsius = null, Dough = null } }
            : RestStep.Run(input) with { Basis = stated.Basis };
        // The step says how it ends; that its time is not known follows from what cannot be computed, and is not told twice.
        var told = drifted.Findings.Where(finding => input.Step.End is null || finding.Kind != StepFindings.TimeNotKnown);
        // Yeast that is dead was told where it died.
        return drifted with { Findings = before.YeastDied is null ? [.. told, StepFindings.About(input.Step, "rise-not-computed", Grade.Warning, false, RiseUnknown.Of(input, before))] : [.. told] };
    }

    /// <summary>The dough with a rate: as it stands, or after what it went through since mixing.</summary>
    public RiseState Begin(PerLane scale) => Before.Dough?.State.Copy() ?? Fresh(scale, Input.Stage);

    /// <summary>The dough from its mix to the start of the step at a rate, in the air of a stage.</summary>
    public RiseState Fresh(PerLane scale, Stage stage)
    {
        var state = new RiseState(Dough, stage.Priors.Rise, scale.Values, Rising.Pascals(stage), Before.Past?.StartCelsius ?? Start.Values);
        Before.Past?.Take(state);
        return state;
    }

    /// <summary>
    /// Where each lane ends. A lane that no rate brings to what was measured (<see cref="RiseAnchor"/>) never ends, which opens the range: what
    /// it reached at home is no growth of this dough, and it would be there at once.
    /// </summary>
    public static PerLane Reachable(PerLane growth, PerLane scale) => growth.With(scale, (reached, rate) => rate > 0 ? reached : double.PositiveInfinity);

    /// <summary>
    /// Minutes to the end of the step. A lane that is there before it begins, where the likely one is not, knows no time: it counts as one that
    /// does not end, and never as one that ends at once.
    /// </summary>
    public static PerLane MinutesOf(RiseState state) => state.StoppedMinutes[0] > 0
        ? new([.. state.StoppedMinutes.Select(minutes => minutes > 0 ? minutes : double.PositiveInfinity)])
        : new([.. state.StoppedMinutes]);

    /// <summary>
    /// What each lane reached at home, as it is to be reached elsewhere. A lane in which the dough made no gas did not rise at all, which is not what
    /// the author saw: it never ends elsewhere, or else it would be there at once.
    /// </summary>
    public PerLane Risen(RiseState state)
    {
        var before = Before.Dough?.State.Moles;
        return new([.. state.Growth.Select((growth, lane) => state.Moles[lane] > (before?[lane] ?? 0) ? growth : double.PositiveInfinity)]);
    }

    /// <summary>What each lane is to reach, for showing; a lane that never gets there goes for the likely one's growth.</summary>
    public static PerLane Told(PerLane growth, PerLane scale) => growth.With(scale, (reached, rate) => rate > 0 && double.IsFinite(reached) ? reached : growth.Central);

    /// <summary>Growth at each fold, fold by fold.</summary>
    public IEnumerable<PerLane> FoldGrowth(RiseFolds folds) => Enumerable.Range(0, folds.Count)
        .Select(fold => new PerLane(folds.Growth.AsSpan(fold * folds.Lanes, folds.Lanes).ToArray()));

    public StepOutcome Outcome(RiseState state, PerLane scale, PerLane minutes, RiseFolds folds, Rehearsals.Basis basis)
    {
        var end = new PerLane([.. state.Celsius]);
        var ends = double.IsFinite(minutes.Central);
        var settled = Input.Air.Knots[^1].Air.Celsius;
        return new()
        {
            After = Before with
            {
                Celsius = ends ? end : PerLane.Same(settled, Input.Lanes),
                Dough = new(state, scale, DoughIndex, new(Input.Stage.Priors.Rise.Void)),
            },
            Minutes = minutes,
            Basis = basis,
            StartCelsius = Start,
            EndCelsius = ends ? end : null,
            SettlesAtCelsius = ends ? null : settled,
            Folds = [.. Enumerable.Range(0, folds.Count).Select(fold => new FoldEvent(
                new(folds.Minutes.AsSpan(fold * folds.Lanes, folds.Lanes).ToArray()),
                Input.Step.Folds[fold].Hands))],
        };
    }
}
