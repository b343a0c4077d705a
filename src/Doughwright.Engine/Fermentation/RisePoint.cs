using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Fermentation;

/// <summary>Where a pack of lanes stands in its rise.</summary>
internal struct RisePoint<T> where T : struct, ILane<T>
{
    /// <summary>Carbon dioxide in the dough, dissolved or not, mol.</summary>
    public T Moles;

    /// <summary>Sugar left, g of hexose.</summary>
    public T Substrate;

    /// <summary>Fresh-equivalent yeast, g.</summary>
    public T Yeast;

    /// <summary>Effective dose of that yeast (<see cref="Fermentation.Dose"/>).</summary>
    public T Dose;

    /// <summary>Hours at 27 °C that count toward growth of the yeast.</summary>
    public T Aged;

    public T Celsius;

    /// <summary>Relative rate at that temperature.</summary>
    public T Rate;

    /// <summary>Volume against the volume after mixing.</summary>
    public T Growth;

    /// <summary>mL per mol of gas at that temperature.</summary>
    public T PerMole;

    /// <summary>Gas the water holds at that temperature, mL.</summary>
    public T Held;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static RisePoint<T> Load(RiseState state, in RisePack<T> pack, int lane)
    {
        var celsius = T.Load(state.Celsius, lane);
        return new()
        {
            Moles = T.Load(state.Moles, lane),
            Substrate = T.Load(state.Substrate, lane),
            Yeast = T.Load(state.Yeast, lane),
            Dose = T.Load(state.Dose, lane),
            Aged = T.Load(state.Aged, lane),
            Celsius = celsius,
            Rate = pack.Rate(celsius),
            Growth = T.Load(state.Growth, lane),
            PerMole = pack.PerMole(celsius),
            Held = pack.Held(celsius),
        };
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly void Store(RiseState state, int lane)
    {
        Moles.Store(state.Moles, lane);
        Substrate.Store(state.Substrate, lane);
        Yeast.Store(state.Yeast, lane);
        Dose.Store(state.Dose, lane);
        Aged.Store(state.Aged, lane);
        Celsius.Store(state.Celsius, lane);
        Growth.Store(state.Growth, lane);
    }

    /// <summary>Lane by lane: a &lt; b ? whenTrue : whenFalse.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static RisePoint<T> WhereLess(T a, T b, in RisePoint<T> whenTrue, in RisePoint<T> whenFalse) => new()
    {
        Moles = T.WhereLess(a, b, whenTrue.Moles, whenFalse.Moles),
        Substrate = T.WhereLess(a, b, whenTrue.Substrate, whenFalse.Substrate),
        Yeast = T.WhereLess(a, b, whenTrue.Yeast, whenFalse.Yeast),
        Dose = T.WhereLess(a, b, whenTrue.Dose, whenFalse.Dose),
        Aged = T.WhereLess(a, b, whenTrue.Aged, whenFalse.Aged),
        Celsius = T.WhereLess(a, b, whenTrue.Celsius, whenFalse.Celsius),
        Growth = T.WhereLess(a, b, whenTrue.Growth, whenFalse.Growth),
        Rate = whenFalse.Rate,
        PerMole = whenFalse.PerMole,
        Held = whenFalse.Held,
    };

    /// <summary>
    /// One step of Heun's method (second order). The substrate moves by a form of it that cannot overshoot below nought (modified
    /// Patankar), so what is used is always there; gas made is the substrate used, to the last digit.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly RisePoint<T> After(T hours, T celsius, in RisePack<T> pack)
    {
        RisePoint<T> next = default;
        var half = T.Of(0.5);
        next.Celsius = celsius;
        next.Rate = pack.Rate(celsius);

        // Growth begins within a step, not at its ends: only the part beyond the lag counts.
        next.Aged = Aged + half * hours * (Rate + next.Rate) * pack.GrowthPerRate;
        var zero = T.Of(0);
        var grown = T.Max(zero, next.Aged - pack.GrowthLag) - T.Max(zero, Aged - pack.GrowthLag);
        var toMiddle = half * grown * Multiplying(Yeast, pack);
        var middle = Yeast + toMiddle;
        var gained = grown * Multiplying(middle, pack);
        next.Yeast = Yeast + gained;

        // The dose follows the yeast by its slope, which needs no power in the loop: 1 up to 3 %, b dose / yeast above.
        var doseAtMiddle = Dose + toMiddle * DoseSlope(Dose, Yeast, pack);
        next.Dose = Dose + gained * DoseSlope(doseAtMiddle, middle, pack);

        var useAtFirst = pack.UseRate * Dose * Rate * Substrate / (Substrate + pack.HalfSubstrate);
        var predicted = (Substrate + hours * pack.Maltose * Rate) / (T.Of(1) + hours * useAtFirst / Substrate);
        var useAtEnd = pack.UseRate * next.Dose * next.Rate * predicted / (predicted + pack.HalfSubstrate);
        var supplied = Substrate + half * hours * pack.Maltose * (Rate + next.Rate);
        next.Substrate = supplied / (T.Of(1) + half * hours * (useAtFirst + useAtEnd) / predicted);
        var made = (supplied - next.Substrate) * T.Of(1 / RiseCoefficients.HexoseGramsPerMole);

        next.PerMole = pack.PerMole(celsius);
        next.Held = pack.Held(celsius);
        var retained = pack.Retained(Growth);
        var growth = pack.Growth(Moles + made * retained, next.PerMole, next.Held);
        next.Moles = Moles + made * half * (retained + pack.Retained(growth));
        next.Growth = pack.Growth(next.Moles, next.PerMole, next.Held);
        return next;
    }

    /// <summary>g of new yeast per hour at 27 °C: mu X (1 - (X - X0)/D). Source: yeast-growth-pyler.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Multiplying(T yeast, in RisePack<T> pack) =>
        pack.GrowthRate * yeast * (T.Of(1) - (yeast - pack.YeastAtFirst) * pack.PerGrowthRoom);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T DoseSlope(T dose, T yeast, in RisePack<T> pack) =>
        T.WhereLess(yeast, T.Of(Fermentation.Dose.CrowdedPercent), T.Of(1), pack.CrowdedExponent * dose / yeast);
}
