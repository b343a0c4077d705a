using Doughwright.Engine.Fermentation;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>How a body's mean temperature went while it drifted.</summary>
internal sealed record DriftRun(RiseHistory History)
{
    /// <summary>How warm a shell of the likely lane is at the end, from the middle outwards, °C.</summary>
    public double ShellEnd(int shell) => History.Shells[^(History.Lanes * (History.Shares.Length - shell))];

    /// <summary>At the end, in every lane.</summary>
    public PerLane End => new(History.Celsius[^History.Lanes..]);
}
