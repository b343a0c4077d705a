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
        var steps = core.Length / lanes.Count;
        var now = new T[grid.Cells];
        var before = new T[grid.Cells];
        var partial = new T[grid.Cells];
        for (var lane = 0; lane < lanes.Count; lane += T.Width)
        {
            Pack(grid, lanes, lane, steps, core, now, before, partial);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Pack<T>(BakeGrid grid, BakeLanes lanes, int lane, int steps, Span<double> core, T[] now, T[] before, T[] partial)
        where T : struct, ILane<T>
    {
        var start = T.Load(lanes.Start, lane);
        var oven = T.Load(lanes.Oven, lane);
        var boil = T.Load(lanes.Boil, lane);
        var biot = T.Load(lanes.Biot, lane);
        Array.Fill(now, start);
        Array.Fill(before, start);
        var half = T.Of(grid.HalfCell);
        var into = half * biot / (half + biot);
        var last = grid.Cells - 1;
        for (var step = 0; step < steps; step++)
        {
            var factors = step == 0 ? grid.First : grid.Later;
            var (newer, older) = step == 0 ? (T.Of(1), T.Of(0)) : (T.Of(2), T.Of(0.5));
            var carried = T.Of(0);
            for (var cell = 0; cell < last; cell++)
            {
                var held = T.Of(grid.Capacity[cell]) * ((newer * now[cell]) - (older * before[cell]));
                carried = (held + carried) * T.Of(factors.Share[cell]);
                partial[cell] = carried;
                carried = carried * T.Of(grid.Conductance[cell]);
            }

            var held0 = T.Of(grid.Capacity[last]) * ((newer * now[last]) - (older * before[last]));
            var right = held0 + carried;
            var own = T.Of(factors.LastOwn);
            var heated = (right + (into * oven)) / (own + into);
            var surface = ((half * heated) + (biot * oven)) / (half + biot);
            var boiling = (right + (half * boil)) / (own + half);
            var next = T.WhereLess(boil, surface, boiling, heated);
            before[last] = now[last];
            now[last] = next;
            for (var cell = last - 1; cell >= 0; cell--)
            {
                next = (T.Of(factors.Follow[cell]) * next) + partial[cell];
                before[cell] = now[cell];
                now[cell] = next;
            }

            var middle = ((T.Of(9) * now[0]) - now[1]) / T.Of(8);
            middle.Store(core, (step * lanes.Count) + lane);
        }
    }
}

/// <summary>What each lane brings to the oven; all arrays of the same length, a multiple of the widest pack.</summary>
/// <param name="Start">Dough on entering, °C.</param>
/// <param name="Oven">Oven air, °C.</param>
/// <param name="Boil">Boiling point, °C.</param>
/// <param name="Biot">hR/k.</param>
internal sealed record BakeLanes(double[] Start, double[] Oven, double[] Boil, double[] Biot)
{
    public int Count => Start.Length;
}
