using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// The compact dough-rise model, per 100 g of flour, over packs of lanes. Gas is made by yeast from sugar at a rate that follows the dough's
/// temperature; part of it dissolves, part escapes as the dough nears its limit, the rest blows the dough up at the local pressure.
/// Nothing is allocated here, and no lane looks at another.
/// <para>
/// Second order in the step: a doubling in thirty steps or more comes out to 0.1 %. A step in which the dough grows by more than about 0.3 of
/// its first volume is too long, and can leap over the highest growth.
/// </para>
/// </summary>
internal static class RiseKernel
{
    /// <param name="clock">Minutes from the beginning of the stage.</param>
    /// <param name="celsius">Temperature at the end of each step, [step * lanes + lane].</param>
    /// <param name="growth">Gets the growth at the end of each step, laid out likewise; empty when nobody asks.</param>
    public static void Advance<T>(
        RiseState state, RiseStage stage, double clock, double minutesPerStep, ReadOnlySpan<double> celsius, Span<double> growth)
        where T : struct, ILane<T>
    {
        var lane = 0;
        for (; lane + T.Width <= state.Lanes; lane += T.Width)
            AdvancePack<T>(state, stage, clock, minutesPerStep, celsius, growth, lane);
        for (; lane < state.Lanes; lane++)
            AdvancePack<Lane1>(state, stage, clock, minutesPerStep, celsius, growth, lane);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void AdvancePack<T>(
        RiseState state, RiseStage stage, double clock, double minutesPerStep, ReadOnlySpan<double> celsius, Span<double> growth, int lane)
        where T : struct, ILane<T>
    {
        var pack = new RisePack<T>(state.Coefficients, state.AirMoles, lane);
        var untilGrowth = T.Load(stage.UntilGrowth, lane);
        var untilMinutes = T.Load(stage.UntilMinutes, lane);
        var hours = T.Of(minutesPerStep / 60);
        var line = new RiseLine<T>(T.Of(minutesPerStep))
        {
            Before = RisePoint<T>.Load(state, pack, lane),
            Stopped = T.Load(state.StoppedMinutes, lane),
        };

        for (int row = lane, step = 0; row < celsius.Length; row += state.Lanes, step++)
        {
            RisePoint<T>.Step(line.Before, ref line.After, T.Load(celsius, row), hours, pack);
            line.Draw(T.Of(clock + step * minutesPerStep), untilMinutes, untilGrowth);
            for (var fold = 0; fold < stage.Folds.Count; fold++)
                line.Fold(stage.Folds, fold, lane, untilMinutes, untilGrowth, pack);
            line.GoOn();
            if (!growth.IsEmpty)
                line.Before.Growth.Store(growth, row);
        }

        line.Before.Store(state, lane);
        line.Stopped.Store(state.StoppedMinutes, lane);
    }
}
