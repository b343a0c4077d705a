using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>One pack of lanes on its way through a bake. What it needs is allocated when it is made and never after.</summary>
/// <remarks>
/// Heat: ρ_s de/dt = ∇·(k ∇T) + ∇·((h_v - c_w T) β ∇p) - h_v (what dries); vapour carries heat and its water goes back as liquid. Kept is e +
/// h_v (what dried), so what the oven gave is there to the last digits whatever the steps. Backward differences of second order and one
/// Newton step from a guess drawn on from the two states before; where a shell dries out and that lands far off, some more, of such lanes only.
/// Source: house-bake-lanes.
/// </remarks>
internal sealed partial class RadialRun<T> where T : struct, ILane<T>
{
    /// <summary>A lane in which a shell came to rest farther than this from where its Newton step saw it, K, takes another.</summary>
    private const double FarOff = 0.5;

    /// <summary>Newton steps at the most; of some thousand pieces with steps far too long for them none took them all.</summary>
    private const int MostPasses = 20;

    /// <summary>So many are whole ones. Temperature over heat content bends one way at boiling and the other where crumb is dry, and whole ones may go back and forth between the two.</summary>
    private const int WholePasses = 4;

    private readonly RadialGrid grid;

    // All of a shell side by side: one look-up a shell, and one bound to check.
    private readonly Shell[] shells;
    private readonly T[] lower, diagonal, upper, right, scratch;
    private readonly double[] perLane = new double[T.Width];
    private BakeClock clock;
    private CrumbPack<T> crumb;
    private OvenPack<T> oven;
    private readonly HearthRun<T> hearth = new();
    private bool stands;
    private DryingFront<T> front;
    private T solids, reach, start, fromFilm, into, meets, within, outside, settling, dewPoint, surfaceBefore, given, givenBefore, browningRate;

    public RadialRun(RadialGrid grid, BakeClock clock)
    {
        (this.grid, this.clock, shells) = (grid, clock, new Shell[grid.Cells]);
        T[] New() => new T[grid.Cells];
        (lower, diagonal, upper, right, scratch) = (New(), New(), New(), New(), New());
    }

    /// <summary>In the middle, °C.</summary>
    public T Core => shells[0].Celsius - (T.Of(grid.CoreWeight) * (shells[1].Celsius - shells[0].Celsius));

    /// <summary>Of the surface, °C.</summary>
    public T Surface { get; private set; }

    /// <summary>Over the volume, °C.</summary>
    public T Mean => Over(0);

    /// <summary>Share of the dough's mass that is gone.</summary>
    public T Loss => (start - Over(1) - (front.Film * start * T.Of(grid.Dimensions) / reach)) / (T.Of(1) + start);

    /// <summary>How far browning has come, as the exponent of what is left to brown.</summary>
    public T Browning { get; private set; }

    /// <summary>The largest distance between a temperature and where its last Newton step saw it, K.</summary>
    public T Drift { get; private set; }

    /// <summary>Heat in the piece and in the vapour that left it, and heat that the oven gave, J per kg of dry matter since it went in.</summary>
    public (T Held, T Given) Heat => (Over(2), given);

    public void Begin(RadialLanes lanes, int lane)
    {
        crumb = new(lanes, lane);
        solids = T.Load(lanes.Solids, lane);
        reach = T.Load(lanes.Reach, lane);
        start = T.Load(lanes.Water, lane);
        var enters = T.Load(lanes.Start, lane);
        var holds = crumb.ContentAt(enters);
        front.Begin();
        (owed, isOut) = (T.Of(0), false);
        (Surface, surfaceBefore, Browning, Drift) = (enters, enters, T.Of(0), T.Of(0));
        (given, givenBefore, fromFilm, browningRate) = (holds, holds, T.Of(0), T.Of(0));
        for (var cell = 0; cell < shells.Length; cell++)
        {
            var thick = T.Of(grid.Depth[cell]) * reach;
            shells[cell] = new()
            {
                Content = holds,
                Before = holds,
                Total = holds,
                TotalBefore = holds,
                Held = start,
                Water = start,
                Celsius = enters,
                Outer = T.Of(grid.Outer[cell]) * reach,
                Inner = (T.Of(grid.Outer[cell]) * reach) + thick,
                PerThick = T.Of(1) / thick,
            };
        }

        (oven, stands) = (new(lanes, lane), lanes.Hearth is not null);
        hearth.Begin(lanes.Hearth, oven.WallsAt(0), T.Load(lanes.Transfer, lane));
    }

