using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>One pack of lanes on its way through a bake. What it needs is allocated when it is made and never after.</summary>
/// <remarks>
/// Heat: ρ_s de/dt = ∇·(k ∇T) + ∇·((h_v - c_w T) β ∇p) - h_v (what dries); vapour carries heat and its water goes back as liquid. Kept is e +
/// h_v (what dried), so what the oven gave is there to the last digits whatever the steps. Backward differences of second order and one
/// Newton step from a guess drawn on from the two states before. Source: house-bake-lanes.
/// </remarks>
internal sealed class RadialRun<T> where T : struct, ILane<T>
{
    private readonly RadialGrid grid;
    private readonly T[] content, contentBefore, total, totalBefore, dried, driedLast, held, celsius, water;
    private readonly T[] guessed, guess, slope, vapour, vapourSlope, wet;
    private readonly T[] lower, diagonal, upper, right, scratch;
    private BakeClock clock;
    private CrumbPack<T> crumb;
    private OvenPack<T> oven;
    private DryingFront<T> front;
    private T solids, reach, start, fromFilm, into, meets, within, outside, settling, dewPoint, surfaceBefore, given, givenBefore, browningRate;

    public RadialRun(RadialGrid grid, BakeClock clock)
    {
        (this.grid, this.clock) = (grid, clock);
        T[] New() => new T[grid.Cells];
        (content, contentBefore, total, totalBefore, dried, driedLast) = (New(), New(), New(), New(), New(), New());
        (held, celsius, water, guessed, guess, slope) = (New(), New(), New(), New(), New(), New());
        (vapour, vapourSlope, wet, lower, diagonal, upper, right, scratch) = (New(), New(), New(), New(), New(), New(), New(), New());
    }

    /// <summary>In the middle, °C.</summary>
    public T Core => celsius[0] - (T.Of(grid.CoreWeight) * (celsius[1] - celsius[0]));

    /// <summary>Of the surface, °C.</summary>
    public T Surface { get; private set; }

    /// <summary>Over the volume, °C.</summary>
    public T Mean => Over(celsius);

    /// <summary>Share of the dough's mass that is gone.</summary>
    public T Loss => (start - Over(water) - (front.Film * start * T.Of(grid.Dimensions) / reach)) / (T.Of(1) + start);

    /// <summary>How far browning has come, as the exponent of what is left to brown.</summary>
    public T Browning { get; private set; }

    /// <summary>The largest distance between a temperature and what the step took it for, K: large where steps are too long.</summary>
    public T Drift { get; private set; }

    /// <summary>Heat in the piece and in the vapour that left it, and heat that the oven gave, J per kg of dry matter since it went in.</summary>
    public (T Held, T Given) Heat => (Over(total), given);

    public void Begin(RadialLanes lanes, int lane)
    {
        crumb = new(lanes, lane);
        solids = T.Load(lanes.Solids, lane);
        reach = T.Load(lanes.Reach, lane);
        start = T.Load(lanes.Water, lane);
        var enters = T.Load(lanes.Start, lane);
        var holds = crumb.ContentAt(enters);
        front.Begin();
        (Surface, surfaceBefore, Browning, Drift) = (enters, enters, T.Of(0), T.Of(0));
        (given, givenBefore, fromFilm, browningRate) = (holds, holds, T.Of(0), T.Of(0));
        Array.Fill(content, holds);
        Array.Fill(total, holds);
        Array.Fill(dried, T.Of(0));
        Array.Fill(driedLast, T.Of(0));
        Array.Fill(held, start);
        Array.Fill(water, start);
        Array.Fill(celsius, enters);
        oven = new(lanes, lane);
    }

    /// <summary>Out of one oven into another, or into the room: the steps begin anew.</summary>
    public void MoveTo(RadialLanes lanes, int lane, BakeClock anew)
    {
        (clock, oven) = (anew, new(lanes, lane));
        front.Pause();
    }

