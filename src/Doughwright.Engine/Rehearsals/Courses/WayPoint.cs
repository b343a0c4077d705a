namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>A moment of a step in the likely lane.</summary>
/// <param name="Minutes">After the start of the step.</param>
/// <param name="Celsius">Mean temperature; null when it cannot be told.</param>
/// <param name="Growth">Volume against that after mixing; null where the step does not change it.</param>
internal readonly record struct WayPoint(double Minutes, double? Celsius, double? Growth);
