using Doughwright.Engine.Baking;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals;

/// <summary>Where a figure comes from.</summary>
public enum Basis
{
    /// <summary>The author wrote it and nobody has tried it here.</summary>
    Stated,

    /// <summary>The author saw it, in this kitchen.</summary>
    Measured,

    /// <summary>Computed from what was measured elsewhere or from the models' own figures.</summary>
    Computed,
}

/// <summary>One step of a rehearsal.</summary>
public sealed record RehearsedStep
{
    /// <summary>A dough hardly moves in a rest that is shorter.</summary>
    private static readonly Duration LongRest = Duration.FromHours(1);

    public required string Id { get; init; }

    public required StepKind Kind { get; init; }

    /// <summary>Whether the hob heats it: <see cref="Step.IsCooked"/>.</summary>
    public bool IsCooked { get; init; }

    /// <summary>The author's name of the step; for one that was put in, what it is about.</summary>
    public required string Name { get; init; }

    /// <summary>Id of the variant it is done by; null when it is done as written.</summary>
    public string? Variant { get; init; }

    /// <summary>Prose for the reader, as written, live values still in brackets.</summary>
    public string? Words { get; init; }

    /// <summary>Whether the author did not write it: heating the oven, taking butter out of the fridge.</summary>
    public bool IsAdded { get; init; }

    public required string Component { get; init; }

    public required Basis Basis { get; init; }

    /// <summary>Minutes after the first hand, negative for what must leave the fridge before; null when something before it never ends or cannot be computed.</summary>
    public Duration? Start { get; init; }

    /// <summary>How long it takes; null when it never ends here (then <see cref="SettlesAt"/> is set) or cannot be computed (then a finding says why).</summary>
    public Estimate<Duration>? Time { get; init; }

    public Duration Hands { get; init; }

    public Temperature? StartTemperature { get; init; }

    public Temperature? EndTemperature { get; init; }

    /// <summary>What it approaches, when it cannot end here.</summary>
    public Temperature? SettlesAt { get; init; }

    /// <summary>Volume at the end as a multiple of the volume after mixing. For a final proof it is for programs, never a goal for a person.</summary>
    public double? Growth { get; init; }

    /// <summary>The same where a dough rests for an hour or more, on the bench or in the fridge: what it comes to meanwhile, worth telling a person.</summary>
    public double? RisesMeanwhile => Kind == StepKind.Rest && Time is { } time && time.Likely >= LongRest ? Growth : null;

    /// <summary>
    /// From when to when a preferment is good to use, likely; null for what does not ripen. Without the range of <see cref="Time"/>: a preferment that
    /// is quicker than likely is ripe earlier and past it earlier.
    /// </summary>
    public RipeWindow? Ripe { get; init; }

    /// <summary>What a bake would take along one radius, where <see cref="Time"/> is that over a section through the piece; null where it is not.</summary>
    public Duration? AlongRadius { get; init; }

    /// <summary>The same step in the author's own kitchen.</summary>
    public Duration? HomeTime { get; init; }

    /// <summary>What a person sees when it is done. It overrules the time.</summary>
    public string? Cue { get; init; }

    public Dial? Dial { get; init; }

    /// <summary>What the oven makes of a piece, on request; null where nothing bakes or that cannot be computed.</summary>
    public Func<BakeTelling?>? Bake { get; init; }

    /// <summary>What a loaf that cools after the oven comes to, on request; null where none does or that cannot be computed.</summary>
    public Func<CoolTelling>? Cooling { get; init; }

    /// <summary>How long the oven is steamed, as written; null for not at all, or where this kitchen cannot.</summary>
    public Duration? Steam { get; init; }

    /// <summary>What stands under it in the oven here.</summary>
    public BakedOn On { get; init; }

    /// <summary>When the lid comes off, after it went in; null when there is none.</summary>
    public Duration? LidOff { get; init; }

    /// <summary>What happens within the step: folds.</summary>
    public IReadOnlyList<StepEvent> Events { get; init; } = [];

    /// <summary>Makes the reasons of the step's main figure, on request.</summary>
    public required Func<Reason> Why { get; init; }
}

/// <summary>From when to when a preferment is ripe, after the start of the step.</summary>
/// <param name="Latest">Null where the run does not go on so long.</param>
public sealed record RipeWindow(Duration Earliest, Duration? Latest);

/// <summary>Something done within a step.</summary>
/// <param name="What">A word of the resources: "fold".</param>
/// <param name="After">After the start of the step.</param>
public sealed record StepEvent(string What, Estimate<Duration> After, Duration Hands);
