using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>What a bake was like in every lane, at [step x lanes + lane] for the steps of its clock, the moment of going in first.</summary>
internal sealed class BakeTrace
{
    private readonly int[] lost;

    /// <param name="coreOnly">Whether nothing but the core is wanted.</param>
    public BakeTrace(BakeClock clock, int lanes, bool coreOnly = false)
    {
        (Clock, Lanes) = (clock, lanes);
        double[] Column()
        {
            var values = new double[(clock.Count + 1) * lanes];
            Array.Fill(values, double.NaN);
            return values;
        }

        (Core, lost, CoreOnly) = (Column(), new int[lanes], coreOnly);
        Array.Fill(lost, int.MaxValue);
        (Surface, Mean, Loss, Browning) = coreOnly ? ([], [], [], []) : (Column(), Column(), Column(), Column());
    }

    public BakeClock Clock { get; }

    public int Lanes { get; }

    public bool CoreOnly { get; }

    /// <summary>°C.</summary>
    public double[] Core { get; }

    /// <summary>°C.</summary>
    public double[] Surface { get; }

    /// <summary>°C over the volume.</summary>
    public double[] Mean { get; }

    /// <summary>Share of the dough's mass.</summary>
    public double[] Loss { get; }

    /// <summary>∫k dt.</summary>
    public double[] Browning { get; }

    /// <summary>Whether a lane did not come to rest in some step. From that step on its columns are not numbers.</summary>
    public bool IsLost(int lane) => lost[lane] < int.MaxValue;

    /// <param name="step">In which it did not come to rest.</param>
    public void Lose(int lane, int step) => lost[lane] = Math.Min(lost[lane], step);

    /// <summary>Leaves nothing in the columns of what was run on of lanes that are lost.</summary>
    public void Forget(int first, int count)
    {
        for (var lane = first; lane < first + count; lane++)
        {
            for (var step = lost[lane]; step <= Clock.Count; step++)
            {
                foreach (var column in (double[][])[Core, Surface, Mean, Loss, Browning])
                {
                    if (column.Length > 0)
                    {
                        column[(step * Lanes) + lane] = double.NaN;
                    }
                }
            }
        }
    }

    /// <summary>Writes down where a pack stands after a step.</summary>
    /// <param name="lane">The first of the pack.</param>
    public void Note<T>(RadialRun<T> run, int step, int lane) where T : struct, ILane<T>
    {
        var at = (step * Lanes) + lane;
        run.Core.Store(Core, at);
        if (CoreOnly)
        {
            return;
        }

        run.Surface.Store(Surface, at);
        run.Mean.Store(Mean, at);
        run.Loss.Store(Loss, at);
        run.Browning.Store(Browning, at);
    }

    /// <summary>A column at a moment, drawn straight between two steps. Not a number before the start and beyond what was run.</summary>
    public double At(double[] column, int lane, double seconds)
    {
        var step = Array.BinarySearch(Clock.Seconds, seconds);
        if (step >= 0)
        {
            return column[(step * Lanes) + lane];
        }

        var (after, before) = (~step, ~step - 1);
        if (before < 0 || after > Clock.Count)
        {
            return double.NaN;
        }

        var share = (seconds - Clock.Seconds[before]) / Clock.Length(after);
        var (low, high) = (column[(before * Lanes) + lane], column[(after * Lanes) + lane]);
        return low + (share * (high - low));
    }

    /// <summary>The first moment at which a column passes a value, in s; infinite when it has not while it was run.</summary>
    /// <param name="last">The last step to look at.</param>
    public double When(double[] column, int lane, double passes, int last = int.MaxValue)
    {
        for (var step = 1; step <= Math.Min(last, Clock.Count); step++)
        {
            var (before, now) = (column[((step - 1) * Lanes) + lane], column[(step * Lanes) + lane]);
            if (now >= passes)
            {
                return before >= passes ? Clock.Seconds[step - 1] : Clock.Seconds[step - 1] + (Clock.Length(step) * (passes - before) / (now - before));
            }
        }

        return double.PositiveInfinity;
    }

    /// <summary>The first moment from one on at which a column is no higher than a value, in s; infinite when it is not while it was run.</summary>
    public double Falls(double[] column, int lane, double to, double from = 0)
    {
        if (At(column, lane, from) <= to)
        {
            return from;
        }

        for (var step = 1; step <= Clock.Count; step++)
        {
            var now = column[(step * Lanes) + lane];
            if (Clock.Seconds[step] > from && now <= to)
            {
                var start = Math.Max(from, Clock.Seconds[step - 1]);
                var before = At(column, lane, start);
                return start + ((Clock.Seconds[step] - start) * (before - to) / (before - now));
            }
        }

        return double.PositiveInfinity;
    }
}
