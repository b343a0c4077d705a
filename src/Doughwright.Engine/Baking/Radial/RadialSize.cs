using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>How big a pack of pieces is and what is in it as it goes in.</summary>
internal readonly struct RadialSize<T>(RadialLanes lanes, int lane, double dimensions) where T : struct, ILane<T>
{
    /// <summary>From core to surface, m.</summary>
    public readonly T Reach = T.Load(lanes.Reach, lane);

    /// <summary>kg per kg of dry matter.</summary>
    public readonly T Water = T.Load(lanes.Water, lane);

    /// <summary>Dry matter, kg/m³.</summary>
    public readonly T Solids = T.Load(lanes.Solids, lane);

    /// <summary>What a conductance between two shells of the grid is multiplied by, m/kg.</summary>
    public readonly T PerArea = T.Of(1) / (T.Load(lanes.Solids, lane) * T.Load(lanes.Reach, lane) * T.Load(lanes.Reach, lane));

    /// <summary>Surface over dry matter, m²/kg.</summary>
    public readonly T Surface = T.Of(dimensions) / (T.Load(lanes.Solids, lane) * T.Load(lanes.Reach, lane));
}