    /// <param name="step">From 1 on, one after the other.</param>
    public void Advance(int step)
    {
        var perArea = T.Of(1) / (solids * reach * reach);
        var ratio = T.Of(clock.Ratio[step]);
        Dry(T.Of(clock.Length(step)), ratio);
        owed = isOut ? Owes() : owed;
        for (var pass = 1; ; pass++)
        {
            Guess(in crumb, start);
            Press(in crumb, pass == 1);
            Exchange(in crumb, perArea);
            Balance(step, ratio);
            Solve();
            var off = Off(in crumb, start);
            if (pass == MostPasses || AllNear(off))
            {
                Drift = T.Max(Drift, off);
                break;
            }

            GuessAgain(off, T.Of(pass < WholePasses ? 1 : 0.5));
        }

        Rest();
        Settle(step);
    }

    /// <summary>Only whether to go on hangs on the other lanes of a pack, never what is found for one.</summary>
    private bool AllNear(T off)
    {
        off.Store(perLane, 0);
        return !perLane.AsSpan().ContainsAnyExceptInRange(double.NegativeInfinity, FarOff);
    }

    /// <summary>How far the shell that is farthest off comes to rest from where the Newton step saw it, K.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private T Off(ref readonly CrumbPack<T> laws, T whole)
    {
        var all = shells.AsSpan();
        ReadOnlySpan<T> changes = right.AsSpan(0, all.Length);
        var most = T.Of(0);
        for (var cell = 0; cell < all.Length; cell++)
        {
            ref var shell = ref all[cell];
            var change = changes[cell];
            (shell.Celsius, shell.Water) = laws.RestAt(shell.Guessed + change, shell.Held, whole - shell.Dried);
            var off = shell.Celsius - shell.Guess - (shell.Slope * change);
            most = T.Max(most, T.Max(off, T.Of(0) - off));
        }

        return most;
    }

    /// <summary>The next Newton step starts where this one led. A lane that is near enough stays as it is, to the last digit.</summary>
    private void GuessAgain(T off, T share)
    {
        var all = shells.AsSpan();
        ReadOnlySpan<T> changes = right.AsSpan(0, all.Length);
        for (var cell = 0; cell < all.Length; cell++)
        {
            ref var shell = ref all[cell];
            shell.Guessed = T.WhereLess(T.Of(FarOff), off, shell.Guessed + (share * changes[cell]), shell.Guessed);
        }
    }

    // The loops are short on purpose: beyond a budget the compiler stops to put the operations of a pack in line, and each becomes a call.

