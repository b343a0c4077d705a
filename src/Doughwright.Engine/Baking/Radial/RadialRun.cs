using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>One pack of lanes on its way through a bake. What it needs is allocated when it is made and never after.</summary>
/// <remarks>
/// Kept is e + h_v (what dried), so what the oven gave is there to the last digits whatever the steps. Backward differences of second order; each step
/// is guessed by drawing on from the two states before and found by <see cref="RadialNewton{T}"/>. Source: house-bake-lanes.
/// </remarks>
internal sealed partial class RadialRun<T> where T : struct, ILane<T>
{
    private readonly RadialGrid grid;
    private readonly RadialShells<T> shells;
    private readonly RadialSurface<T> surface = new();
    private readonly RadialNewton<T> newton;
    private BakeClock clock;
    private CrumbPack<T> crumb;
    private RadialSize<T> size;
    private DryingFront<T> front;
    private T fromFilm, given, givenBefore, browningRate;

    public RadialRun(RadialGrid grid, BakeClock clock)
    {
        (this.grid, this.clock, shells) = (grid, clock, new(grid));
        newton = new(shells, surface);
    }

    /// <summary>In the middle, °C.</summary>
    public T Core => shells.Core;

    /// <summary>Of the surface, °C.</summary>
    public T Surface => surface.Celsius;

    /// <summary>Over the volume, °C.</summary>
    public T Mean => shells.Mean;

    /// <summary>Share of the dough's mass that is gone.</summary>
    public T Loss => (size.Water - shells.Water - (front.Film * size.Water * T.Of(grid.Dimensions) / size.Reach)) / (T.Of(1) + size.Water);

    /// <summary>How far browning has come, as the exponent of what is left to brown.</summary>
    public T Browning { get; private set; }

    /// <summary>Heat in the piece and in the vapour that left it, and heat that the oven gave, J per kg of dry matter since it went in.</summary>
    public (T Held, T Given) Heat => (shells.Heat, given);

    public void Begin(RadialLanes lanes, int lane)
    {
        (crumb, size) = (new(lanes, lane), new(lanes, lane, grid.Dimensions));
        var enters = T.Load(lanes.Start, lane);
        var holds = crumb.ContentAt(enters);
        shells.Begin(in size, enters, holds);
        surface.Begin(lanes, lane, enters);
        front.Begin();
        (owed, isOut) = (T.Of(0), false);
        (given, givenBefore, fromFilm, browningRate, Browning) = (holds, holds, T.Of(0), T.Of(0), T.Of(0));
    }

    /// <param name="step">From 1 on, one after the other.</param>
    /// <returns>Whether every lane came to rest. Of one that did not (<see cref="IsSettled"/>) nothing is known from here on.</returns>
    public bool Advance(int step)
    {
        Dry(T.Of(clock.Length(step)), T.Of(clock.Ratio[step]));
        owed = isOut ? Owes() : owed;
        var settled = newton.Take(in crumb, in size, clock, step, fromFilm);
        Settle(step);
        return settled;
    }

    /// <summary>Whether a lane of the pack came to rest in the last step.</summary>
    public bool IsSettled(int laneOfPack) => newton.IsSettled(laneOfPack);

    // The loops are short on purpose: beyond a budget the compiler stops to put the operations of a pack in line, and each becomes a call.

    /// <summary>What dries in the step, and where the content would be if all went on as it did.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Dry(T length, T ratio)
    {
        var all = shells.All;
        var whole = size.Water;
        fromFilm += front.Advance(length, ratio, owed) * whole * all[^1].PerThick;
        var end = front.End;
        for (var cell = 0; cell < all.Length; cell++)
        {
            ref var shell = ref all[cell];
            var kept = T.Min(shell.Held, whole * DryingFront<T>.WetShare(end, shell.Outer, shell.Inner, shell.PerThick));
            var dries = shell.Held - kept;
            // Water that dries away takes along what it held itself: that much the content falls though nothing cools.
            shell.Guessed = shell.Content + (ratio * (shell.Content - shell.Before))
                - (crumb.WaterContentAt(shell.Celsius) * (dries - (ratio * shell.DriedLast)));
            shell.DriedLast = dries;
            shell.Dried += dries;
            shell.Held = kept;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Settle(int step)
    {
        var (newest, newer, older) = (T.Of(clock.Newest[step]), T.Of(clock.Newer[step]), T.Of(clock.Older[step]));
        var all = shells.All;
        var vapourContent = crumb.VapourContent;
        ref var last = ref all[^1];
        var takes = size.Surface * surface.Into * (surface.Meets - last.Guess - (last.Slope * newton.OutermostChange));
        (given, givenBefore) = ((takes - (newer * given) - (older * givenBefore)) / newest, given);

        var (from, to) = front.Reach();
        var perBand = T.Of(1) / (to - from);
        var (presses, warmth) = (T.Of(0), T.Of(0));
        for (var cell = 0; cell < all.Length; cell++)
        {
            ref var shell = ref all[cell];
            var off = shell.Celsius - shell.Guess;
            (shell.TotalBefore, shell.Total) = (shell.Total, shell.Content + (vapourContent * shell.Dried));

            var share = T.Max(T.Of(0), T.Min(shell.Inner, to) - T.Max(shell.Outer, from)) * perBand;
            presses += share * (shell.Vapour + (shell.VapourSlope * off));
            warmth += share * shell.Celsius;
        }

        last.Total += vapourContent * fromFilm;
        surface.Settle(last.Celsius, clock, step);
        Evaporate(clock.Seconds[step], from, to, T.Min(presses, crumb.Pressure), warmth, T.Of(clock.Length(step)));
    }

    private void Evaporate(double seconds, T from, T to, T presses, T warmth, T length)
    {
        ref readonly var oven = ref surface.Oven;
        var hindrance = (T.Of(0.5) * (from + to) / crumb.PermeanceAt(warmth)) + oven.Hindrance(warmth);
        var perDepth = size.Solids * size.Water;
        front.Note(oven.OpenAt(seconds) * (presses - oven.VapourAt(seconds)) / hindrance / perDepth);
        front.Settle(T.Max(T.Of(0), surface.SettlesIn(length) / (crumb.VapourContent * perDepth)));

        var rate = BrowningRate.At(Surface);
        Browning += T.Of(0.5) * length * (rate + browningRate);
        browningRate = rate;
    }
}
