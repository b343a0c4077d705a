using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Readying;

/// <summary>What a recipe is moved by to be ready at an hour.</summary>
public enum ReadyLever
{
    /// <summary>More or less yeast in the dough.</summary>
    Yeast,

    /// <summary>Warmer or colder water; where no liquid is poured into the dough, the parts that are made warm beforehand.</summary>
    Water,

    /// <summary>Half of the way by yeast, the rest by water.</summary>
    Both,
}

/// <summary>Why a lever does not do it.</summary>
public enum ReadyObstacle
{
    /// <summary>The dough is not raised by yeast that is weighed into it.</summary>
    NoYeastInDough,

    /// <summary>Neither water nor another liquid is poured into the dough, and no part is made warm for it.</summary>
    NoWaterInDough,

    /// <summary>No dose and no warmth within reason comes to that hour.</summary>
    OutOfReach,

    /// <summary>A little more or less jumps past that hour: heating that comes on, or a part that never gets so cold.</summary>
    JumpsPast,

    /// <summary>How long the recipe takes here cannot be told, whatever goes in.</summary>
    NotKnown,
}

/// <summary>How a recipe can be ready after a given time from the first hand.</summary>
/// <param name="Wanted">From the first hand to the end of the last step.</param>
/// <param name="AsWritten">The recipe as it is, in the same kitchen.</param>
/// <param name="Ways">By yeast, by water, by both, in this order.</param>
public sealed record ReadyAnswer(Duration Wanted, Rehearsal AsWritten, IReadOnlyList<ReadyWay> Ways);

/// <summary>One way to be ready in time, with what it costs.</summary>
public sealed record ReadyWay
{
    public required ReadyLever Lever { get; init; }

    /// <summary>Null where it does it.</summary>
    public ReadyObstacle? Obstacle { get; init; }

    /// <summary>The soonest this lever can do, or the nearest before a jump, where it cannot do what was asked; null where that is not known.</summary>
    public Duration? Soonest { get; init; }

    /// <summary>The latest it can do, or the nearest after a jump; null where it is not known, or where there is no end to it.</summary>
    public Duration? Latest { get; init; }

    /// <summary>The yeast to weigh, line by line; empty where it stays as written.</summary>
    public IReadOnlyList<ReadyDose> Doses { get; init; } = [];

    /// <summary>Null where the water stays as written.</summary>
    public ReadyWater? Water { get; init; }

    /// <summary>The recipe done this way; null with an obstacle.</summary>
    public Rehearsal? Rehearsal { get; init; }

    /// <summary>How long it takes when the yeast is weighed as the scale shows it; null where no yeast is moved, or where the scale shows none of it.</summary>
    public Duration? AsWeighed { get; init; }

    /// <summary>Steps that take at least a minute more or less than as written.</summary>
    public IReadOnlyList<ReadyMove> Moves { get; init; } = [];

    /// <summary>What is to be told of this way and not of the recipe as written.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];
}

/// <summary>A line of yeast weighed otherwise.</summary>
/// <param name="Line">Id of the line in the dough.</param>
/// <param name="Weighed">As the kitchen's scale shows it.</param>
public sealed record ReadyDose(string Component, string Line, string Name, Mass Was, Mass Now, Mass Weighed);

/// <summary>Water, or parts made warm, that go in otherwise.</summary>
/// <param name="Now">All of them alike.</param>
/// <param name="Dough">The dough after mixing; null when that cannot be told.</param>
public sealed record ReadyWater(string Component, IReadOnlyList<ReadyWarmed> Lines, Temperature Now, Estimate<Temperature>? Dough);

/// <summary>One of them.</summary>
/// <param name="Line">Id of the line in the dough.</param>
/// <param name="Was">As it goes in as written, in this kitchen; null when that cannot be told.</param>
public sealed record ReadyWarmed(string Line, string Name, Temperature? Was);

/// <summary>A step that takes another time.</summary>
public sealed record ReadyMove(string Step, string Name, StepKind Kind, Duration Was, Duration Now);
