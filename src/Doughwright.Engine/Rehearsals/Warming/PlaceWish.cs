using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>What there is beside hot water. Nothing set: no lamp, and lids on.</summary>
public sealed record PlaceWish
{
    public static PlaceWish Plain { get; } = new();

    /// <summary>What the lamp of the oven takes while it is on; null for none. Only the oven has one.</summary>
    public Power? Lamp { get; init; }

    /// <summary>Whether jug and jars stand open, so that the air is moist. A basin is covered in any case.</summary>
    public bool OpenWater { get; init; }
}
