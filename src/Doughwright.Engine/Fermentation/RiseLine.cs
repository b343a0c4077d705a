using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// What lies between the two ends of one step: places in it are shares of the step from 0 to 1, and everything runs straight between the
/// ends but for the drop at a fold. Time of a growth and growth at a time use the same line, so one undoes the other.
/// </summary>
internal struct RiseLine<T>(T length, T untilMinutes, T untilGrowth) where T : struct, ILane<T>
{
    /// <summary>A place outside every step: it does not happen here.</summary>
    private const double Elsewhere = 2;

    /// <summary>Forgives the rounding of a step that is an odd part of the stage.</summary>
    private const double Slack = 1e-12;

    public RisePoint<T> Before;
    public RisePoint<T> After;

    /// <summary>Minutes at which the stage ended for a lane; +infinity while it has not.</summary>
    public T Stopped;

    private readonly T length = length;
    private readonly T perLength = T.Of(1) / length;
    private readonly T untilMinutes = untilMinutes;
    private readonly T untilGrowth = untilGrowth;
    private T begin;

    /// <summary>Where the stage ends in this step.</summary>
    private T stop;

    /// <summary>What the folds of this step have taken so far, and the place of the last of them.</summary>
    private T lostMoles;
    private T lostGrowth;
    private T from;

    /// <summary>Takes up a step whose two ends are set, and looks where the stage ends in it.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Look(double minutes)
    {
        begin = T.Of(minutes);
        from = lostMoles = lostGrowth = T.Of(0);
        stop = T.Min(WhereMinutes(untilMinutes), WhereGrowth(untilGrowth));
    }

    /// <summary>Does one fold where it falls in this step, in those lanes whose turn it is and that do not stop before.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Fold(RiseFolds folds, int fold, int lane, in RisePack<T> pack)
    {
        var entry = fold * folds.Lanes + lane;
        var waits = T.Load(folds.At, entry);
        var place = folds.IsByGrowth ? WhereGrowth(waits) : WhereMinutes(waits);
        var (zero, one) = (T.Of(0), T.Of(1));
        var done = T.Load(folds.Done, lane);
        var number = T.Of(fold);
        var turn = T.WhereLess(done, number, zero, T.WhereLess(number, done, zero, one));
        var running = T.WhereLess(Stopped, T.Of(double.PositiveInfinity), zero, turn);
        var folded = T.WhereLess(place, stop, running, zero);

        var missing = one - T.Min(one, place);
        var growth = After.Growth - missing * (After.Growth + lostGrowth - Before.Growth);
        var celsius = After.Celsius - missing * (After.Celsius - Before.Celsius);
        var lost = folded * T.Of(1 - RiseFolds.Keeps) * pack.InBubbles(growth, celsius, After.Moles);
        After.Moles -= lost;
        lostMoles += lost;
        var left = pack.Growth(After.Moles, After.PerMole, After.Held);
        lostGrowth += After.Growth - left;
        After.Growth = T.WhereLess(zero, folded, left, After.Growth);
        from = T.WhereLess(zero, folded, place, from);
        stop = T.Min(WhereMinutes(untilMinutes), WhereGrowth(untilGrowth));

        (done + folded).Store(folds.Done, lane);
        T.WhereLess(zero, folded, growth, T.Load(folds.Growth, entry)).Store(folds.Growth, entry);
        T.WhereLess(zero, folded, begin + place * length, T.Load(folds.Minutes, entry)).Store(folds.Minutes, entry);
    }

    /// <summary>
    /// Goes on to the end of the step. A lane that stopped earlier keeps its point and its time; one that stops in this step goes back to
    /// where it does.
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void GoOn()
    {
        var (one, never) = (T.Of(1), T.Of(double.PositiveInfinity));
        var missing = one - T.Min(one, stop);
        var stopped = Stopped;
        T Here(T before, T after, T lost) => T.WhereLess(stopped, never, before, after - missing * (after + lost - before));

        var zero = T.Of(0);
        Before.Moles = Here(Before.Moles, After.Moles, lostMoles);
        Before.Escaped = Here(Before.Escaped, After.Escaped, zero);
        Before.Substrate = Here(Before.Substrate, After.Substrate, zero);
        Before.Yeast = Here(Before.Yeast, After.Yeast, zero);
        Before.Dose = Here(Before.Dose, After.Dose, zero);
        Before.Aged = Here(Before.Aged, After.Aged, zero);
        Before.Celsius = Here(Before.Celsius, After.Celsius, zero);
        Before.Growth = Here(Before.Growth, After.Growth, lostGrowth);
        Before.Rate = After.Rate;
        var stopsHere = T.WhereLess(one, stop, never, begin + stop * length);
        Stopped = T.WhereLess(stopped, never, stopped, stopsHere);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly T WhereMinutes(T minutes)
    {
        var place = (minutes - begin) * perLength;
        var inside = T.Min(T.Of(1), T.Max(from, place));
        return T.WhereLess(T.Of(1 + Slack), place, T.Of(Elsewhere), inside);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly T WhereGrowth(T growth)
    {
        var first = Before.Growth - lostGrowth;
        var crossing = T.Min(T.Of(1), T.Max(from, (growth - first) / (After.Growth - first)));
        var place = T.WhereLess(first, growth, crossing, from);
        return T.WhereLess(After.Growth, growth, T.Of(Elsewhere), place);
    }
}
