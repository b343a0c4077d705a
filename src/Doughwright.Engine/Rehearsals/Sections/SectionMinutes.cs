using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Rehearsals.Sections;

/// <summary>What a bake takes over a section through its piece, above zero.</summary>
/// <param name="Home">In the author's kitchen: the author's own minutes where it was timed there.</param>
/// <param name="Here">In the kitchen asked for.</param>
public readonly record struct SectionMinutes(Duration Home, Duration Here);
