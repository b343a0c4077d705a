using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>
/// Heat conduction in one body for many lanes at once, advanced step by step. The arrays are allocated when it starts and never after.
/// </summary>
/// <remarks>
/// ρ c ∂E/∂t = ∇·(k ∇T), with E the enthalpy over the heat capacity and T(E) piecewise linear, so that its inverse is exact. Surface:
/// h (T_air - T_s), through the wall where there is one. In time BDF2, (3 E - 4 E' + E'')/(2 Δt), begun with one backward Euler step; one
/// linearised tridiagonal solve gives the fluxes, and the enthalpies follow from the fluxes, so that no heat is lost or made. Second
/// order in space and time. Source: finite-volumes. Source: bdf2. A state far above the melting range must not be crossed in fewer than
/// about ten steps.
/// </remarks>
internal abstract class ConductionRun
{
    protected ConductionRun(ConductionGrid grid, int lanes)
    {
        Grid = grid;
        LaneCount = lanes;
    }

    public ConductionGrid Grid { get; }

    public int LaneCount { get; }

    /// <summary>Steps taken so far.</summary>
    public int Steps { get; protected set; }

    /// <summary>Starts a run at the machine's widest lanes; the digits do not depend on the width.</summary>
    public static ConductionRun Start(ConductionGrid grid, ConductionLanes lanes, Duration step) => Start(grid, lanes, step, Lanes.Widest);

    /// <exception cref="ArgumentException">The lanes are at fault.</exception>
    public static ConductionRun Start(ConductionGrid grid, ConductionLanes lanes, Duration step, int width)
    {
        if (lanes.Fault() is { } fault)
        {
            throw new ArgumentException(fault, nameof(lanes));
        }

        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step.Minutes, nameof(step));
        if (lanes.Faces is { } faces)
        {
            return lanes.MeltingHeat is null
                ? new OpenRun(grid, lanes, faces, step.Seconds)
                : throw new ArgumentException("What melts is followed in a body whose outside is the same all round.", nameof(lanes));
        }

        var starter = new Starter(grid, lanes, step.Seconds);
        Lanes.Run(ref starter, width);
        return starter.Started!;
    }

    /// <summary>
    /// Advances by one step per air temperature and records each step's volume mean, middle and surface, in °C, at [step × lanes + lane].
    /// An empty span leaves that record out.
    /// </summary>
    /// <param name="airCelsius">Air in each step, shared by all lanes.</param>
    /// <param name="shells">Mean of each shell of the grid, at [(step × shells + shell) × lanes + lane].</param>
    public void Advance(
        ReadOnlySpan<double> airCelsius, Span<double> mean, Span<double> centre = default, Span<double> surface = default, Span<double> shells = default)
    {
        var record = new ConductionRecord(mean, centre, surface, shells);
        CheckRoom(record, airCelsius.Length);
        AdvanceAll(airCelsius, 1, record);
        Steps += airCelsius.Length;
    }

    /// <summary>The same where every lane has air of its own.</summary>
    /// <param name="airCelsius">Air in each step and lane, at [step × lanes + lane].</param>
    public void AdvanceEach(ReadOnlySpan<double> airCelsius, Span<double> mean, Span<double> shells = default)
    {
        var steps = airCelsius.Length / LaneCount;
        var record = new ConductionRecord(mean, default, default, shells);
        CheckRoom(record, steps);
        AdvanceAll(airCelsius, LaneCount, record);
        Steps += steps;
    }

    /// <summary>Heat in body and wall over the body's volume, in J/m³, counted from 0 °C with all fat solid.</summary>
    public abstract double HeatContent(int lane);

    /// <summary>Heat that came in from the air since the start over the body's volume, in J/m³.</summary>
    public abstract double HeatReceived(int lane);

    /// <param name="airsPerStep">One, or as many as lanes.</param>
    protected abstract void AdvanceAll(ReadOnlySpan<double> airCelsius, int airsPerStep, in ConductionRecord record);

    private void CheckRoom(in ConductionRecord record, int steps)
    {
        if (!record.HasRoomFor(steps * LaneCount, Grid.ShellShares.Length))
        {
            throw new ArgumentException("A record needs room for every step and lane.", nameof(record));
        }
    }

    private struct Starter(ConductionGrid grid, ConductionLanes lanes, double stepSeconds) : ILaneKernel
    {
        public ConductionRun? Started { get; private set; }

        public void Run<T>() where T : struct, ILane<T> => Started = new ConductionRun<T>(grid, lanes, stepSeconds);
    }
}
