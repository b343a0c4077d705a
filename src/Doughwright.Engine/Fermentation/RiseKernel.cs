using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// The compact dough-rise model, per 100 g of flour, over packs of lanes. Gas is made by yeast from sugar at a rate that follows the
/// dough's temperature; part of it dissolves, part escapes as the dough nears its limit, the rest blows the dough up at the local
/// pressure. Nothing is allocated here, and no lane looks at another.
/// <para>
/// Second order in the step: a doubling in thirty steps or more comes out to 0.1 %. A step in which the dough grows by more than about
/// 0.3 of its first volume is too long, and can leap over the highest growth.
/// </para>
/// </summary>
internal static class RiseKernel
{
    /// <param name="clock">Minutes from the beginning of the stage.</param>
    /// <param name="warmth">Temperatures at the end of each step.</param>
    /// <param name="growth">Gets the growth at the end of each step, laid out likewise; empty when nobody asks.</param>
    public static void Advance<T>(
        RiseState state, RiseStage stage, double clock, double minutesPerStep, in RiseWarmth warmth, Span<double> growth)
        where T : struct, ILane<T>
    {
        var lane = 0;
        for (; lane + 2 * T.Width <= state.Lanes; lane += 2 * T.Width)
            AdvanceTwo<T>(state, stage, clock, minutesPerStep, warmth, growth, lane);
        for (; lane + T.Width <= state.Lanes; lane += T.Width)
            AdvanceOne<T>(state, stage, clock, minutesPerStep, warmth, growth, lane);
        for (; lane < state.Lanes; lane++)
            AdvanceOne<Lane1>(state, stage, clock, minutesPerStep, warmth, growth, lane);
    }

    /// <summary>Relative rates along temperatures, for runs that go along the same ones many times.</summary>
    /// <param name="rates">Gets the rate at the end of each step, laid out as the temperatures.</param>
    public static void Rates<T>(RiseState state, in RiseWarmth warmth, Span<double> rates) where T : struct, ILane<T>
    {
        var lane = 0;
        for (; lane + T.Width <= state.Lanes; lane += T.Width)
            RatesOf<T>(state, warmth, rates, lane);
        for (; lane < state.Lanes; lane++)
            RatesOf<Lane1>(state, warmth, rates, lane);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void RatesOf<T>(RiseState state, in RiseWarmth warmth, Span<double> rates, int lane) where T : struct, ILane<T>
    {
        var pack = new RisePack<T>(state.Coefficients, state.AirMoles, lane);
        var point = new RisePoint<T>();
        for (var row = 0; row < warmth.Celsius.Length; row += state.Lanes)
        {
            point.Celsius = T.Load(warmth.Celsius, row + lane);
            if (warmth.Shells.IsEmpty)
                point.Warm(pack);
            else
                point.WarmShells(warmth.Shells, warmth.Shares, row * warmth.Shares.Length + lane, warmth.Lanes, pack);
            point.Rate.Store(rates, row + lane);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void AdvanceOne<T>(
        RiseState state, RiseStage stage, double clock, double minutesPerStep, in RiseWarmth warmth, Span<double> growth, int lane)
        where T : struct, ILane<T>
    {
        var run = new RiseRun<T>(state, stage, minutesPerStep, lane);
        for (int row = 0, step = 0; row < warmth.Celsius.Length; row += state.Lanes, step++)
        {
            run.Warm(warmth, row);
            run.Ferment();
            run.Swell();
            run.Look(clock + step * minutesPerStep);
            for (var fold = 0; fold < stage.Folds.Count; fold++)
                run.Fold(stage.Folds, fold);
            run.GoOn(growth, row);
        }

        run.Store(state);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void AdvanceTwo<T>(
        RiseState state, RiseStage stage, double clock, double minutesPerStep, in RiseWarmth warmth, Span<double> growth, int lane)
        where T : struct, ILane<T>
    {
        var one = new RiseRun<T>(state, stage, minutesPerStep, lane);
        var other = new RiseRun<T>(state, stage, minutesPerStep, lane + T.Width);
        for (int row = 0, step = 0; row < warmth.Celsius.Length; row += state.Lanes, step++)
        {
            one.Warm(warmth, row);
            other.Warm(warmth, row);
            one.Ferment();
            other.Ferment();
            one.Swell();
            other.Swell();
            var minutes = clock + step * minutesPerStep;
            one.Look(minutes);
            other.Look(minutes);
            for (var fold = 0; fold < stage.Folds.Count; fold++)
            {
                one.Fold(stage.Folds, fold);
                other.Fold(stage.Folds, fold);
            }

            one.GoOn(growth, row);
            other.GoOn(growth, row);
        }

        one.Store(state);
        other.Store(state);
    }
}
