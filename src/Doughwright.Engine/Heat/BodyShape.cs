namespace Doughwright.Engine.Heat;

/// <summary>Shapes in which heat flows along one direction only. The size is the half-thickness, or the radius.</summary>
internal enum BodyShape
{
    /// <summary>
    /// Cooled from both faces alike, so that the middle is a mirror; or from one face, with its whole thickness as the size.
    /// </summary>
    Slab,
    Cylinder,
    Sphere,
}
