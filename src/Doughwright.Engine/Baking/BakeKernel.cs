using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking;

/// <summary>
/// Warms a sphere in an oven. The surface takes heat through a constant coefficient until it boils; from then on it stays at the boiling
/// point, because what comes in beyond that leaves as steam. Runs packs of lanes, all digits equal at every width.
/// </summary>
/// <remarks>
/// Symbols: T temperature [°C], Fo = αt/R², Bi = hR/k. ∂T/∂Fo = r⁻² ∂/∂r (r² ∂T/∂r); at r = 1: -∂T/∂r = Bi (T - T_oven), capped at T_boil.
/// Second order in Fo (backward differences, one Euler step to start). Source: house-bake (structure), bergman-conduction (equation).
/// </remarks>
internal static class BakeKernel
{
    /// <summary>Temperatures at the core after each step, at [step x lanes + lane], for steps 1 to the length of <paramref name="core"/>.</summary>
    public static void Run<T>(BakeGrid grid, BakeLanes lanes, Span<double> core) where T : struct, ILane<T>
    {
        var run = new BakeRun<T>(grid);
        for (var lane = 0; lane < lanes.Count; lane += T.Width)
        {
            run.Begin(lanes, lane);
            for (int at = lane, step = 0; at < core.Length; at += lanes.Count, step++)
            {
                run.Advance(step);
                run.Core.Store(core, at);
            }
        }
    }

    /// <summary>Fo at which the core of each lane passes its target in °C; infinite where it has not within so many steps.</summary>
    public static void TimeTo<T>(BakeGrid grid, BakeLanes lanes, ReadOnlySpan<double> target, int mostSteps, Span<double> times)
        where T : struct, ILane<T>
    {
        var run = new BakeRun<T>(grid);
        for (var lane = 0; lane < lanes.Count; lane += T.Width)
        {
            run.Begin(lanes, lane);
            Watch(ref run, grid.Step, T.Load(target, lane), mostSteps, times.Slice(lane, T.Width));
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Watch<T>(ref BakeRun<T> run, double length, T target, int mostSteps, Span<double> times) where T : struct, ILane<T>
    {
        var never = T.Of(double.PositiveInfinity);
        var found = never;
        found.Store(times, 0);
        for (var step = 0; step < mostSteps && times.Contains(double.PositiveInfinity); step++)
        {
            var before = run.Core;
            run.Advance(step);
            var share = T.Max(T.Of(0), (target - before) / (run.Core - before));
            var passed = T.WhereLess(target, run.Core, T.Of(length) * (T.Of(step) + share), never);
            found = T.WhereLess(found, never, found, passed);
            found.Store(times, 0);
        }
    }
}
