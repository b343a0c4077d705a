using Doughwright.Engine.Fermentation;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>How a body's mean temperature went while it drifted.</summary>
internal sealed record DriftRun(RiseHistory History)
{
    /// <summary>At the end, in every lane.</summary>
    public PerLane End => new(History.Celsius[^History.Lanes..]);
}
