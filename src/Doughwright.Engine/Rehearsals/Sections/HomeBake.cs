namespace Doughwright.Engine.Rehearsals.Sections;

/// <summary>A bake in the author's oven.</summary>
/// <param name="Heat">Times the heat of the usual oven.</param>
/// <param name="Pace">The author's minutes over those that a section in the oven of the lanes takes.</param>
/// <param name="Minutes">The author's, or along one radius where nobody timed it.</param>
/// <param name="AtHome">In those minutes where the author timed it.</param>
internal sealed record HomeBake(double Heat, double Pace, double Minutes, BakedSection AtHome);
