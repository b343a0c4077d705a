namespace Doughwright.Engine.Rehearsals.Differences;

/// <summary>One figure in two rehearsals, and what moved it.</summary>
public sealed record Difference
{
    public required Figure Figure { get; init; }

    /// <summary>In the first rehearsal; null with <see cref="FirstUnknown"/>.</summary>
    public double? First { get; init; }

    public double? Second { get; init; }

    public Unknown? FirstUnknown { get; init; }

    public Unknown? SecondUnknown { get; init; }

    /// <summary>Second less first; null when one of them is not there.</summary>
    public double? By => Second - First;

    /// <summary>What moved it, in the order of the changes. They add up to <see cref="By"/>; parts of nothing are left out.</summary>
    public IReadOnlyList<Part> Parts { get; init; } = [];

    /// <summary>What one change, or several that cannot be told apart, did to a figure.</summary>
    /// <param name="Moves">More than one only where the figure could not be told between them, as when a step never ends half-way.</param>
    /// <param name="By">In the unit of the figure; never zero.</param>
    public sealed record Part(IReadOnlyList<Move> Moves, double By);
}

/// <summary>One change on the way from the first rehearsal to the second.</summary>
public readonly record struct Move(Mover Mover, Direction Direction);
