using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Recipes;

/// <summary>What is done in a step. A closed list: docs/json.md.</summary>
public enum StepKind
{
    Prepare,
    Cook,
    Scald,
    Cool,
    Warm,
    Mix,
    Rest,
    Bulk,
    Shape,
    Proof,
    Glaze,
    Preheat,
    Bake,
    Finish,
}

/// <summary>One action of the method, as the author wrote it.</summary>
public sealed record Step
{
    public required string Id { get; init; }

    /// <summary>As shown to a person: the id in words, or the name the author gave.</summary>
    public required string Name { get; init; }

    public required StepKind Kind { get; init; }

    /// <summary>Id of the component that is worked on.</summary>
    public required string Component { get; init; }

    /// <summary>Minutes a person is busy, at the start of the step. Zero when nobody is needed.</summary>
    public Duration Hands { get; init; }

    /// <summary>How the step ends; null when only a measured time or the hands say so.</summary>
    public StepEnd? End { get; init; }

    /// <summary>What a person sees when it is done.</summary>
    public string? Cue { get; init; }

    /// <summary>What the author measured in the home kitchen.</summary>
    public Measured? Measured { get; init; }

    /// <summary>Bowl, tray or tin; null when the text does not say.</summary>
    public Vessel? Vessel { get; init; }

    public Cover Cover { get; init; } = Cover.Open;

    /// <summary>How deep the matter lies, when it is spread out.</summary>
    public Length? Depth { get; init; }

    /// <summary>Where it happens.</summary>
    public Where Where { get; init; } = Where.Room;

    /// <summary>Whether the hob heats it: a cook, and a scald that is stirred there until it thickens. Source: scald-on-hob.</summary>
    public bool IsCooked => Kind == StepKind.Cook || (Kind == StepKind.Scald && Where == Where.Hob);

    /// <summary>Whether boiling liquid is poured over it in its bowl, in which it then cools.</summary>
    public bool IsPoured => Kind == StepKind.Scald && Where != Where.Hob;

    /// <summary>Way of mixing; null when the step does not mix.</summary>
    public MixingWay? Way { get; init; }

    /// <summary>Line ids in the order they are added; empty means as listed.</summary>
    public IReadOnlyList<string> Order { get; init; } = [];

    public IReadOnlyList<Fold> Folds { get; init; } = [];

    public OvenSetting? Oven { get; init; }

    /// <summary>Trays in use, when the author says so.</summary>
    public int? Trays { get; init; }

    /// <summary>How long the oven is steamed from the moment the piece goes in; null for not at all.</summary>
    public Duration? Steam { get; init; }

    /// <summary>What stands under the piece in the oven, or under the tin it is in.</summary>
    public BakedOn On { get; init; } = BakedOn.Tray;

    /// <summary>When the lid of its pot or tin comes off, after it went in; null when there is none.</summary>
    public Duration? LidOff { get; init; }

    public IReadOnlyList<string> Tools { get; init; } = [];

    /// <summary>Other ways to do this step, each with its own times.</summary>
    public IReadOnlyList<StepVariant> Variants { get; init; } = [];

    /// <summary>Prose for the reader, as written.</summary>
    public string? Words { get; init; }

    /// <summary>Photos of it, in the order in which they are shown.</summary>
    public IReadOnlyList<Photo> Photos { get; init; } = [];

    /// <summary>Names of teaching notes of the book that belong here, as written.</summary>
    public IReadOnlyList<string> Learn { get; init; } = [];

    public required Position Position { get; init; }

    /// <summary>The variant with this id, or null.</summary>
    public StepVariant? FindVariant(string id) => Variants.FirstOrDefault(variant => variant.Id == id);
}

/// <summary>Another way to do a step: kneaded by machine, in a static oven, without folding.</summary>
/// <param name="Id">Short word, unique in the step: "machine".</param>
/// <param name="Step">The whole step as it is done this way. It has no variants of its own.</param>
public sealed record StepVariant(string Id, Step Step);

/// <summary>How a step ends.</summary>
public abstract record StepEnd
{
    private StepEnd()
    {
    }

    /// <summary>After a fixed time.</summary>
    public sealed record AfterTime(Duration Time) : StepEnd;

    /// <summary>When the middle has reached a temperature, from above or below.</summary>
    public sealed record AtTemperature(Temperature Temperature) : StepEnd;

    /// <summary>At a multiple of the volume after mixing: 2 is doubled.</summary>
    public sealed record AtGrowth(double Times) : StepEnd;

    /// <summary>When the core of a bake has reached a temperature.</summary>
    public sealed record AtCore(Temperature Temperature) : StepEnd;

    /// <summary>When a person sees the cue; the estimate is the author's.</summary>
    public sealed record ByCue(Duration Estimate) : StepEnd;

    /// <summary>When a preferment or levain is ripe: what its cue says, and computed as far as yeast or sourdough is known.</summary>
    /// <param name="About">How long it takes at home, where the author says so and did not measure it.</param>
    public sealed record WhenRipe(Duration? About) : StepEnd;
}

/// <summary>What the author really saw. At least one of the two values is set.</summary>
/// <param name="On">The day, as typed.</param>
/// <param name="TimesSeen">How often, at least 1.</param>
public sealed record Measured(Duration? Time, Temperature? Temperature, string? On, int TimesSeen)
{
    /// <summary>The room it was seen in, when that was another than the home's.</summary>
    public Temperature? Air { get; init; }
}

/// <summary>A fold during the bulk.</summary>
/// <param name="After">Time after the start of the bulk at home.</param>
public sealed record Fold(Duration After, Duration Hands);

/// <summary>What keeps the air away.</summary>
public enum Cover
{
    Open,
    Covered,
    Cloth,
}

/// <summary>The place a step stands in.</summary>
public enum Where
{
    Room,
    Fridge,
    Hob,
    Oven,
    ProofingPlace,

    /// <summary>Standing in cold water from the tap, stirred now and then.</summary>
    Bath,
}

/// <summary>How a dough is mixed; each way warms it differently.</summary>
public enum MixingWay
{
    ByHand,
    Machine,
    FoodProcessor,
}

/// <summary>What stands under a piece in the oven.</summary>
public enum BakedOn
{
    Tray,

    /// <summary>The hot stone or steel of the oven, or the sole of a deck oven.</summary>
    Stone,
    Rack,
}

/// <summary>The dial of an oven as the author set it.</summary>
public sealed record OvenSetting(Temperature Dial, Kitchens.OvenMode? Mode)
{
    /// <summary>Where the dial is set to during the bake; null when it stays.</summary>
    public DialChange? Then { get; init; }
}

/// <summary>Another setting of the dial, the mode being the same.</summary>
/// <param name="After">After the piece went in.</param>
public sealed record DialChange(Temperature Dial, Duration After);
