using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Heat;

/// <summary>
/// The run itself, at one lane width. Rows of a pack: its cells from the middle outwards, then the surface with its wall.
/// </summary>
internal sealed class ConductionRun<T> : ConductionRun where T : struct, ILane<T>
{
    private readonly ConductionPack<T>[] packs;
    private readonly bool melts;
    private readonly int rows;

    // Enthalpies in kelvins at the last two times; a row of the surface holds its temperature.
    private readonly T[] now;
    private readonly T[] before;
    private readonly T[] received;
    private readonly T[] receivedBefore;

    // The elimination: from the middle outwards, value = solved + carry × value of the next row.
    private readonly T[] inverse;
    private readonly T[] carry;
    private readonly T[] pull;
    private readonly T[] solved;

    // What the linearisation at the guessed state adds to the right-hand side; nought when nothing melts.
    private readonly T[] bend;
    private readonly double[] scratch = new double[T.Width];

    public ConductionRun(ConductionGrid grid, ConductionLanes lanes, double stepSeconds) : base(grid, lanes.Count)
    {
        packs = new ConductionPack<T>[(lanes.Count + T.Width - 1) / T.Width];
        melts = lanes.MeltingHeat is not null && lanes.MeltingHeat.Any(heat => heat > 0);
        rows = grid.Cells + 1;
        now = new T[packs.Length * rows];
        before = new T[now.Length];
        inverse = new T[now.Length];
        carry = new T[now.Length];
        pull = new T[now.Length];
        solved = new T[rows];
        bend = new T[rows];
        received = new T[packs.Length];
        receivedBefore = new T[packs.Length];
        for (var index = 0; index < packs.Length; index++)
        {
            var pack = new ConductionPack<T>(lanes, index * T.Width, stepSeconds);
            packs[index] = pack;
            var state = now.AsSpan(index * rows, rows);
            state[..grid.Cells].Fill(pack.Enthalpy(pack.Start));
            state[grid.Cells] = pack.WallStart;
            state.CopyTo(before.AsSpan(index * rows, rows));
        }
    }

    public override double HeatContent(int lane)
    {
        var (index, offset) = Math.DivRem(lane, T.Width);
        var pack = packs[index];
        var sum = pack.Wall * T.Of(Grid.SurfacePerVolume) * now[(index * rows) + Grid.Cells];
        for (var cell = 0; cell < Grid.Cells; cell++)
        {
            sum += T.Of(Grid.Shares[cell]) * now[(index * rows) + cell];
        }

        return Lane(sum * pack.HeatCapacity, offset);
    }

    public override double HeatReceived(int lane)
    {
        var (index, offset) = Math.DivRem(lane, T.Width);
        return Lane(received[index] * packs[index].HeatCapacity, offset);
    }