    /// <summary>What dries in the step, and where the content would be if all went on as it did.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Dry(T length, T ratio)
    {
        var all = shells.AsSpan();
        var whole = start;
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
    private void Guess(ref readonly CrumbPack<T> laws, T whole)
    {
        var all = shells.AsSpan();
        for (var cell = 0; cell < all.Length; cell++)
        {
            ref var shell = ref all[cell];
            (shell.Guess, shell.Slope, shell.Water) = laws.StateAt(shell.Guessed, shell.Held, whole - shell.Dried);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Press(ref readonly CrumbPack<T> laws, bool first)
    {
        var all = shells.AsSpan();
        for (var cell = 0; cell < all.Length; cell++)
        {
            ref var shell = ref all[cell];
            (shell.Vapour, shell.VapourSlope) = laws.VapourAt(shell.Guess);
            if (first)
            {
                shell.Wet = laws.Wetness(shell.Water);
            }
        }
    }

    /// <summary>What passes between neighbours, and how that follows either of them.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Exchange(ref readonly CrumbPack<T> laws, T perArea)
    {
        var all = shells.AsSpan();
        var conducts = laws.Conductivity;
        ReadOnlySpan<double> conductance = grid.Conductance.AsSpan(0, all.Length);
        for (var cell = 0; cell < all.Length - 1; cell++)
        {
            ref var shell = ref all[cell];
            ref var next = ref all[cell + 1];
            var mean = T.Of(0.5) * (shell.Guess + next.Guess);
            var both = T.Of(2) * shell.Wet * next.Wet / (shell.Wet + next.Wet + T.Of(1e-9));
            var carries = laws.PermeanceAt(mean) * both * CrumbPack<T>.Carried(mean);
            var face = T.Of(conductance[cell]) * perArea;
            shell.Flow = face * ((conducts * (next.Guess - shell.Guess)) + (carries * (next.Vapour - shell.Vapour)));
            shell.Here = face * (conducts + (carries * shell.VapourSlope)) * shell.Slope;
            shell.There = face * (conducts + (carries * next.VapourSlope)) * next.Slope;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Balance(int step, T ratio)
    {
        var all = shells.AsSpan();
        var (newest, newer, older) = (T.Of(clock.Newest[step]), T.Of(clock.Newer[step]), T.Of(clock.Older[step]));
        var vapourContent = crumb.VapourContent;
        ReadOnlySpan<double> shares = grid.Share.AsSpan(0, all.Length);
        var below = lower.AsSpan(0, all.Length);
        var middle = diagonal.AsSpan(0, all.Length);
        var above = upper.AsSpan(0, all.Length);
        var known = right.AsSpan(0, all.Length);
        var (flow, here, there) = (T.Of(0), T.Of(0), T.Of(0));
        for (var cell = 0; cell < all.Length; cell++)
        {
            ref var shell = ref all[cell];
            var share = T.Of(shares[cell]);
            var holds = shell.Guessed + (vapourContent * shell.Dried);
            known[cell] = shell.Flow - flow - (share * ((newest * holds) + (newer * shell.Total) + (older * shell.TotalBefore)));
            middle[cell] = (share * newest) + there + shell.Here;
            below[cell] = T.Of(0) - here;
            above[cell] = T.Of(0) - shell.There;
            (flow, here, there) = (shell.Flow, shell.Here, shell.There);
        }

        Meet(step, ratio);
        var surface = T.Of(grid.Dimensions) / (solids * reach);
        ref var last = ref all[^1];
        known[^1] += (surface * into * (meets - last.Guess)) - (T.Of(shares[^1]) * newest * vapourContent * fromFilm);
        middle[^1] += surface * into * last.Slope;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Solve() => Tridiagonal.Solve<T>(lower, diagonal, upper, right, scratch);

    private void Rest()
    {
        var all = shells.AsSpan();
        ReadOnlySpan<T> changes = right.AsSpan(0, all.Length);
        for (var cell = 0; cell < all.Length; cell++)
        {
            ref var shell = ref all[cell];
            (shell.Before, shell.Content) = (shell.Content, shell.Guessed + changes[cell]);
            shell.Held = T.Min(shell.Held, shell.Water);
        }
    }

    /// <summary>The surface between the oven and the middle of the outermost shell.</summary>
    private void Meet(int step, T ratio)
    {
        var seconds = clock.Seconds[step];
        ref var last = ref shells[^1];
        var warm = last.Guess;
        var conducts = crumb.Conductivity + (crumb.PermeanceAt(warm) * last.Wet * CrumbPack<T>.Carried(warm) * last.VapourSlope);
        within = T.Of(2 / grid.Width[^1]) * conducts / reach;
        var about = Surface + (ratio * (Surface - surfaceBefore));
        (into, meets) = oven.HeatAt(seconds, about);
        if (stands)
        {
            var (free, lies) = ((T.Of(1) - hearth.Share) * into, hearth.Share * hearth.Conducts);
            (into, meets) = (free + lies, ((free * meets) + (lies * hearth.Ahead(ratio))) / T.Max(free + lies, T.Of(1e-12)));
        }

        if (oven.SteamsAt(seconds))
        {
            Steam(seconds, warm);
        }
        else
        {
            settling = T.Of(0);
        }

        outside = into;
        into = within * into / (within + into);
    }

    /// <summary>
    /// Steam that settles where the surface is colder than its dew point, as a chord from the one to the other: the slope at a cold surface is so slight
    /// that a step would overshoot by far. The surface is found anew between it and the outermost shell, since drawn on from before it would swing.
    /// </summary>
    private void Steam(double seconds, T warm)
    {
        var steam = oven.VapourAt(seconds);
        var dew = crumb.DewPoint(steam);
        var (met, settles, surface) = ((within * warm) + (into * meets), T.Of(0), Surface);
        for (var round = 0; round < 6; round++)
        {
            var (over, _) = crumb.VapourAt(surface);
            var heat = oven.Settling(surface, over, crumb.Pressure) * crumb.VapourContent;
            settles = T.WhereLess(surface, dew, heat * (steam - over) / T.Max(dew - surface, T.Of(0.01)), T.Of(0));
            surface = T.Of(0.5) * (surface + ((met + (settles * dew)) / (within + into + settles)));
        }

        var both = into + settles;
        meets = T.WhereLess(T.Of(0), settles, ((into * meets) + (settles * dew)) / both, meets);
        (settling, dewPoint, into) = (settles, dew, both);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Settle(int step)
    {
        var (newest, newer, older) = (T.Of(clock.Newest[step]), T.Of(clock.Newer[step]), T.Of(clock.Older[step]));
        var all = shells.AsSpan();
        var vapourContent = crumb.VapourContent;
        ReadOnlySpan<T> changes = right.AsSpan(0, all.Length);
        ref var last = ref all[^1];
        var takes = T.Of(grid.Dimensions) / (solids * reach) * into * (meets - last.Guess - (last.Slope * changes[^1]));
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
        presses = T.Min(presses, crumb.Pressure);
        surfaceBefore = Surface;
        Surface = ((within * last.Celsius) + (outside * meets)) / (within + outside);
        if (stands)
        {
            hearth.Advance(Surface, oven.WallsAt(clock.Seconds[step]), clock.Length(step), clock.Ratio[step]);
        }

        Evaporate(clock.Seconds[step], from, to, presses, warmth, T.Of(clock.Length(step)));
    }

    private void Evaporate(double seconds, T from, T to, T presses, T warmth, T length)
    {
        var hindrance = (T.Of(0.5) * (from + to) / crumb.PermeanceAt(warmth)) + oven.Hindrance(warmth);
        var perDepth = solids * start;
        front.Note(oven.OpenAt(seconds) * (presses - oven.VapourAt(seconds)) / hindrance / perDepth);
        front.Settle(T.Max(T.Of(0), length * settling * (dewPoint - Surface) / (crumb.VapourContent * perDepth)));

        var rate = BrowningRate.At(Surface);
        Browning += T.Of(0.5) * length * (rate + browningRate);
        browningRate = rate;
    }

    /// <summary>Over the volume: temperature, water, or heat with the vapour that dried away.</summary>
    private T Over(int which)
    {
        var sum = T.Of(0);
        for (var cell = 0; cell < shells.Length; cell++)
        {
            ref var shell = ref shells[cell];
            sum += T.Of(grid.Share[cell]) * (which == 0 ? shell.Celsius : which == 1 ? shell.Water : shell.Total);
        }

        return sum;
    }

    private struct Shell
    {
        // What is kept, now and a step before; Total is with the vapour that dried away.
        public T Content, Before, Total, TotalBefore, Dried, DriedLast, Held, Celsius, Water;

        // Where a step begins its Newton step.
        public T Guessed, Guess, Slope, Vapour, VapourSlope, Wet;

        // What passes to the shell without, and how that follows this one and that one.
        public T Flow, Here, There;

        // Depth of both faces, and one over what lies between.
        public T Outer, Inner, PerThick;
    }
}
