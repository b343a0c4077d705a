using Doughwright.Engine.Heat;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>One step in which a dough rises, taken once more in other surroundings, with all that came before as it was.</summary>
internal sealed class StepAgain
{
    private readonly StepInput input;

    private StepAgain(StepInput input, Portion before, PerLane start, Body body, PlaceHolder holder) =>
        (this.input, Before, Start, Body, Holder) = (input, before, start, body, holder);

    public Step Step => input.Step;

    public Stage Stage => input.Stage;

    /// <summary>Air of the room from the start of the step on; a place that the kitchen keeps warm is not counted.</summary>
    public AirProfile Room => input.Air;

    public Portion Before { get; }

    /// <summary>The dough when it goes in, °C.</summary>
    public PerLane Start { get; }

    /// <summary>One piece of it, or all where it is one.</summary>
    public Body Body { get; }

    /// <summary>What it stands in or on.</summary>
    public PlaceHolder Holder { get; }

    public int Lanes => input.Lanes;

    /// <summary>How readily it takes heat from air, in every lane.</summary>
    public PerLane Exchange => Exchanging(Bodies.ExchangeOf(Step, Start.Central, Start.Central, Room.At(Duration.Zero).Celsius));

    /// <summary>Null when the step is no rise, or when the dough's temperature or composition is not known.</summary>
    public static StepAgain? Of(Rehearsal rehearsal, string step)
    {
        var run = rehearsal.Kept;
        var index = run.Graph.Steps.ToList().FindIndex(known => known.Id == step);
        if (index < 0 || run.Graph.Steps[index] is not { Kind: StepKind.Bulk or StepKind.Proof } known)
        {
            return null;
        }

        var stage = new Stage(run.Stage.Formula, run.Stage.Kitchen, run.Stage.Request, run.Stage.Priors, isHome: false);
        var before = run.Before(index) ?? Matter.Raw(known.Component, stage);
        before = known.Kind == StepKind.Proof ? before.Divided(stage, known.Component) : before;
        var anchor = rehearsal.AtHome ? run.Outcomes[index].Anchor : run.Anchors.GetValueOrDefault(step);
        var room = stage.Kitchen.Air.StartingAt(Duration.FromMinutes(run.Times.Starts[index] ?? 0));
        var input = new StepInput(known, before, new Dictionary<string, Portion>(), room, anchor, stage);
        return before.Celsius is { } start && Bodies.Of(known, before) is { } body && RisePhase.Of(input, before) is not null
            ? new(input, before, start, body, HolderOf(run.Graph, index, before))
            : null;
    }

    /// <summary>Where the text names no vessel, a dough is in its bowl until it is shaped, and then on a tray.</summary>
    private static PlaceHolder HolderOf(StepGraph graph, int index, Portion before)
    {
        var shaping = Enumerable.Range(0, index).LastOrDefault(other => graph.Steps[other].Kind == StepKind.Shape && graph.WorksOn[other] == graph.WorksOn[index], -1);
        var vessel = graph.Steps[index].Vessel ?? (shaping >= 0 ? graph.Steps[shaping].Vessel : null);
        return vessel?.Shape switch
        {
            VesselShape.Tin => PlaceHolder.Tin,
            VesselShape.Bowl or VesselShape.Pot when before.Pieces <= 1 => PlaceHolder.Bowl,
            VesselShape.Tray or VesselShape.Board => PlaceHolder.Tray,
            _ => shaping >= 0 || before.Pieces > 1 || graph.Steps[index].Depth is not null ? PlaceHolder.Tray : PlaceHolder.Bowl,
        };
    }

    public PerLane Exchanging(ExchangeCoefficient exchange) => Bodies.Draw(exchange, Stage.Priors);

    /// <summary>Minutes in air that stays as it is; infinite in a lane that never ends; null when they cannot be told.</summary>
    public PerLane? MinutesAt(Temperature air) => Take(input with { Air = AirProfile.Constant(air) }).Minutes;

    /// <summary>The same for a dough that goes in warmer or colder than it would.</summary>
    public PerLane? MinutesAt(Temperature air, TemperatureDelta warmer) => Take(input with
    {
        Air = AirProfile.Constant(air),
        Before = Before with { Celsius = Start + warmer.Kelvins },
    }).Minutes;

    public PerLane? MinutesInRoom() => Take(input).Minutes;

    public PerLane? MinutesIn(Surroundings around) => Take(input with { Around = around }).Minutes;

    /// <summary>The dough's mean every minute in every lane, at [minute × lanes + lane], without the beginning.</summary>
    public double[] DoughIn(Surroundings around, int minutes) =>
        Rising.Drift(input with { Around = around }, Body, Start, Duration.FromMinutes(1), minutes).History.Celsius;

    private static StepOutcome Take(StepInput input) => input.Step.Kind == StepKind.Bulk ? BulkStep.Run(input) : ProofStep.Run(input);
}
