using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Fermentation;

/// <summary>One pack of lanes on its way through a stage.</summary>
internal struct RiseRun<T> where T : struct, ILane<T>
{
    private readonly RisePack<T> pack;
    private readonly T hours;
    private readonly int lane;
    private RiseLine<T> line;

    public RiseRun(RiseState state, RiseStage stage, double minutesPerStep, int lane)
    {
        this.lane = lane;
        pack = new(state.Coefficients, state.AirMoles, lane);
        hours = T.Of(minutesPerStep / 60);
        line = new(T.Of(minutesPerStep), T.Load(stage.UntilMinutes, lane), T.Load(stage.UntilGrowth, lane))
        {
            Before = RisePoint<T>.Load(state, pack, lane),
            Stopped = T.Load(state.StoppedMinutes, lane),
        };
    }

    // The parts of a step are called apart, so that two packs can take turns: one computes while the other waits for a division.

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Warm(in RiseWarmth warmth, int row)
    {
        line.After.Celsius = T.Load(warmth.Celsius, row + lane);
        if (!warmth.Rates.IsEmpty)
        {
            line.After.Rate = T.Load(warmth.Rates, row + lane);
            line.After.WarmGas(pack);
        }
        else if (warmth.Shells.IsEmpty)
        {
            line.After.Warm(pack);
        }
        else
        {
            line.After.WarmShells(warmth.Shells, warmth.Shares, row * warmth.Shares.Length + lane, warmth.Lanes, pack);
            line.After.WarmGas(pack);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Ferment() => line.After.Ferment(line.Before, hours, pack);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Swell() => line.After.Swell(line.Before, pack);

    /// <summary>Looks where the stage ends, if it does in this step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Look(double minutes) => line.Look(minutes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Fold(RiseFolds folds, int fold) => line.Fold(folds, fold, lane, pack);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void GoOn(Span<double> growth, int row)
    {
        line.GoOn();
        if (!growth.IsEmpty)
            line.Before.Growth.Store(growth, row + lane);
    }

    public readonly void Store(RiseState state)
    {
        line.Before.Store(state, lane);
        line.Stopped.Store(state.StoppedMinutes, lane);
    }
}
