using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals;

/// <summary>When a loaf counts as cooled.</summary>
public enum CooledTo
{
    /// <summary>After the author's minutes.</summary>
    Minutes,

    /// <summary>At the temperature that is written.</summary>
    AsWritten,

    /// <summary>When its middle is as cool as the author's was.</summary>
    SameCore,

    /// <summary>When it is as near the room as the author's was, which had cooled out.</summary>
    NearRoom,

    /// <summary>After as long as in the warmest room that lets its middle come as low in good time: this one is too warm.</summary>
    RoomIsWarm,
}

/// <summary>What a piece is like when it has cooled after the oven.</summary>
/// <param name="Core">In the middle.</param>
/// <param name="Loss">Of the raw dough's mass, in this step.</param>
/// <param name="Air">About it, over the step.</param>
/// <param name="InTin">Whether it stays in its tin; else it is turned out onto a rack.</param>
/// <param name="Until">When it counts as cooled.</param>
/// <remarks>Along one radius. Sources: house-bake-lanes, hot-surfaces.</remarks>
public sealed record CoolTelling(Estimate<Temperature> Core, Estimate<Percent> Loss, Temperature Air, bool InTin, CooledTo Until);
