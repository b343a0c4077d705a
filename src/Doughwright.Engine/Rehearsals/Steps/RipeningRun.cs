using Doughwright.Engine.Fermentation;

namespace Doughwright.Engine.Rehearsals.Steps;

/// <summary>A preferment that is followed along its temperature, with how far it has come and how long its yeast has lived at the end of every step.</summary>
internal sealed class RipeningRun
{
    /// <summary>The window lies so much of the lived time to either side: 12 to 16 h for a poolish of 14. Source: ripe-poolish.</summary>
    public const double WindowShare = 1.0 / 7;

    private const int StepsAtATime = 8;

    private readonly Func<RiseState, int, double> ripeness;
    private readonly RiseState state;
    private readonly Heat.ConductionRun body;
    private readonly List<double> celsius = [];
    private readonly List<double> shells = [];
    private readonly List<double> rates = [];
    private readonly List<double[]> ripe;
    private readonly List<double[]> lived;

    /// <param name="ripeness">What it is ripe by, of a state and a lane; rises with time.</param>
    public RipeningRun(RisePhase phase, Func<RiseState, int, double> ripeness)
    {
        (Phase, this.ripeness) = (phase, ripeness);
        state = Fresh();
        body = Bodies.Drift(phase.Input, phase.Body, phase.Start, phase.StepLength);
        (ripe, lived) = ([], []);
        Note();
        var never = new double[state.Lanes];
        Array.Fill(never, double.PositiveInfinity);
        state.Begin(RiseStage.ForMinutes(never));
    }

    public RisePhase Phase { get; }

    private double StepMinutes => Phase.StepLength.Minutes;

    private double Minutes => (ripe.Count - 1) * StepMinutes;

    /// <summary>How far it has come after so many minutes in every lane.</summary>
    public PerLane RipenessAt(PerLane minutes)
    {
        while (Minutes < minutes.Values.Max())
        {
            GoOn();
        }

        return new([.. minutes.Values.Select((at, lane) => Between(ripe, at, lane))]);
    }

    /// <summary>Goes on until every lane is ripe and past its window, or patience ends.</summary>
    public void Until(PerLane target)
    {
        while (Minutes < Phase.Patience.Minutes && !IsPast(target))
        {
            GoOn();
        }
    }

    /// <summary>When each lane comes so far; infinite where it has not within the run.</summary>
    public PerLane When(PerLane target) => new([.. target.Values.Select((level, lane) => FirstAt(ripe, level, lane))]);

    /// <summary>When the likely lane is ripe early and late; the late end is infinite where it is not reached.</summary>
    public (double Earliest, double Latest) WindowAround(PerLane minutes)
    {
        var age = Between(lived, minutes.Central, 0);
        return (FirstAt(lived, age * (1 - WindowShare), 0), FirstAt(lived, age * (1 + WindowShare), 0));
    }

    /// <summary>The preferment after so many minutes along the same temperatures; a lane that never ends goes to the end of the run.</summary>
    public RiseState StateAfter(PerLane minutes)
    {
        var after = Fresh();
        after.Begin(RiseStage.ForMinutes(minutes.Values));
        after.Advance(new RiseHistory(Phase.Start.Values, [.. celsius], Phase.StepLength) { Shells = [.. shells], Shares = body.Grid.ShellShares, Rates = [.. rates] });
        return after;
    }

    private RiseState Fresh() => Phase.Begin(new(Phase.Input.Stage.Priors.Rise.Scale));

    private bool IsPast(PerLane target)
    {
        var last = ripe.Count - 1;
        for (var lane = 0; lane < target.Count; lane++)
        {
            var when = FirstAt(ripe, target[lane], lane);
            if (double.IsInfinity(when) || lived[last][lane] < Between(lived, when, lane) * (1 + WindowShare))
            {
                return false;
            }
        }

        return true;
    }

    private void GoOn()
    {
        var (lanes, shares, from) = (state.Lanes, body.Grid.ShellShares, ripe.Count - 1);
        var (mean, inner) = (new double[StepsAtATime * lanes], new double[StepsAtATime * lanes * shares.Length]);
        Rising.Advance(body, Phase.Input, Phase.StepLength * from, Phase.StepLength, StepsAtATime, mean, inner);
        for (var row = 0; row < StepsAtATime; row++)
        {
            state.Advance(new RiseWarmth(mean.AsSpan(row * lanes, lanes), inner.AsSpan(row * lanes * shares.Length, lanes * shares.Length), shares, lanes), Phase.StepLength);
            rates.AddRange(state.Rate);
            Note();
        }

        celsius.AddRange(mean);
        shells.AddRange(inner);
    }

    private void Note()
    {
        lived.Add([.. state.Aged]);
        ripe.Add([.. Enumerable.Range(0, state.Lanes).Select(lane => ripeness(state, lane))]);
    }

    private double Between(IReadOnlyList<double[]> noted, double minutes, int lane)
    {
        var index = Math.Clamp((int)(minutes / StepMinutes), 0, noted.Count - 2);
        var (from, to) = (noted[index][lane], noted[index + 1][lane]);
        return from + (((minutes / StepMinutes) - index) * (to - from));
    }

    private double FirstAt(List<double[]> noted, double level, int lane)
    {
        var index = noted.FindIndex(row => row[lane] >= level);
        if (index <= 0)
        {
            return index < 0 ? double.PositiveInfinity : 0;
        }

        var (from, to) = (noted[index - 1][lane], noted[index][lane]);
        return (index - 1 + ((level - from) / (to - from))) * StepMinutes;
    }
}
