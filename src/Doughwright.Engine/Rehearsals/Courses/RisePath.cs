using Doughwright.Engine.Fermentation;
using Doughwright.Engine.Heat;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals.Steps;

namespace Doughwright.Engine.Rehearsals.Courses;

/// <summary>
/// A dough that rises past the end of its step, with everything written down: the same steps of heat and rise as in the rehearsal, in every
/// lane. Between two steps growth runs straight, but for the drop at a fold, as it does there.
/// </summary>
internal sealed class RisePath
{
    private const int StepsAtATime = 8;

    /// <summary>
    /// As many steps as the rehearsal takes are taken again, so that both agree to the last digits, unless they are more than this. A rise in
    /// longer steps, but no fewer than half as many, agrees to about a hundredth.
    /// </summary>
    private const int MostSteps = 160;

    private readonly RisePhase phase;
    private readonly RiseState state;
    private readonly RiseFolds folds;
    private readonly ConductionRun body;
    private readonly Duration step;
    private readonly double[] meanRows;
    private readonly double[] shellRows;
    private readonly double[] growthRows;
    private readonly List<double> celsius = [];
    private readonly List<double> growth = [];

    /// <param name="expectedMinutes">About how long it will take: what takes very long is followed in longer steps.</param>
    public RisePath(RisePhase phase, PerLane scale, RiseFolds folds, double expectedMinutes)
    {
        this.phase = phase;
        step = StepOver(phase.StepLength, expectedMinutes);
        this.folds = folds.Again();
        Lanes = phase.Input.Lanes;
        (meanRows, growthRows) = (new double[StepsAtATime * Lanes], new double[StepsAtATime * Lanes]);
        state = phase.Begin(scale);
        body = Bodies.Drift(phase.Input, phase.Body, phase.Start, step);
        shellRows = new double[StepsAtATime * Lanes * body.Grid.ShellShares.Length];
        celsius.AddRange(phase.Start.Values);
        growth.AddRange(state.Growth);
        Highest = [.. state.Growth];
        var never = new double[Lanes];
        Array.Fill(never, double.PositiveInfinity);
        state.Begin(RiseStage.ToGrowth(never, this.folds));
    }

    public int Lanes { get; }

    public double StepMinutes => step.Minutes;

    public int Steps { get; private set; }

    public double Minutes => Steps * StepMinutes;

    /// <summary>The highest growth of each lane so far.</summary>
    public double[] Highest { get; }

    public double GrowthAt(int index, int lane) => growth[(index * Lanes) + lane];

    public void GoOn()
    {
        Rising.Advance(body, phase.Input, step * Steps, step, StepsAtATime, meanRows, shellRows);
        state.Advance(new RiseWarmth(meanRows, shellRows, body.Grid.ShellShares, Lanes), step, growthRows);
        celsius.AddRange(meanRows);
        growth.AddRange(growthRows);
        Steps += StepsAtATime;
        for (var index = 0; index < growthRows.Length; index++)
        {
            Highest[index % Lanes] = Math.Max(Highest[index % Lanes], growthRows[index]);
        }
    }

    /// <summary>The likely lane from its start to a time that has been run.</summary>
    public List<WayPoint> Likely(double untilMinutes)
    {
        var way = new List<WayPoint> { new(0, celsius[0], growth[0]) };
        for (var index = 0; index < Steps && way[^1].Minutes < untilMinutes; index++)
        {
            foreach (var piece in Pieces(index, 0))
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

    /// <summary>Growth of a lane at a time; null when it was not followed so far.</summary>
    public double? GrowthAfter(double minutes, int lane)
    {
        if (minutes > Minutes)
        {
            return null;
        }

        var index = Math.Clamp((int)Math.Ceiling(minutes / StepMinutes) - 1, 0, Steps - 1);
        // The end of a step, divided and multiplied, may lie a last digit beyond it.
        var within = Pieces(index, lane).ToList();
        return within.Find(piece => piece.To >= minutes) is { To: > 0 } met ? met.At(minutes) : within[^1].GrowthTo;
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

        for (var index = 0; index < Steps && level < levels.Length; index++)
        {
            if (!IsFolded(index, lane))
            {
                level = Pass(Whole(index, lane), level, levels, minutes);
                continue;
            }

            foreach (var piece in Pieces(index, lane))
            {
                level = Pass(piece, level, levels, minutes);
            }
        }
    }

    private static int Pass(RisePiece piece, int level, ReadOnlySpan<double> levels, Span<double> minutes)
    {
        for (; level < levels.Length && levels[level] <= piece.GrowthTo; level++)
        {
            minutes[level] = piece.When(levels[level]);
        }

        return level;
    }

    private static Duration StepOver(Duration own, double minutes)
    {
        var longer = minutes / own.Minutes <= MostSteps ? 1 : Math.Floor(minutes / own.Minutes / (MostSteps / 2.0));
        return own * Math.Max(1, Math.Min(longer, Math.Floor(Rising.LongestStep / own)));
    }

    private double CelsiusAt(double minutes)
    {
        var index = Math.Min(Steps - 1, (int)(minutes / StepMinutes));
        var (from, to) = (celsius[index * Lanes], celsius[(index + 1) * Lanes]);
        return from + (((minutes / StepMinutes) - index) * (to - from));
    }

    private RisePiece Whole(int index, int lane) => new(index * StepMinutes, GrowthAt(index, lane), (index + 1) * StepMinutes, GrowthAt(index + 1, lane));

    private bool IsFolded(int index, int lane)
    {
        for (var fold = 0; fold < folds.Count; fold++)
        {
            if (Falls(folds.Minutes[(fold * Lanes) + lane], index))
            {
                return true;
            }
        }

        return false;
    }

    private bool Falls(double minutes, int index) =>
        minutes > (index == 0 ? -1 : index * StepMinutes) && minutes <= (index + 1) * StepMinutes;

    /// <summary>A step of a lane, cut at its folds. All pieces of a step rise equally fast.</summary>
    private IEnumerable<RisePiece> Pieces(int index, int lane)
    {
        var (at, grown) = (index * StepMinutes, GrowthAt(index, lane));
        var (end, last) = ((index + 1) * StepMinutes, GrowthAt(index + 1, lane));
        double? perMinute = null;
        for (var fold = 0; fold < folds.Count; fold++)
        {
            var (minutes, met) = (folds.Minutes[(fold * Lanes) + lane], folds.Growth[(fold * Lanes) + lane]);
            if (!Falls(minutes, index))
            {
                continue;
            }

            if (minutes - at > 1e-6 * StepMinutes)
            {
                perMinute ??= (met - grown) / (minutes - at);
                yield return new(at, met - (perMinute.Value * (minutes - at)), minutes, met);
            }

            // A fold at the very beginning of a step shows no slope of it: the step before lends its own.
            perMinute ??= index > 0 ? (grown - GrowthAt(index - 1, lane)) / StepMinutes : (last - grown) / StepMinutes;
            (at, grown) = (minutes, double.NaN);
        }

        yield return new(at, double.IsNaN(grown) ? last - (perMinute!.Value * (end - at)) : grown, end, last);
    }
}
