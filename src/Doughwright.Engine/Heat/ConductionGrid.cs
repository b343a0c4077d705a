using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>
/// A body cut into cells of equal thickness from the middle (or the insulated face) outwards, with the geometry that conduction needs.
/// The same for all lanes.
/// </summary>
/// <remarks>
/// Between cells: conductance k A/Δ over the face between them. Outermost half cell: k A'/(Δ/2) with A' the area half way between its
/// middle and the surface, which keeps the second order in space. Source: finite-volumes.
/// </remarks>
internal sealed class ConductionGrid
{
    private readonly double[] inner;
    private readonly double[] outer;
    private readonly double[] shares;

    /// <param name="size">Half-thickness or radius.</param>
    /// <param name="cells">At least 2.</param>
    public ConductionGrid(BodyShape shape, Length size, int cells)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(size.Metres, nameof(size));
        ArgumentOutOfRangeException.ThrowIfLessThan(cells, 2);
        var thickness = size.Metres / cells;
        inner = new double[cells];
        outer = new double[cells];
        shares = new double[cells];
        var whole = VolumeWithin(shape, size.Metres);
        for (var cell = 0; cell < cells; cell++)
        {
            var volume = VolumeWithin(shape, (cell + 1) * thickness) - VolumeWithin(shape, cell * thickness);
            // The innermost face carries nothing: it is the middle of the body or an insulated face.
            inner[cell] = cell == 0 ? 0 : AreaAt(shape, cell * thickness) / (thickness * volume);
            outer[cell] = cell == cells - 1
                ? AreaAt(shape, size.Metres - (thickness / 4)) / (thickness / 2 * volume)
                : AreaAt(shape, (cell + 1) * thickness) / (thickness * volume);
            shares[cell] = volume / whole;
        }

        var surface = AreaAt(shape, size.Metres);
        SurfacePerVolume = surface / whole;
        SurfaceConductance = AreaAt(shape, size.Metres - (thickness / 4)) / (thickness / 2 * surface);
    }

    public int Cells => inner.Length;

    /// <summary>Conductance through a cell's inner face over the cell's volume, for a conductivity of one; 1/m².</summary>
    public ReadOnlySpan<double> Inner => inner;

    /// <summary>The same through its outer face.</summary>
    public ReadOnlySpan<double> Outer => outer;

    /// <summary>Share of the body's volume.</summary>
    public ReadOnlySpan<double> Shares => shares;

    /// <summary>Outer area over volume, 1/m.</summary>
    public double SurfacePerVolume { get; }

    /// <summary>Conductance of the outermost half cell over the outer area, for a conductivity of one; 1/m.</summary>
    public double SurfaceConductance { get; }

    // Areas and volumes in units that cancel: per m² of slab, per 2π m of cylinder, per 4π of sphere.
    private static double AreaAt(BodyShape shape, double radius) => shape switch
    {
        BodyShape.Slab => 1,
        BodyShape.Cylinder => radius,
        BodyShape.Sphere => radius * radius,
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "No such shape."),
    };

    private static double VolumeWithin(BodyShape shape, double radius) => shape switch
    {
        BodyShape.Slab => radius,
        BodyShape.Cylinder => radius * radius / 2,
        _ => radius * radius * radius / 3,
    };
}
