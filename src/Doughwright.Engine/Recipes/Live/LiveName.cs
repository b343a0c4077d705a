namespace Doughwright.Engine.Recipes.Live;

/// <summary>What a name in brackets stands for.</summary>
public enum LiveKind
{
    /// <summary>How long a step takes.</summary>
    StepTime,

    /// <summary>How warm what is worked on is at the end of a step.</summary>
    StepTemperature,

    /// <summary>What the oven of a step is set to.</summary>
    StepOven,

    /// <summary>When a fold falls, from the start of its step.</summary>
    FoldAfter,

    /// <summary>How warm a part is right after it was mixed or poured.</summary>
    PartTemperature,

    PartWeight,

    LineWeight,

    /// <summary>How many pieces the recipe makes.</summary>
    Pieces,

    PieceWeight,

    /// <summary>From the first hand to the last step.</summary>
    TotalTime,

    /// <summary>How long somebody is busy.</summary>
    HandsTime,

    RoomTemperature,

    /// <summary>Where water boils.</summary>
    BoilingPoint,

    /// <summary>What a step is called; only a note asks.</summary>
    StepName,

    /// <summary>What a part is called; only a note asks.</summary>
    PartName,

    /// <summary>What a person sees when a step is done, as written; only a note asks.</summary>
    StepCue,
}

/// <summary>A value of the recipe or of its rehearsal, by the words an author writes for it in brackets: "[bulk time]".</summary>
/// <param name="Words">Without the brackets: "bulk time".</param>
/// <param name="Step">Id of the step it is about, or null.</param>
/// <param name="Part">Id of the part it is about, or null.</param>
/// <param name="Line">Id of the line it is about, or null.</param>
/// <param name="Index">Number of the fold, from 0.</param>
public sealed record LiveName(string Words, LiveKind Kind, string? Step = null, string? Part = null, string? Line = null, int Index = 0);
