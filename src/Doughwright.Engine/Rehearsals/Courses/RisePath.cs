using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>
/// A dough that rises past the end of its step, with everything written down: the same steps of heat and rise as in the rehearsal, in every
/// lane. Between two steps growth runs straight, but for the drop at a fold, as it does there.
/// </summary>
internal sealed class RisePath
{
    private const int StepsAtATime = 8;

    private readonly RisePhase phase;
    private readonly RiseState state;
    private readonly RiseFolds folds;
    private readonly ConductionRun body;
    private readonly List<double> celsius = [];
    private readonly List<double> growth = [];

    public RisePath(RisePhase phase, PerLane scale, RiseFolds folds)
    {
        this.phase = phase;
        this.folds = folds.Again();
        Lanes = phase.Input.Lanes;
        StepMinutes = phase.StepLength.Minutes;
        state = phase.Begin(scale);
        body = Bodies.Drift(phase.Input, phase.Body, phase.Start, phase.StepLength);
        celsius.AddRange(phase.Start.Values);
        growth.AddRange(state.Growth);
        Highest = [.. state.Growth];
        var never = new double[Lanes];
        Array.Fill(never, double.PositiveInfinity);
        state.Begin(RiseStage.ToGrowth(never, this.folds));
    }

    public int Lanes { get; }

    public double StepMinutes { get; }

    public int Steps { get; private set; }

    public double Minutes => Steps * StepMinutes;

    /// <summary>The highest growth of each lane so far.</summary>
    public double[] Highest { get; }

    public double GrowthAt(int step, int lane) => growth[(step * Lanes) + lane];

    public void GoOn()
    {
        var (mean, grown) = (new double[StepsAtATime * Lanes], new double[StepsAtATime * Lanes]);
        body.Advance(Rising.AirOver(phase.Input, phase.StepLength * Steps, phase.StepLength, StepsAtATime), mean);
        state.Advance(mean, phase.StepLength, grown);
        celsius.AddRange(mean);
        growth.AddRange(grown);
        Steps += StepsAtATime;
        for (var index = 0; index < grown.Length; index++)
        {
            Highest[index % Lanes] = Math.Max(Highest[index % Lanes], grown[index]);
        }
    }

    /// <summary>The likely lane from its start to a time that has been run.</summary>
    public List<WayPoint> Likely(double untilMinutes)
    {
        var way = new List<WayPoint> { new(0, celsius[0], growth[0]) };
        for (var step = 0; step < Steps && way[^1].Minutes < untilMinutes; step++)
        {
            foreach (var piece in Pieces(step, 0))
            {
                if (piece.From > way[^1].Minutes || piece.GrowthFrom != way[^1].Growth)
                {
                    way.Add(new(piece.From, CelsiusAt(piece.From), piece.GrowthFrom));
                }

                if (piece.To >= untilMinutes)
                {
                    way.Add(new(untilMinutes, CelsiusAt(untilMinutes), piece.At(untilMinutes)));
                    break;
                }

                way.Add(new(piece.To, CelsiusAt(piece.To), piece.GrowthTo));
            }
        }

        return way;
    }

    /// <summary>When a lane first reaches each of some rising levels; +infinity for what it has not reached.</summary>
    public void Reach(int lane, ReadOnlySpan<double> levels, Span<double> minutes)
    {
        minutes.Fill(double.PositiveInfinity);
        var level = 0;
        for (; level < levels.Length && levels[level] <= growth[lane]; level++)
        {
            minutes[level] = 0;
        }

        for (var step = 0; step < Steps && level < levels.Length; step++)
        {
            if (Math.Max(GrowthAt(step + 1, lane), FoldedAt(step, lane)) < levels[level])
            {
                continue;
            }

            foreach (var piece in Pieces(step, lane))
            {
                for (; level < levels.Length && levels[level] <= piece.GrowthTo; level++)
                {
                    minutes[level] = piece.When(levels[level]);
                }
            }
        }
    }

    private double CelsiusAt(double minutes)
    {
        var step = Math.Min(Steps - 1, (int)(minutes / StepMinutes));
        var (from, to) = (celsius[step * Lanes], celsius[(step + 1) * Lanes]);
        return from + (((minutes / StepMinutes) - step) * (to - from));
    }

    /// <summary>The highest growth at which a lane is folded in a step; nothing where it is not.</summary>
    private double FoldedAt(int step, int lane)
    {
        var highest = double.NegativeInfinity;
        for (var fold = 0; fold < folds.Count; fold++)
        {
            var entry = (fold * Lanes) + lane;
            if (Falls(folds.Minutes[entry], step))
            {
                highest = Math.Max(highest, folds.Growth[entry]);
            }
        }

        return highest;
    }

    private bool Falls(double minutes, int step) =>
        minutes > (step == 0 ? -1 : step * StepMinutes) && minutes <= (step + 1) * StepMinutes;

    /// <summary>A step of a lane, cut at its folds. All pieces of a step rise equally fast.</summary>
    private IEnumerable<RisePiece> Pieces(int step, int lane)
    {
        var (at, grown) = (step * StepMinutes, GrowthAt(step, lane));
        var (end, last) = ((step + 1) * StepMinutes, GrowthAt(step + 1, lane));
        double? perMinute = null;
        for (var fold = 0; fold < folds.Count; fold++)
        {
            var (minutes, met) = (folds.Minutes[(fold * Lanes) + lane], folds.Growth[(fold * Lanes) + lane]);
            if (!Falls(minutes, step))
            {
                continue;
            }

            if (minutes - at > 1e-6 * StepMinutes)
            {
                perMinute ??= (met - grown) / (minutes - at);
                yield return new(at, met - (perMinute.Value * (minutes - at)), minutes, met);
            }

            // A fold at the very beginning of a step shows no slope of it: the step before lends its own.
            perMinute ??= step > 0 ? (grown - GrowthAt(step - 1, lane)) / StepMinutes : (last - grown) / StepMinutes;
            (at, grown) = (minutes, double.NaN);
        }

        yield return new(at, double.IsNaN(grown) ? last - (perMinute!.Value * (end - at)) : grown, end, last);
    }
}
