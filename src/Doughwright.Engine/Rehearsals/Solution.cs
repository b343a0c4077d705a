using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals;

/// <summary>How warm one line, or several moved together, must go in so that the dough comes out as asked.</summary>
/// <param name="Lines">Line ids that are free; the others stand at room temperature.</param>
/// <param name="Warmth">Null when no temperature between freezing and boiling does it.</param>
/// <param name="Meets">What the delicate things meet on the way.</param>
/// <param name="Offered">Whether it can be recommended: nothing delicate meets too much heat.</param>
public sealed record Solution(IReadOnlyList<string> Lines, Estimate<Temperature>? Warmth, IReadOnlyList<Meeting> Meets, bool Offered)
{
    /// <summary>How much of the free water must be ice at 0 °C, the rest from the tap, where no water is cold enough; null where none is needed.</summary>
    public Estimate<Mass>? Ice { get; init; }

    /// <summary>
    /// What the trade's additive rule says of the free water, as a second opinion with its own assumptions: it counts flour, room and
    /// preferment alike whatever they weigh, and has no bowl. Null where no water is free. Source: additive-rule.
    /// </summary>
    public Temperature? TradeRule { get; init; }
}

/// <summary>Something delicate and the warmest thing it meets in the bowl: the warmest part already in, unmixed.</summary>
public sealed record Meeting(string What, Temperature Temperature);
