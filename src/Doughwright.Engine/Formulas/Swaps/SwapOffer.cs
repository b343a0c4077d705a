using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Swaps;

/// <summary>A swap that the recipe itself speaks of, with what it would cost.</summary>
/// <param name="Allowed">The author's word on it; null when the recipe says what to do without.</param>
/// <param name="Without">What the recipe says to do without an ingredient; null for an allowed swap.</param>
public sealed record SwapOffer(Wish Wish, AllowedSwap? Allowed, Without? Without, Swapped Result);
