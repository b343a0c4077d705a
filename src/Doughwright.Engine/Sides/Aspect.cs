namespace Doughwright.Engine.Sides;

/// <summary>What a difference between two recipes is about. A closed list: docs/json.md.</summary>
public enum Aspect
{
    Title,
    Region,

    /// <summary>How many pieces.</summary>
    Pieces,

    /// <summary>What the pieces are called.</summary>
    PieceName,
    PieceMass,

    /// <summary>All weights by one factor; told as the weight of the dough.</summary>
    Scale,
    HomeName,
    HomeAir,
    HomeAltitude,
    HomeTap,
    HomeFridge,
    HomeOven,

    /// <summary>Stone, dial, heating and steam of the oven at home.</summary>
    HomeOvenTraits,
    HomeTrays,
    HomeScale,
    HomeShelf,
    HomeProof,

    /// <summary>A part that only one of them has.</summary>
    Part,
    PartName,
    PartKind,

    /// <summary>The line that a part's percentages are of.</summary>
    PartBase,
    PartOrder,

    /// <summary>A line that only one of them has.</summary>
    Line,

    /// <summary>How much of a line.</summary>
    Amount,

    /// <summary>The same weight measured in another way.</summary>
    Typed,
    LineName,
    LineUses,
    Conditions,

    /// <summary>How warm a line goes in.</summary>
    Warmth,
    CountsAs,
    Weighed,
    LineOrder,

    /// <summary>A step that only one of them has.</summary>
    Step,
    StepName,
    StepKind,
    StepPart,
    Hands,

    /// <summary>How a step ends.</summary>
    End,
    Cue,
    Measured,
    Vessel,
    Cover,
    Depth,
    Where,
    Way,

    /// <summary>The order in which lines are added in a step.</summary>
    Order,
    Folds,
    Dial,
    OvenMode,
    DialThen,
    Trays,
    Steam,
    On,
    LidOff,
    StepTools,

    /// <summary>Other ways to do a step.</summary>
    Variants,

    /// <summary>Prose of a step.</summary>
    StepWords,

    /// <summary>Notes that a step links to.</summary>
    Learn,
    StepOrder,

    /// <summary>A photo of the recipe or of a step, or what is to be seen on it.</summary>
    Photo,

    /// <summary>A tool on the list.</summary>
    Tool,

    /// <summary>Prose of the recipe.</summary>
    Words,

    /// <summary>An ingredient of the author's own.</summary>
    Own,
    Without,
    Swap,
    Keeping,
    Accepted,
}
