using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Recipes;

/// <summary>A way to keep what was baked: "in a bag at room temperature, 2 d".</summary>
/// <param name="Words">How, as written.</param>
/// <param name="For">How long; null when the text does not say.</param>
public sealed record KeepingAdvice(string Words, Duration? For, Position Position);
