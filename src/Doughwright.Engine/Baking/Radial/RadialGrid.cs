using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>Shells of a ball of radius 1, narrow under the surface and wider towards the core. Nothing in it depends on a lane.</summary>
internal sealed class RadialGrid
{
    /// <param name="dimensions">n of the form.</param>
    /// <param name="cells">Shells, at least 3.</param>
    /// <param name="outermost">Width of the shell under the surface; the others grow by one factor. At 1/cells all are alike.</param>
    public RadialGrid(double dimensions, int cells, double outermost)
    {
        (Dimensions, Cells) = (dimensions, cells);
        var edge = Edges(cells, outermost);
        Share = new double[cells];
        Conductance = new double[cells];
        Outer = new double[cells];
        Depth = new double[cells];
        Width = new double[cells];
        for (var cell = 0; cell < cells; cell++)
        {
            Share[cell] = Power(edge[cell + 1], dimensions) - Power(edge[cell], dimensions);
            Width[cell] = edge[cell + 1] - edge[cell];
            Outer[cell] = (1 - Power(edge[cell + 1], dimensions)) / dimensions;
            Depth[cell] = Share[cell] / dimensions;
        }

        for (var cell = 0; cell < cells - 1; cell++)
        {
            Conductance[cell] = dimensions * Power(edge[cell + 1], dimensions - 1) * 2 / (Width[cell] + Width[cell + 1]);
        }

        // A parabola through the means of the two innermost shells, level in the middle: the mean of r² over a ball is n/(n + 2) of its r².
        var inner = MeanSquare(edge[0], edge[1]);
        CoreWeight = inner / (MeanSquare(edge[1], edge[2]) - inner);
    }

    public double Dimensions { get; }

    public int Cells { get; }

    /// <summary>Of the volume; adds up to 1.</summary>
    public double[] Share { get; }

    /// <summary>Area over distance of the face outside each shell, over the volume; the last one is not used.</summary>
    public double[] Conductance { get; }

    public double[] Width { get; }

    /// <summary>Volume between each shell and the surface, over the surface.</summary>
    public double[] Outer { get; }

    /// <summary>Volume of each shell, over the surface.</summary>
    public double[] Depth { get; }

    /// <summary>How far the core lies beyond the innermost shell: T_core = T0 - weight (T1 - T0).</summary>
    public double CoreWeight { get; }

    private double MeanSquare(double inner, double outer) =>
        Dimensions / (Dimensions + 2) * (Power(outer, Dimensions + 2) - Power(inner, Dimensions + 2)) / (Power(outer, Dimensions) - Power(inner, Dimensions));

    private static double[] Edges(int cells, double outermost)
    {
        var growth = outermost * cells < 1 - 1e-12 ? Growth(cells, outermost) : 1;
        var edge = new double[cells + 1];
        edge[cells] = 1;
        var width = growth > 1 ? outermost : 1.0 / cells;
        for (var cell = cells - 1; cell > 0; cell--)
        {
            edge[cell] = edge[cell + 1] - width;
            width *= growth;
        }

        return edge;
    }

    /// <summary>The factor with which so many widths fill the radius.</summary>
    private static double Growth(int cells, double outermost)
    {
        var (low, high) = (1.0, 4.0);
        while (high - low > 1e-14 * high)
        {
            var middle = (low + high) / 2;
            var (sum, width) = (0.0, outermost);
            for (var cell = 0; cell < cells; cell++)
            {
                sum += width;
                width *= middle;
            }

            (low, high) = sum > 1 ? (low, middle) : (middle, high);
        }

        return (low + high) / 2;
    }

    private static double Power(double value, double exponent) => value > 0 ? Elementary.Pow(value, exponent) : 0;
}
