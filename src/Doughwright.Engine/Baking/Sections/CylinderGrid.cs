namespace Doughwright.Engine.Baking.Sections;

/// <summary>
/// Finite volumes of a cylinder: rings about the axis, in layers from the bottom up. They are fine under the faces, where the crust forms,
/// and grow inwards by a constant ratio.
/// </summary>
internal sealed class CylinderGrid
{
    /// <param name="radius">m.</param>
    /// <param name="height">m.</param>
    /// <param name="rings">At least 3.</param>
    /// <param name="layers">Even, at least 4.</param>
    /// <param name="outermost">Width of the cell under each face, in m; less than an equal share.</param>
    public CylinderGrid(double radius, double height, int rings, int layers, double outermost)
    {
        (Rings, Layers, Radius, Height) = (rings, layers, radius, height);
        Widths = Growing(rings, radius, outermost);
        var half = Growing(layers / 2, height / 2, outermost);
        Heights = [.. half.Reverse(), .. half];
        Edges = Sums(Widths);
        Levels = Sums(Heights);
        Area = new double[rings];
        for (var ring = 0; ring < rings; ring++)
        {
            Area[ring] = Math.PI * ((Edges[ring + 1] * Edges[ring + 1]) - (Edges[ring] * Edges[ring]));
        }
    }

    public int Rings { get; }

    public int Layers { get; }

    public double Radius { get; }

    public double Height { get; }

    public int Cells => Rings * Layers;

    public double CubicMetres => Math.PI * Radius * Radius * Height;

    /// <summary>Of each ring, from the axis outwards, in m.</summary>
    public double[] Widths { get; }

    /// <summary>Of each layer, from the bottom up, in m.</summary>
    public double[] Heights { get; }

    /// <summary>Radii between rings, from 0 to the outer face.</summary>
    public double[] Edges { get; }

    /// <summary>Heights between layers, from 0 to the top.</summary>
    public double[] Levels { get; }

    /// <summary>Of each ring seen from above, in m².</summary>
    public double[] Area { get; }

    public int At(int ring, int layer) => (layer * Rings) + ring;

    public double VolumeOf(int cell) => Area[cell % Rings] * Heights[cell / Rings];

    /// <summary>
    /// What a field is on the axis at a height: along each layer a parabola in r through the means of the two innermost rings, level at the
    /// axis; then a parabola through three layers.
    /// </summary>
    public double OnAxis(ReadOnlySpan<double> field, double height)
    {
        var middle = 1;
        while (middle < Layers - 2 && Levels[middle + 1] < height)
        {
            middle++;
        }

        var value = 0.0;
        for (var layer = middle - 1; layer <= middle + 1; layer++)
        {
            var weight = 1.0;
            for (var other = middle - 1; other <= middle + 1; other++)
            {
                weight *= other == layer ? 1 : (height - MiddleOf(other)) / (MiddleOf(layer) - MiddleOf(other));
            }

            value += weight * InLayer(field, layer);
        }

        return value;
    }

    private double MiddleOf(int layer) => (Levels[layer] + Levels[layer + 1]) / 2;

    private double InLayer(ReadOnlySpan<double> field, int layer)
    {
        var (first, second) = (field[At(0, layer)], field[At(1, layer)]);
        // The mean of r² over a ring is the mean of the squares of its edges.
        var (inner, outer) = (Edges[1] * Edges[1] / 2, ((Edges[1] * Edges[1]) + (Edges[2] * Edges[2])) / 2);
        return first - ((second - first) * inner / (outer - inner));
    }

    /// <summary>Widths that grow from the last one inwards by one ratio and fill the length.</summary>
    private static double[] Growing(int count, double length, double last)
    {
        var (low, high) = (1.0, 8.0);
        for (var halving = 0; halving < 60; halving++)
        {
            var ratio = (low + high) / 2;
            var (sum, width) = (0.0, last);
            for (var cell = 0; cell < count; cell++)
            {
                (sum, width) = (sum + width, width * ratio);
            }

            (low, high) = sum < length ? (ratio, high) : (low, ratio);
        }

        var widths = new double[count];
        var next = last;
        for (var cell = count - 1; cell >= 0; cell--)
        {
            (widths[cell], next) = (next, next * low);
        }

        var stretch = length / widths.Sum();
        return [.. widths.Select(width => width * stretch)];
    }

    private static double[] Sums(double[] widths)
    {
        var sums = new double[widths.Length + 1];
        for (var cell = 0; cell < widths.Length; cell++)
        {
            sums[cell + 1] = sums[cell] + widths[cell];
        }

        return sums;
    }
}
