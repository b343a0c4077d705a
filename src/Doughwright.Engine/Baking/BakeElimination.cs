namespace Doughwright.Engine.Baking;

/// <summary>Factors of the elimination from the core outwards: T[i] = Follow[i] T[i+1] + q[i], q[i] = (d[i] + G[i-1] q[i-1]) Share[i].</summary>
internal sealed class BakeElimination
{
    /// <param name="weight">What the scheme multiplies the new temperature by: 1 for backward Euler, 3/2 for backward differences.</param>
    public BakeElimination(BakeGrid grid, double weight, double step)
    {
        Capacity = Array.ConvertAll(grid.Volume, volume => volume / step);
        Follow = new double[grid.Cells];
        Share = new double[grid.Cells];
        var last = grid.Cells - 1;
        var carried = 0.0;
        for (var cell = 0; cell < last; cell++)
        {
            var own = (weight * Capacity[cell]) + carried;
            Share[cell] = 1 / (own + grid.Conductance[cell]);
            Follow[cell] = grid.Conductance[cell] * Share[cell];
            carried = grid.Conductance[cell] * (1 - Follow[cell]);
        }

        LastOwn = (weight * Capacity[last]) + carried;
    }

    /// <summary>Volume over step.</summary>
    public double[] Capacity { get; }

    public double[] Follow { get; }

    public double[] Share { get; }

    /// <summary>What multiplies the outermost temperature before the surface is added.</summary>
    public double LastOwn { get; }
}
