using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>How a dough comes to stand at a temperature in this kitchen, what else can be done, and what a miss costs.</summary>
public sealed record PlaceAdvice
{
    /// <summary>Id of the step it is about.</summary>
    public required string Step { get; init; }

    public required Temperature Target { get; init; }

    /// <summary>Mean of the room over the time of the step.</summary>
    public required Temperature Room { get; init; }

    /// <summary>The dough when the step begins; null when it cannot be told, and then nothing else can.</summary>
    public required Temperature? DoughStart { get; init; }

    /// <summary>How long the step takes in a place that keeps the temperature exactly.</summary>
    public required Estimate<Duration>? AtTarget { get; init; }

    /// <summary>The other choice: how long it takes in the room as it is, and how much longer that is.</summary>
    public required Estimate<Duration>? InRoom { get; init; }

    /// <inheritdoc cref="InRoom"/>
    public required Slip? RoomAgainstTarget { get; init; }

    /// <summary>What it costs when the place is 2 K too cold.</summary>
    public required Slip? TooCold { get; init; }

    /// <summary>What it costs when the place is 2 K too warm.</summary>
    public required Slip? TooWarm { get; init; }

    /// <summary>What it costs when the dough goes into the right place 2 K too cold.</summary>
    public required Slip? DoughTooCold { get; init; }

    /// <summary>What it costs when the dough goes into the right place 2 K too warm.</summary>
    public required Slip? DoughTooWarm { get; init; }

    /// <summary>Why nothing is worked out; null where it is.</summary>
    public PlaceRefusal? Refusal { get; init; }

    /// <summary>Whether the room is warmer than what is asked, so that places are cooled.</summary>
    public bool IsCooling => Room > Target;

    /// <summary>Whether the room is so near to the target that nothing needs to be done.</summary>
    public required bool RoomDoes { get; init; }

    /// <summary>Steadiest first; empty when the room does, or when nothing can be computed.</summary>
    public required IReadOnlyList<PlaceAnswer> Places { get; init; }

    /// <summary>What the warmth asked for does to this dough, whichever way it is reached: butter that softens.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];
}

/// <summary>How much longer a step takes than in a place that keeps the temperature; below nought when it is quicker.</summary>
/// <param name="Share">Of the time it takes there.</param>
public sealed record Slip(Estimate<Duration> Longer, Estimate<Percent> Share);
