using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Ingredients;

/// <summary>What one household measure of an ingredient weighs: one tablespoon, one large egg, one sachet.</summary>
/// <param name="Unit">As it can be written, without doubt: "US cup sifted", "tbsp", "European large".</param>
/// <param name="Mass">Of one of them, without shell, peel or wrapping.</param>
/// <param name="Regions">Where it is sold so; empty means everywhere.</param>
/// <param name="Evidence">"read" as it stands in the source, "worked out" from another measure of the same ingredient, "proxy" where another row was weighed, or "common practice".</param>
public sealed record Measure(string Unit, Mass Mass, IReadOnlyList<Region> Regions, Evidence Evidence);
