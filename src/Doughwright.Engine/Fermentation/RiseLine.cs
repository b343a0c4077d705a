using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// What lies between the two ends of one step: places in it are shares of the step from 0 to 1, and everything runs straight between the
/// ends but for the drop at a fold. Time of a growth and growth at a time use the same line, so one undoes the other.
/// </summary>
internal struct RiseLine<T>(RisePoint<T> before, RisePoint<T> after, T begin, T end) where T : struct, ILane<T>
{
    /// <summary>A place outside every step: it does not happen here.</summary>
    private const double Elsewhere = 2;

    /// <summary>Forgives the rounding of a step that is an odd part of the stage.</summary>
    private const double ClockSlack = 1 + 1e-12;

    private readonly RisePoint<T> before = before;
    private readonly T begin = begin;
    private readonly T end = end;
    private RisePoint<T> after = after;

    /// <summary>What the folds of this step have taken so far, and the place of the last of them.</summary>
    private T lostMoles = T.Of(0);
    private T lostGrowth = T.Of(0);
    private T from = T.Of(0);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T WhereMinutes(T minutes)
    {
        var place = T.Min(T.Of(1), T.Max(from, (minutes - begin) / (end - begin)));
        return T.WhereLess(end * T.Of(ClockSlack), minutes, T.Of(Elsewhere), place);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T WhereGrowth(T growth)
    {
        var first = before.Growth - lostGrowth;
        var crossing = T.Min(T.Of(1), T.Max(from, (growth - first) / (after.Growth - first)));
        var place = T.WhereLess(first, growth, crossing, from);
        return T.WhereLess(after.Growth, growth, T.Of(Elsewhere), place);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T MinutesAt(T place)
    {
        var minutes = begin + place * (end - begin);
        return T.WhereLess(T.Of(1), place, T.Of(double.PositiveInfinity), minutes);
    }

    /// <summary>The point at a place; the end of the step, to the last digit, from 1 on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly RisePoint<T> At(T place)
    {
        var missing = T.Of(1) - T.Min(T.Of(1), place);
        var point = after;
        point.Moles = after.Moles - missing * (after.Moles + lostMoles - before.Moles);
        point.Substrate = after.Substrate - missing * (after.Substrate - before.Substrate);
        point.Yeast = after.Yeast - missing * (after.Yeast - before.Yeast);
        point.Dose = after.Dose - missing * (after.Dose - before.Dose);
        point.Aged = after.Aged - missing * (after.Aged - before.Aged);
        point.Celsius = after.Celsius - missing * (after.Celsius - before.Celsius);
        point.Growth = after.Growth - missing * (after.Growth + lostGrowth - before.Growth);
        return point;
    }

    /// <summary>Does one fold where it falls in this step, in those lanes whose turn it is and that do not stop before.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Fold(RiseFolds folds, int fold, int lane, T stop, T stopped, in RisePack<T> pack)
    {
        var entry = fold * folds.Lanes + lane;
        var waits = T.Load(folds.At, entry);
        var place = folds.IsByGrowth ? WhereGrowth(waits) : WhereMinutes(waits);
        var (zero, one) = (T.Of(0), T.Of(1));
        var done = T.Load(folds.Done, lane);
        var number = T.Of(fold);
        var turn = T.WhereLess(done, number, zero, T.WhereLess(number, done, zero, one));
        var running = T.WhereLess(stopped, T.Of(double.PositiveInfinity), zero, turn);
        var folded = T.WhereLess(place, stop, running, zero);

        var there = At(place);
        var lost = folded * T.Of(1 - RiseFolds.Keeps) * pack.InBubbles(there.Growth, there.Celsius);
        var growth = pack.Growth(after.Moles - lost, after.PerMole, after.Held);
        lostMoles += lost;
        lostGrowth += folded * (after.Growth - growth);
        after.Moles -= lost;
        after.Growth = T.WhereLess(zero, folded, growth, after.Growth);
        from = T.WhereLess(zero, folded, place, from);

        (done + folded).Store(folds.Done, lane);
        T.WhereLess(zero, folded, there.Growth, T.Load(folds.Growth, entry)).Store(folds.Growth, entry);
        T.WhereLess(zero, folded, MinutesAt(place), T.Load(folds.Minutes, entry)).Store(folds.Minutes, entry);
    }
}
