using Doughwright.Engine.Numerics;
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

    /// <summary>Shells that a dough is told by where it is not one temperature.</summary>
    private const int Shells = 5;

    /// <param name="size">Half-thickness or radius.</param>
    /// <param name="cells">At least 2.</param>
    public ConductionGrid(BodyShape shape, Length size, int cells) : this(Dimensions(shape), size, cells)
    {
    }

    /// <param name="shape">Dimensions: 1 a slab, 2 a cylinder, 3 a ball, and any number from 1 on between and beyond.</param>
    public ConductionGrid(double shape, Length size, int cells)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(shape, 1);
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

        (ShellEnds, ShellShares) = ShellsOf(shares);
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

    /// <summary>Number of the first cell beyond each shell, from the middle outwards. Shells take about the same volume each.</summary>
    public int[] ShellEnds { get; }

    /// <summary>Share of the body's volume of each shell; adds up to one.</summary>
    public double[] ShellShares { get; }

    /// <summary>Outer area over volume, 1/m.</summary>
    public double SurfacePerVolume { get; }

    /// <summary>Conductance of the outermost half cell over the outer area, for a conductivity of one; 1/m.</summary>
    public double SurfaceConductance { get; }

    private static (int[] Ends, double[] Shares) ShellsOf(double[] shares)
    {
        var count = Math.Min(Shells, shares.Length);
        var (ends, volumes) = (new int[count], new double[count]);
        var (cell, volume) = (0, 0.0);
        for (var shell = 0; shell < count; shell++)
        {
            // One cell at least, and one left for each shell that follows; else to where the shell's even share of the volume ends.
            var from = volume;
            do
            {
                volume += shares[cell++];
            }
            while (cell < shares.Length - (count - 1 - shell) && (shell == count - 1 || volume + (shares[cell] / 2) < (shell + 1.0) / count));
            (ends[shell], volumes[shell]) = (cell, volume - from);
        }

        return (ends, volumes);
    }

    /// <summary>Dimensions of the three plain shapes.</summary>
    public static double Dimensions(BodyShape shape) => shape switch
    {
        BodyShape.Slab => 1,
        BodyShape.Cylinder => 2,
        BodyShape.Sphere => 3,
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "No such shape."),
    };

    // Areas and volumes in units that cancel: per m² of slab, per 2π m of cylinder, per 4π of sphere.
    private static double AreaAt(double shape, double radius) => shape switch
    {
        1 => 1,
        2 => radius,
        3 => radius * radius,
        _ => radius > 0 ? Elementary.Pow(radius, shape - 1) : 0,
    };

    private static double VolumeWithin(double shape, double radius) => shape switch
    {
        1 => radius,
        2 => radius * radius / 2,
        3 => radius * radius * radius / 3,
        _ => radius > 0 ? Elementary.Pow(radius, shape) / shape : 0,
    };
}
