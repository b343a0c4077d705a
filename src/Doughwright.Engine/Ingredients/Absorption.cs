using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Ingredients;

/// <summary>How much water a flour takes up, as its bag or its mill says. It is told and compared; no figure is worked out from it.</summary>
/// <param name="Share">Water on 100 g of flour.</param>
/// <param name="Words">How that was found: "farinograph at 14 % moisture"; null when it is not said.</param>
public sealed record Absorption(Percent Share, string? Words);
