using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals;

/// <summary>How brown a crust is when the core is done, against the author's own bake. Ranked, never painted.</summary>
public enum CrustRank
{
    /// <summary>Paler than at home.</summary>
    Paler,

    /// <summary>As at home.</summary>
    Alike,

    /// <summary>Browner than at home.</summary>
    Browner,
}

/// <summary>What a piece is like when it comes out of the oven.</summary>
/// <param name="Core">In the middle.</param>
/// <param name="Surface">Over all its faces; a top under hot walls is hotter than that.</param>
/// <param name="Loss">Of the raw dough's mass, in the oven.</param>
/// <param name="DoneCore">At which such a core is done: what the author asked or measured, else what such breads are baked to.</param>
/// <param name="CoreAfter">When it is that hot. A piece that stays in for longer does so for its crust.</param>
/// <param name="CarriesTo">The most the core comes to after the oven, on a rack.</param>
/// <param name="CarriesFor">How long after.</param>
/// <param name="ColourAfter">When the crust is as brown as the author's was; null where no bake at home says how brown, or where it takes half as long again as the core and more.</param>
/// <param name="Crust">Null where no bake at home says how brown.</param>
/// <remarks>Source: house-bake-lanes, zanoni-browning.</remarks>
public sealed record BakeTelling(
    Estimate<Temperature> Core,
    Estimate<Temperature> Surface,
    Estimate<Percent> Loss,
    Temperature DoneCore,
    Duration CoreAfter,
    Temperature CarriesTo,
    Duration CarriesFor,
    Duration? ColourAfter,
    CrustRank? Crust);