    protected override void AdvanceAll(ReadOnlySpan<double> airCelsius, int airsPerStep, in ConductionRecord record)
    {
        for (var index = 0; index < packs.Length; index++)
        {
            AdvancePack(index, airCelsius, airsPerStep, record);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void AdvancePack(int index, ReadOnlySpan<double> airs, int airsPerStep, in ConductionRecord kept)
    {
        for (var step = 0; step < airs.Length / airsPerStep; step++)
        {
            var air = airsPerStep == 1 ? T.Of(airs[step]) : EachOf(airs.Slice(step * airsPerStep, airsPerStep), index);
            // One backward Euler step begins, because BDF2 needs two states behind it.
            var first = Steps + step == 0;
            if (melts || Steps + step <= 1)
            {
                Eliminate(index, T.Of(first ? 1.0 : 2.0 / 3.0), first);
            }

            var record = new Record();
            if (first)
            {
                Step(index, T.Of(1), T.Of(1), T.Of(0), air, ref record);
            }
            else
            {
                Step(index, T.Of(2.0 / 3.0), T.Of(4.0 / 3.0), T.Of(-1.0 / 3.0), air, ref record);
            }

            var at = (step * LaneCount) + (index * T.Width);
            Write(record.Mean, kept.Mean, at, index);
            Write(record.Centre, kept.Centre, at, index);
            Write(record.Surface, kept.Surface, at, index);
            if (!kept.Shells.IsEmpty)
            {
                WriteShells(index, kept.Shells, step);
            }
        }
    }

    private void WriteShells(int index, Span<double> shells, int step)
    {
        var pack = packs[index];
        ReadOnlySpan<double> shares = Grid.Shares, shellShares = Grid.ShellShares;
        var cell = 0;
        for (var shell = 0; shell < shellShares.Length; shell++)
        {
            var sum = T.Of(0);
            for (; cell < Grid.ShellEnds[shell]; cell++)
            {
                var enthalpy = now[(index * rows) + cell];
                sum += T.Of(shares[cell] / shellShares[shell]) * (melts ? pack.Celsius(enthalpy) : enthalpy);
            }

            Write(sum, shells, (((step * shellShares.Length) + shell) * LaneCount) + (index * T.Width), index);
        }
    }

    /// <summary>
    /// Eliminates from the middle outwards: everything that does not depend on the state behind. Once, when nothing melts.
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private void Eliminate(int index, T implicitShare, bool first)
    {
        var pack = packs[index];
        var from = index * rows;
        var cells = rows - 1;
        ReadOnlySpan<double> inner = Grid.Inner, outer = Grid.Outer;
        var diffusion = implicitShare * pack.Diffusion;
        var carried = T.Of(0);
        for (var cell = 0; cell < cells; cell++)
        {
            var slope = T.Of(1);
            if (melts)
            {
                var guess = first ? now[from + cell] : now[from + cell] + (now[from + cell] - before[from + cell]);
                slope = pack.SlopeAt(guess);
                bend[cell] = (slope * pack.Celsius(guess)) - guess;
            }

            var inwards = diffusion * T.Of(inner[cell]);
            var outwards = diffusion * T.Of(outer[cell]);
            var one = T.Of(1) / (slope + outwards + (inwards - (inwards * carried)));
            carried = outwards * one;
            inverse[from + cell] = one;
            carry[from + cell] = carried;
            pull[from + cell] = inwards * one;
        }

        var contact = diffusion * T.Of(Grid.SurfaceConductance);
        var exchange = implicitShare * pack.Exchange;
        inverse[from + cells] = T.Of(1) / (pack.Wall + exchange + (contact - (contact * carried)));
    }

    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    private void Step(int index, T implicitShare, T ofNow, T ofBefore, T air, ref Record record)
    {
        var pack = packs[index];
        var from = index * rows;
        var cells = rows - 1;
        Span<T> one = now.AsSpan(from, rows), two = before.AsSpan(from, rows), solution = solved, bends = bend;
        ReadOnlySpan<T> inverses = inverse.AsSpan(from, rows), carries = carry.AsSpan(from, rows), pulls = pull.AsSpan(from, rows);
        ReadOnlySpan<double> inner = Grid.Inner, outer = Grid.Outer, shares = Grid.Shares;

        // Outwards. The history takes the place of the older state, which is not needed again.
        var previous = T.Of(0);
        for (var cell = 0; cell < cells; cell++)
        {
            var history = (ofNow * one[cell]) + (ofBefore * two[cell]);
            two[cell] = one[cell];
            one[cell] = history;
            var right = melts ? history + bends[cell] : history;
            previous = (right * inverses[cell]) + (pulls[cell] * previous);
            solution[cell] = previous;
        }

        var diffusion = implicitShare * pack.Diffusion;
        var exchange = implicitShare * pack.Exchange;
        var contact = diffusion * T.Of(Grid.SurfaceConductance);
        var wall = (ofNow * one[cells]) + (ofBefore * two[cells]);
        two[cells] = one[cells];
        var skin = ((pack.Wall * wall) + (exchange * air) + (contact * previous)) * inverses[cells];
        one[cells] = skin;
        var receipt = (ofNow * received[index]) + (ofBefore * receivedBefore[index]);
        receivedBefore[index] = received[index];
        received[index] = receipt + (exchange * (air - skin) * T.Of(Grid.SurfacePerVolume));

        // Inwards: temperatures from the elimination, enthalpies from the fluxes between them.
        var beyond = skin;
        var half = T.Of(0);
        var mean = T.Of(0);
        for (var cell = cells - 1; cell >= 0; cell--)
        {
            var celsius = solution[cell] + (carries[cell] * beyond);
            var drop = beyond - celsius;
            if (cell < cells - 1)
            {
                var enthalpy = half - (diffusion * T.Of(inner[cell + 1]) * drop);
                one[cell + 1] = enthalpy;
                mean += T.Of(shares[cell + 1]) * (melts ? pack.Celsius(enthalpy) : enthalpy);
            }

            half = one[cell] + (diffusion * T.Of(outer[cell]) * drop);
            beyond = celsius;
        }

        one[0] = half;
        var middle = melts ? pack.Celsius(half) : half;
        var next = melts ? pack.Celsius(one[1]) : one[1];
        record.Mean = mean + (T.Of(shares[0]) * middle);
        // A parabola through the two innermost cells, level in the middle.
        record.Centre = middle + ((middle - next) * T.Of(0.125));
        record.Surface = skin;
    }

    private void Write(T values, Span<double> record, int at, int index)
    {
        if (record.IsEmpty)
        {
            return;
        }

        var lanes = Math.Min(T.Width, LaneCount - (index * T.Width));
        if (lanes == T.Width)
        {
            values.Store(record, at);
            return;
        }

        values.Store(scratch, 0);
        scratch.AsSpan(0, lanes).CopyTo(record[at..]);
    }

    /// <summary>The air of one pack; lanes past the last one repeat it, as in the pack itself.</summary>
    private T EachOf(ReadOnlySpan<double> airs, int index)
    {
        for (var lane = 0; lane < T.Width; lane++)
        {
            scratch[lane] = airs[Math.Min((index * T.Width) + lane, airs.Length - 1)];
        }

        return T.Load(scratch, 0);
    }

    private double Lane(T values, int offset)
    {
        values.Store(scratch, 0);
        return scratch[offset];
    }

    private ref struct Record
    {
        public T Mean;
        public T Centre;
        public T Surface;
    }
}
