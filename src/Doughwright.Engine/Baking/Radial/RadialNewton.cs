using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>Finds where the shells of a pack of lanes come to rest in one step of time. Keeps nothing but room to work in.</summary>
/// <remarks>
/// Heat: ρ_s de/dt = ∇·(k ∇T) + ∇·((h_v - c_w T) β ∇p) - h_v (what dries); vapour carries heat and its water goes back as liquid. One Newton step
/// from a guess; where a shell dries out and that lands far off, some more, of such lanes only. Source: house-bake-lanes.
/// </remarks>
internal sealed class RadialNewton<T> where T : struct, ILane<T>
{
    /// <summary>A lane in which a shell came to rest farther than this from where its Newton step saw it, K, takes another.</summary>
    private const double FarOff = 0.5;

    /// <summary>So many are whole ones. Temperature over heat content bends one way at boiling and the other where crumb is dry, and whole ones may go back and forth between the two.</summary>
    private const int WholePasses = 4;

    private readonly RadialShells<T> shells;
    private readonly RadialSurface<T> surface;
    private readonly RadialGrid grid;
    private readonly T[] lower, diagonal, upper, right, scratch;
    private readonly double[] perLane = new double[T.Width];

    public RadialNewton(RadialShells<T> shells, RadialSurface<T> surface)
    {
        (this.shells, this.surface, grid) = (shells, surface, shells.Grid);
        T[] New() => new T[grid.Cells];
        (lower, diagonal, upper, right, scratch) = (New(), New(), New(), New(), New());
    }

    /// <summary>What the outermost shell still went on from where its Newton step began, J per kg of dry matter.</summary>
    public T OutermostChange => right[^1];

    /// <summary>Whether a lane of the pack came to rest near where its last Newton step saw it.</summary>
    public bool IsSettled(int laneOfPack) => perLane[laneOfPack] <= FarOff;

    /// <summary>From where every shell is guessed to where it comes to rest.</summary>
    /// <param name="moment">The end of the step.</param>
    /// <param name="fromFilm">Water that left the film on the surface so far, kg per kg of dry matter in the outermost shell.</param>
    /// <returns>Whether every lane settled.</returns>
    public bool Take(ref readonly CrumbPack<T> crumb, ref readonly RadialSize<T> size, BakeClock clock, int moment, T fromFilm)
    {
        var most = NewtonPasses.Most;
        for (var pass = 1; ; pass++)
        {
            Guess(in crumb, size.Water);
            Press(in crumb, pass == 1);
            Exchange(in crumb, size.PerArea);
            // How vapour helps the last half shell falls to nothing where it begins to boil. A lane that goes on to and fro over that leap has it held.
            if (pass <= WholePasses)
            {
                surface.Conduct(in crumb, in shells.Outermost, 2 / grid.Width[^1], size.Reach);
            }

            Balance(in crumb, in size, clock, moment, fromFilm);
            Solve();
            var off = Off(in crumb, size.Water);
            var near = AllNear(off);
            if (near || pass == most)
            {
                Rest();
                return near;
            }

            GuessAgain(off, T.Of(pass < WholePasses ? 1 : 0.5));
        }
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
        var all = shells.All;
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
        var all = shells.All;
        ReadOnlySpan<T> changes = right.AsSpan(0, all.Length);
        for (var cell = 0; cell < all.Length; cell++)
        {
            ref var shell = ref all[cell];
            shell.Guessed = T.WhereLess(T.Of(FarOff), off, shell.Guessed + (share * changes[cell]), shell.Guessed);
        }
    }

    // The loops are short on purpose: beyond a budget the compiler stops to put the operations of a pack in line, and each becomes a call.

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Guess(ref readonly CrumbPack<T> laws, T whole)
    {
        var all = shells.All;
        for (var cell = 0; cell < all.Length; cell++)
        {
            ref var shell = ref all[cell];
            (shell.Guess, shell.Slope, shell.Water) = laws.StateAt(shell.Guessed, shell.Held, whole - shell.Dried);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Press(ref readonly CrumbPack<T> laws, bool first)
    {
        var all = shells.All;
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
        var all = shells.All;
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
    private void Balance(ref readonly CrumbPack<T> crumb, ref readonly RadialSize<T> size, BakeClock clock, int moment, T fromFilm)
    {
        var all = shells.All;
        var (newest, newer, older) = (T.Of(clock.Newest[moment]), T.Of(clock.Newer[moment]), T.Of(clock.Older[moment]));
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

        ref var last = ref all[^1];
        surface.Meet(in crumb, in last, clock.Seconds[moment], T.Of(clock.Ratio[moment]));
        var into = size.Surface * surface.Into;
        known[^1] += (into * (surface.Meets - last.Guess)) - (T.Of(shares[^1]) * newest * vapourContent * fromFilm);
        middle[^1] += into * last.Slope;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private void Solve() => Tridiagonal.Solve<T>(lower, diagonal, upper, right, scratch);

    private void Rest()
    {
        var all = shells.All;
        ReadOnlySpan<T> changes = right.AsSpan(0, all.Length);
        for (var cell = 0; cell < all.Length; cell++)
        {
            ref var shell = ref all[cell];
            (shell.Before, shell.Content) = (shell.Content, shell.Guessed + changes[cell]);
            shell.Held = T.Min(shell.Held, shell.Water);
        }
    }
}
