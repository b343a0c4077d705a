namespace Doughwright.Engine.Baking;

/// <summary>
/// Finite volumes of a sphere of radius 1 in dimensionless time Fo = αt/R², with the elimination factors of both time schemes worked out
/// beforehand. They are the same for every lane, because only the outermost face knows the lane's oven.
/// </summary>
internal sealed class BakeGrid
{
    /// <param name="cells">Equal shells, at least 3.</param>
    /// <param name="step">Step in Fo.</param>
    public BakeGrid(int cells, double step)
    {
        (Cells, Step) = (cells, step);
        var width = 1.0 / cells;
        Conductance = new double[cells];
        Capacity = new double[cells];
        for (var cell = 0; cell < cells; cell++)
        {
            var inner = cell * width;
            var outer = (cell + 1) * width;
            Capacity[cell] = ((outer * outer * outer) - (inner * inner * inner)) / 3 / step;
            Conductance[cell] = outer * outer / width;
        }

        HalfCell = 1 / (width / 2);
        First = new Elimination(this, 1);
        Later = new Elimination(this, 1.5);
    }

    public int Cells { get; }

    public double Step { get; }

    /// <summary>Of the face outside each cell; the last one is not used, the surface takes its place.</summary>
    public double[] Conductance { get; }

    /// <summary>Volume over step.</summary>
    public double[] Capacity { get; }

    /// <summary>From the middle of the outermost cell to the surface.</summary>
    public double HalfCell { get; }

    /// <summary>Backward Euler, for the first step.</summary>
    public Elimination First { get; }

    /// <summary>Second-order backward differences, for all later steps.</summary>
    public Elimination Later { get; }

    /// <summary>Factors of the elimination from the core outwards: T[i] = Follow[i] T[i+1] + q[i], q[i] = (d[i] + G[i-1] q[i-1]) Share[i].</summary>
    internal sealed class Elimination
    {
        public Elimination(BakeGrid grid, double weight)
        {
            Follow = new double[grid.Cells];
            Share = new double[grid.Cells];
            for (var cell = 0; cell < grid.Cells; cell++)
            {
                var inner = cell == 0 ? 0 : grid.Conductance[cell - 1];
                var own = (weight * grid.Capacity[cell]) + (cell == 0 ? 0 : inner * (1 - Follow[cell - 1]));
                if (cell == grid.Cells - 1)
                {
                    LastOwn = own;
                    break;
                }

                Share[cell] = 1 / (own + grid.Conductance[cell]);
                Follow[cell] = grid.Conductance[cell] * Share[cell];
            }
        }

        public double[] Follow { get; }

        public double[] Share { get; }

        /// <summary>What multiplies the outermost temperature before the surface is added.</summary>
        public double LastOwn { get; }
    }
}
