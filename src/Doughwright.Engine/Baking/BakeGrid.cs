namespace Doughwright.Engine.Baking;

/// <summary>
/// Finite volumes of a sphere of radius 1 in dimensionless time Fo = αt/R², with the elimination factors of every time step worked out
/// beforehand. They are the same for every lane, because only the outermost face knows the lane's oven.
/// </summary>
/// <remarks>
/// The heat needs shorter steps on its way to the core than later on. So the first steps, the opening, are cut into parts.
/// </remarks>
internal sealed class BakeGrid
{
    /// <param name="cells">Equal shells, at least 3.</param>
    /// <param name="step">Step in Fo.</param>
    /// <param name="opening">How many steps are cut into parts.</param>
    /// <param name="parts">Into how many.</param>
    public BakeGrid(int cells, double step, int opening = 1, int parts = 1)
    {
        (Cells, Step, Opening, Parts) = (cells, step, opening, parts);
        var width = 1.0 / cells;
        Volume = new double[cells];
        Conductance = new double[cells];
        for (var cell = 0; cell < cells; cell++)
        {
            var inner = cell * width;
            var outer = (cell + 1) * width;
            Volume[cell] = ((outer * outer * outer) - (inner * inner * inner)) / 3;
            Conductance[cell] = outer * outer / width;
        }

        // The half shell under the surface as it conducts in steady flow.
        HalfCell = (1 - (width / 2)) / (width / 2);
        Start = new(this, 1, step / parts);
        Part = new(this, 1.5, step / parts);
        Whole = new(this, 1.5, step);
    }

    public int Cells { get; }

    public double Step { get; }

    public int Opening { get; }

    public int Parts { get; }

    public double[] Volume { get; }

    /// <summary>Of the face outside each cell; the last one is not used, the surface takes its place.</summary>
    public double[] Conductance { get; }

    /// <summary>From the middle of the outermost cell to the surface.</summary>
    public double HalfCell { get; }

    /// <summary>Backward Euler, for the very first part.</summary>
    public BakeElimination Start { get; }

    /// <summary>Second-order backward differences, for the other parts of the opening.</summary>
    public BakeElimination Part { get; }

    /// <summary>The same for a whole step.</summary>
    public BakeElimination Whole { get; }
}
