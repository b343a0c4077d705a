namespace Doughwright.Engine.Rehearsals.Sections;

/// <summary>A rehearsal as it is told in the end.</summary>
/// <param name="Request">With what bakes take over their sections.</param>
/// <param name="Bakes">Null where no bake had to be computed.</param>
public sealed record RehearsedOverSections(Rehearsal Rehearsal, Request Request, BakesOverSections? Bakes);
