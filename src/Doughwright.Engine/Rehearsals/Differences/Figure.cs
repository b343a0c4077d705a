namespace Doughwright.Engine.Rehearsals.Differences;

/// <summary>What a figure tells, and in which unit.</summary>
public enum FigureKind
{
    /// <summary>How long a step takes, in minutes.</summary>
    Minutes,

    /// <summary>When a step starts, in minutes after the first hand.</summary>
    Start,

    /// <summary>Temperature at the start of a step, in °C.</summary>
    StartTemperature,

    /// <summary>Temperature at the end of a step, in °C.</summary>
    EndTemperature,

    /// <summary>What a step's oven is set to, in °C on the dial.</summary>
    Dial,

    /// <summary>Temperature of a part right after mixing or pouring, in °C.</summary>
    Mixed,

    /// <summary>How warm a line goes into a mix, in °C; by <see cref="Request.LineOf"/>.</summary>
    GoesIn,

    /// <summary>From the first hand to the end, in minutes.</summary>
    Total,

    /// <summary>Minutes a person is busy.</summary>
    Hands,

    /// <summary>Where water boils, in °C.</summary>
    Boils,
}

/// <summary>Names a figure of a rehearsal.</summary>
/// <param name="Of">Id of the step, the part or the line; empty for the whole.</param>
public readonly record struct Figure(FigureKind Kind, string Of = "");

/// <summary>Why a figure is not there.</summary>
public enum Unknown
{
    /// <summary>No such step or part: it was not needed there.</summary>
    NotThere,

    /// <summary>The step cannot end there.</summary>
    NeverEnds,

    /// <summary>It cannot be computed, because something is not known or something before it never ends.</summary>
    NotKnown,
}
