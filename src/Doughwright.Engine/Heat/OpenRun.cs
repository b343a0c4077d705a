using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>Conduction in a body that is wet and open, or that lies on a tray: lane by lane, nothing in it melts.</summary>
/// <remarks>
/// As <see cref="ConductionRun"/>, with a surface of its own on the back of a layer, and with the heat that evaporation takes from the upper
/// one: q(T_s), made straight at each step about where the last two point, so that the order in time stays the second. What the air gave, less what
/// evaporated, is in the body to rounding. Source: finite-volumes. Source: bdf2. Source: lewis-evaporation.
/// </remarks>
internal sealed class OpenRun : ConductionRun
{
    private const double Nudge = 0.01;

    private readonly ConductionLanes lanes;
    private readonly OpenFaces faces;
    private readonly double seconds;
    private readonly int rows;

    // Rows: back, cells, skin. A row without capacity holds the temperature that its flows make.
    private readonly double[] now, before, received, receivedBefore;
    private readonly double[] diagonal, above, right;

    public OpenRun(ConductionGrid grid, ConductionLanes lanes, OpenFaces faces, double stepSeconds) : base(grid, lanes.Count)
    {
        (this.lanes, this.faces, seconds, rows) = (lanes, faces, stepSeconds, grid.Cells + 2);
        (now, before) = (new double[lanes.Count * rows], new double[lanes.Count * rows]);
        (received, receivedBefore) = (new double[lanes.Count], new double[lanes.Count]);
        (diagonal, above, right) = (new double[rows], new double[rows], new double[rows]);
        for (var lane = 0; lane < lanes.Count; lane++)
        {
            now.AsSpan(lane * rows, rows).Fill(lanes.StartCelsius[lane]);
        }

        now.CopyTo(before, 0);
    }

    public override double HeatContent(int lane)
    {
        var (back, front) = Walls(lane);
        var sum = Grid.SurfacePerVolume * ((back * now[lane * rows]) + (front * now[(lane * rows) + rows - 1]));
        for (var cell = 0; cell < Grid.Cells; cell++)
        {
            sum += lanes.HeatCapacity[lane] * Grid.Shares[cell] * now[(lane * rows) + 1 + cell];
        }

        return sum;
    }

    public override double HeatReceived(int lane) => received[lane];

    protected override void AdvanceAll(ReadOnlySpan<double> airCelsius, int airsPerStep, in ConductionRecord record)
    {
        for (var lane = 0; lane < LaneCount; lane++)
        {
            for (var step = 0; step < airCelsius.Length / airsPerStep; step++)
            {
                Step(lane, airCelsius[(step * airsPerStep) + (airsPerStep == 1 ? 0 : lane)], isFirst: Steps + step == 0);
                Write(record, lane, (step * LaneCount) + lane, step);
            }
        }
    }