    /// <param name="step">From 1 on, one after the other.</param>
    public void Advance(int step)
    {
        Guess(T.Of(clock.Length(step)), T.Of(clock.Ratio[step]));
        Balance(step, T.Of(clock.Ratio[step]));
        Tridiagonal.Solve<T>(lower, diagonal, upper, right, scratch);
        Settle(step);
    }

    /// <summary>What dries in the step, and where the state would be if all went on as it did.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Guess(T length, T ratio)
    {
        fromFilm += front.Advance(length, ratio) * start / (T.Of(grid.Depth[^1]) * reach);
        var end = front.End;
        for (var cell = 0; cell < content.Length; cell++)
        {
            var undried = start * front.WetShare(end, T.Of(grid.Outer[cell]) * reach, T.Of(grid.Depth[cell]) * reach);
            var kept = T.Min(held[cell], undried);
            var dries = held[cell] - kept;
            // Water that dries away takes along what it held itself: that much the content falls though nothing cools.
            guessed[cell] = content[cell] + (ratio * (content[cell] - contentBefore[cell]))
                - (crumb.WaterContentAt(celsius[cell]) * (dries - (ratio * driedLast[cell])));
            driedLast[cell] = dries;
            dried[cell] += dries;
            held[cell] = kept;
            var (warm, perContent, left) = crumb.StateAt(guessed[cell], kept, start - dried[cell]);
            (guess[cell], slope[cell]) = (warm, perContent);
            (vapour[cell], vapourSlope[cell]) = crumb.VapourAt(warm);
            wet[cell] = crumb.Wetness(left);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Balance(int step, T ratio)
    {
        var (newest, newer, older) = (T.Of(clock.Newest[step]), T.Of(clock.Newer[step]), T.Of(clock.Older[step]));
        var perArea = T.Of(1) / (solids * reach * reach);
        var last = content.Length - 1;
        for (var cell = 0; cell <= last; cell++)
        {
            var share = T.Of(grid.Share[cell]);
            var leaves = dried[cell] + (cell == last ? fromFilm : T.Of(0));
            diagonal[cell] = share * newest;
            right[cell] = T.Of(0) - (share * ((newest * (guessed[cell] + (crumb.VapourContent * leaves))) + (newer * total[cell]) + (older * totalBefore[cell])));
        }

        for (var cell = 0; cell < last; cell++)
        {
            var (here, there) = (guess[cell], guess[cell + 1]);
            var middle = T.Of(0.5) * (here + there);
            var both = T.Of(2) * wet[cell] * wet[cell + 1] / (wet[cell] + wet[cell + 1] + T.Of(1e-9));
            var carries = crumb.PermeanceAt(middle) * both * CrumbPack<T>.Carried(middle);
            var face = T.Of(grid.Conductance[cell]) * perArea;
            var flow = face * ((crumb.Conductivity * (there - here)) + (carries * (vapour[cell + 1] - vapour[cell])));
            var own = face * (crumb.Conductivity + (carries * vapourSlope[cell])) * slope[cell];
            var their = face * (crumb.Conductivity + (carries * vapourSlope[cell + 1])) * slope[cell + 1];
            right[cell] += flow;
            right[cell + 1] -= flow;
            diagonal[cell] += own;
            diagonal[cell + 1] += their;
            lower[cell + 1] = T.Of(0) - own;
            upper[cell] = T.Of(0) - their;
        }

        Meet(step, ratio);
        var surface = T.Of(grid.Dimensions) / (solids * reach);
        right[last] += surface * into * (meets - guess[last]);
        diagonal[last] += surface * into * slope[last];
    }

    /// <summary>The surface between the oven and the middle of the outermost shell.</summary>
    private void Meet(int step, T ratio)
    {
        var seconds = clock.Seconds[step];
        var warm = guess[^1];
        var conducts = crumb.Conductivity + (crumb.PermeanceAt(warm) * wet[^1] * CrumbPack<T>.Carried(warm) * vapourSlope[^1]);
        within = T.Of(2 / grid.Width[^1]) * conducts / reach;
        var about = Surface + (ratio * (Surface - surfaceBefore));
        (into, meets) = oven.HeatAt(seconds, about);
        if (oven.SteamsAt(seconds))
        {
            var (over, perKelvin) = crumb.VapourAt(about);
            var steam = oven.VapourAt(seconds);
            var heat = oven.Settling(about) * crumb.VapourContent;
            var settles = T.WhereLess(over, steam, heat * perKelvin, T.Of(0));
            var dew = about + ((steam - over) / T.Max(perKelvin, T.Of(1e-6)));
            var both = into + settles;
            meets = T.WhereLess(T.Of(0), settles, ((into * meets) + (settles * dew)) / both, meets);
            (settling, dewPoint, into) = (settles, dew, both);
        }
        else
        {
            settling = T.Of(0);
        }

        outside = into;
        into = within * into / (within + into);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Settle(int step)
    {
        var (newest, newer, older) = (T.Of(clock.Newest[step]), T.Of(clock.Newer[step]), T.Of(clock.Older[step]));
        var last = content.Length - 1;
        var takes = T.Of(grid.Dimensions) / (solids * reach) * into * (meets - guess[last] - (slope[last] * right[last]));
        (given, givenBefore) = ((takes - (newer * given) - (older * givenBefore)) / newest, given);

        var (from, to) = front.Reach();
        var (presses, warmth) = (T.Of(0), T.Of(0));
        for (var cell = 0; cell <= last; cell++)
        {
            var (was, holds) = (content[cell], guessed[cell] + right[cell]);
            var (now, _, left) = crumb.StateAt(holds, held[cell], start - dried[cell]);
            var off = now - guess[cell];
            var taken = off - (slope[cell] * right[cell]);
            Drift = T.Max(Drift, T.Max(taken, T.Of(0) - taken));
            held[cell] = T.Min(held[cell], left);
            (celsius[cell], water[cell]) = (now, left);
            (contentBefore[cell], content[cell]) = (was, holds);
            var leaves = dried[cell] + (cell == last ? fromFilm : T.Of(0));
            (totalBefore[cell], total[cell]) = (total[cell], holds + (crumb.VapourContent * leaves));

            var outer = T.Of(grid.Outer[cell]) * reach;
            var share = T.Max(T.Of(0), T.Min(outer + (T.Of(grid.Depth[cell]) * reach), to) - T.Max(outer, from)) / (to - from);
            presses += share * (vapour[cell] + (vapourSlope[cell] * off));
            warmth += share * now;
        }

        presses = T.Min(presses, crumb.Pressure);
        surfaceBefore = Surface;
        Surface = ((within * celsius[last]) + (outside * meets)) / (within + outside);
        Evaporate(clock.Seconds[step], from, to, presses, warmth, T.Of(clock.Length(step)));
    }

    private void Evaporate(double seconds, T from, T to, T presses, T warmth, T length)
    {
        var hindrance = (T.Of(0.5) * (from + to) / crumb.PermeanceAt(warmth)) + oven.Hindrance(warmth);
        var perDepth = solids * start;
        front.Note(oven.Open * (presses - oven.VapourAt(seconds)) / hindrance / perDepth);
        front.Settle(T.Max(T.Of(0), length * settling * (dewPoint - Surface) / (crumb.VapourContent * perDepth)));

        var rate = BrowningRate.At(Surface);
        Browning += T.Of(0.5) * length * (rate + browningRate);
        browningRate = rate;
    }

    private T Over(T[] values)
    {
        var sum = T.Of(0);
        for (var cell = 0; cell < values.Length; cell++)
        {
            sum += T.Of(grid.Share[cell]) * values[cell];
        }

        return sum;
    }
}
