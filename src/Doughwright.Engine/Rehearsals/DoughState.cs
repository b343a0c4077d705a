using Doughwright.Engine.Fermentation;

namespace Doughwright.Engine.Rehearsals;

/// <summary>A dough that rises: its state, what the gas-free dough measures, and how fast it is against the model.</summary>
/// <param name="State">Gas, sugar and yeast in every lane. Never advanced in place: a step advances a copy.</param>
/// <param name="Scale">Rate against the book, solved at home.</param>
/// <param name="Index">Number of the dough among the recipe's doughs: each is read by eye with its own error.</param>
internal sealed record DoughState(RiseState State, PerLane Scale, int Index, PerLane Void)
{
    /// <summary>How fast its sourdough grows against the published rate, where a ripening at home fixed it.</summary>
    public PerLane? Pace { get; init; }

    /// <summary>Volume over the volume after mixing.</summary>
    public PerLane Growth => new([.. State.Growth]);

    /// <summary>Volume over the volume without any gas.</summary>
    public PerLane VolumePerGasFree => Growth.With(Void, (growth, share) => growth / (1 - share));

    public PerLane Celsius => new([.. State.Celsius]);
}