    private void Step(int lane, double air, bool isFirst)
    {
        var (rate, newer, older) = isFirst ? (1 / seconds, 1 / seconds, 0.0) : (1.5 / seconds, 2 / seconds, -0.5 / seconds);
        Span<double> one = now.AsSpan(lane * rows, rows), two = before.AsSpan(lane * rows, rows);
        var (conducts, holds, gives) = (lanes.Conductivity[lane], lanes.HeatCapacity[lane], lanes.Coefficient[lane]);
        var (back, front) = Walls(lane);
        var skin = rows - 1;
        var guess = isFirst ? one[skin] : Ahead(one[skin], two[skin]);
        var (loses, slope) = Evaporates(gives, guess, air);

        // Each row: diagonal x - below x(-1) - above x(+1) = right, eliminated from the back on.
        var contact = conducts * Grid.SurfaceConductance;
        var behind = faces.HasBack ? contact : 0;
        diagonal[0] = faces.HasBack ? (back * rate) + gives + behind : 1;
        (above[0], right[0]) = (behind, faces.HasBack ? (back * ((newer * one[0]) + (older * two[0]))) + (gives * air) : one[0]);
        for (var cell = 0; cell < Grid.Cells; cell++)
        {
            var below = cell == 0 ? behind * Grid.SurfacePerVolume / Grid.Shares[0] : conducts * Grid.Inner[cell];
            var next = conducts * Grid.Outer[cell];
            Eliminate(cell + 1, (holds * rate) + below + next, below, next, holds * ((newer * one[cell + 1]) + (older * two[cell + 1])));
        }

        Eliminate(skin, (front * rate) + gives + slope + contact, contact, 0, (front * ((newer * one[skin]) + (older * two[skin]))) + (gives * air) - loses + (slope * guess));
        one.CopyTo(two);
        one[skin] = right[skin] / diagonal[skin];
        for (var row = skin - 1; row >= 0; row--)
        {
            one[row] = (right[row] + (above[row] * one[row + 1])) / diagonal[row];
        }

        var taken = (gives * (air - one[skin])) - loses - (slope * (one[skin] - guess)) + (faces.HasBack ? gives * (air - one[0]) : 0);
        (received[lane], receivedBefore[lane]) = (((Grid.SurfacePerVolume * taken) + (newer * received[lane]) + (older * receivedBefore[lane])) / rate, received[lane]);
    }

    /// <summary>
    /// Where the skin is about to be, for the slope of its evaporation. A skin that fell far in one step does not go on falling: beyond ice as cold as its
    /// law knows, or above water that boils, the last value is the better guess.
    /// </summary>
    private static double Ahead(double last, double before)
    {
        var ahead = (2 * last) - before;
        return ahead is > -95 and < 120 ? ahead : last;
    }

    private void Eliminate(int row, double own, double below, double next, double known)
    {
        var share = below / diagonal[row - 1];
        (diagonal[row], above[row], right[row]) = (own - (share * above[row - 1]), next, known + (share * right[row - 1]));
    }

    /// <summary>W/m² at a surface, and how that grows with its temperature.</summary>
    private (double Loses, double Slope) Evaporates(double coefficient, double celsius, double air)
    {
        double At(double surface) => faces.Wet * Evaporation.HeatFlux(
            faces.Convective * coefficient, Temperature.FromCelsius(surface), Temperature.FromCelsius(air), faces.Humidity, waterActivity: 1);
        return faces.Wet > 0 ? (At(celsius), (At(celsius + Nudge) - At(celsius - Nudge)) / (2 * Nudge)) : (0, 0);
    }

    /// <summary>Vessel on the back and on the front, J/(m² K): all of it below a layer, spread over the outside of anything else.</summary>
    private (double Back, double Front) Walls(int lane)
    {
        var wall = lanes.WallCapacity?[lane] ?? 0;
        return faces.HasBack ? (2 * wall, 0) : (0, wall);
    }

    private void Write(in ConductionRecord record, int lane, int at, int step)
    {
        var cells = now.AsSpan((lane * rows) + 1, Grid.Cells);
        var (mean, cell) = (0.0, 0);
        for (var shell = 0; shell < Grid.ShellShares.Length; shell++)
        {
            var sum = 0.0;
            for (; cell < Grid.ShellEnds[shell]; cell++)
            {
                sum += Grid.Shares[cell] * cells[cell];
            }

            mean += sum;
            if (!record.Shells.IsEmpty)
            {
                record.Shells[(((step * Grid.ShellShares.Length) + shell) * LaneCount) + lane] = sum / Grid.ShellShares[shell];
            }
        }

        if (!record.Mean.IsEmpty)
        {
            record.Mean[at] = mean;
        }

        if (!record.Centre.IsEmpty)
        {
            var middle = cells.Length / 2;
            record.Centre[at] = faces.HasBack ? (cells[middle] + cells[(cells.Length - 1) / 2]) / 2 : cells[0] + ((cells[0] - cells[1]) * 0.125);
        }

        if (!record.Surface.IsEmpty)
        {
            record.Surface[at] = now[(lane * rows) + rows - 1];
        }
    }
}
