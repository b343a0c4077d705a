using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Fermentation;

/// <summary>Where a pack of lanes stands in its rise.</summary>
internal struct RisePoint<T> where T : struct, ILane<T>
{
    /// <summary>Carbon dioxide in the dough, dissolved or not, mol.</summary>
    public T Moles;

    /// <summary>Carbon dioxide made since the dough was last pressed that it did not hold, mol.</summary>
    public T Escaped;

    /// <summary>Carbon dioxide made in the step that ends here, mol.</summary>
    public T Made;

    /// <summary>Sugar left, g of hexose.</summary>
    public T Substrate;

    /// <summary>Fresh-equivalent yeast, g.</summary>
    public T Yeast;

    /// <summary>Effective dose of that yeast (<see cref="Fermentation.Dose"/>).</summary>
    public T Dose;

    /// <summary>Hours at 27 °C that count toward growth of the yeast.</summary>
    public T Aged;

    public T Celsius;

    /// <summary>Relative rate at that temperature; where the dough is not one temperature, the mean of its shells' rates.</summary>
    public T Rate;

    /// <summary>Volume against the volume after mixing.</summary>
    public T Growth;

    /// <summary>mL per mol of gas at that temperature.</summary>
    public T PerMole;

    /// <summary>Gas the water holds at that temperature, mL.</summary>
    public T Held;

    public static RisePoint<T> Load(RiseState state, in RisePack<T> pack, int lane)
    {
        var point = new RisePoint<T>
        {
            Moles = T.Load(state.Moles, lane),
            Escaped = T.Load(state.Escaped, lane),
            Substrate = T.Load(state.Substrate, lane),
            Yeast = T.Load(state.Yeast, lane),
            Dose = T.Load(state.Dose, lane),
            Aged = T.Load(state.Aged, lane),
            Celsius = T.Load(state.Celsius, lane),
            Growth = T.Load(state.Growth, lane),
        };
        point.Warm(pack);
        // In the middle of a stage the shells that the step before ended with still hold.
        point.Rate = state.IsUnderWay ? T.Load(state.Rate, lane) : point.Rate;
        return point;
    }

    public readonly void Store(RiseState state, int lane)
    {
        Moles.Store(state.Moles, lane);
        Escaped.Store(state.Escaped, lane);
        Rate.Store(state.Rate, lane);
        Substrate.Store(state.Substrate, lane);
        Yeast.Store(state.Yeast, lane);
        Dose.Store(state.Dose, lane);
        Aged.Store(state.Aged, lane);
        Celsius.Store(state.Celsius, lane);
        Growth.Store(state.Growth, lane);
    }

    // A step of Heun's method (second order) in three parts. They are methods of their own because the compiler stops inlining lane
    // operators in a method that is too long; between them lanes go by reference, because by value they are copied in halves, which
    // stalls.

    /// <summary>What follows from the temperature alone.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Warm(in RisePack<T> pack)
    {
        Rate = pack.Rate(Celsius);
        PerMole = pack.PerMole(Celsius);
        Held = pack.Held(Celsius);
    }

    /// <summary>The same but for the rate.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void WarmGas(in RisePack<T> pack)
    {
        PerMole = pack.PerMole(Celsius);
        Held = pack.Held(Celsius);
    }

    /// <summary>The rate of a dough that is not one temperature: each shell at its own, by its share of the volume.</summary>
    /// <param name="shells">Temperature of each shell in every lane, [shell * lanes + lane].</param>
    /// <param name="at">The pack's first entry of the first shell.</param>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void WarmShells(ReadOnlySpan<double> shells, ReadOnlySpan<double> shares, int at, int lanes, in RisePack<T> pack)
    {
        var rate = T.Of(shares[0]) * pack.Rate(T.Load(shells, at));
        for (var shell = 1; shell < shares.Length; shell++)
            rate += T.Of(shares[shell]) * pack.Rate(T.Load(shells, at + shell * lanes));
        Rate = rate;
    }

    /// <summary>
    /// Yeast grows, uses sugar and makes gas. The substrate moves by a form of Heun's method that cannot overshoot below
    /// nought (modified Patankar), so what is used was there.
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Ferment(in RisePoint<T> from, in T hours, in RisePack<T> pack)
    {
        var zero = T.Of(0);
        var halfHours = T.Of(0.5) * hours;

        // Growth begins within a step, not at its ends: only the part beyond the lag counts.
        Aged = from.Aged + halfHours * (from.Rate + Rate) * pack.GrowthPerRate;
        var grown = T.Max(zero, Aged - pack.GrowthLag) - T.Max(zero, from.Aged - pack.GrowthLag);
        // Yeast comes up to its room and never beyond; a long step of a dough full of yeast would leap over it, farther each time.
        var room = pack.YeastAtMost - from.Yeast;
        var toMiddle = T.Min(room, T.Of(0.5) * grown * Multiplying(from.Yeast, pack));
        var middle = from.Yeast + toMiddle;
        var gained = T.Min(room, grown * Multiplying(middle, pack));
        Yeast = from.Yeast + gained;

        // The dose follows the yeast by its slope, which needs no power in the loop: 1 up to 3 %, b dose / yeast above.
        var doseAtMiddle = from.Dose + toMiddle * DoseSlope(from.Dose, from.Yeast, pack);
        Dose = from.Dose + gained * DoseSlope(doseAtMiddle, middle, pack);

        // Use of sugar at the beginning is first S / (S + K), at the end last S1 / (S1 + K), S1 the predicted sugar. The fractions are
        // brought together, because a division waits longer than several products.
        var first = pack.UseRate * from.Dose * from.Rate;
        var last = pack.UseRate * Dose * Rate;
        var withHalf = from.Substrate + pack.HalfSubstrate;
        var predicted = (from.Substrate + hours * pack.Maltose * from.Rate) * withHalf / (withHalf + hours * first);
        var predictedWithHalf = predicted + pack.HalfSubstrate;
        var supplied = from.Substrate + halfHours * pack.Maltose * (from.Rate + Rate);
        var whole = withHalf * predicted * predictedWithHalf;
        var used = halfHours * (first * from.Substrate * predictedWithHalf + last * withHalf * predicted);
        var part = supplied / (whole + used);
        Substrate = part * whole;
        Made = part * used * T.Of(1 / RiseCoefficients.HexoseGramsPerMole);
    }

    /// <summary>New gas stays or escapes, and blows the dough up.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Swell(in RisePoint<T> from, in RisePack<T> pack)
    {
        var retained = pack.Retained(from.Growth);
        var predicted = pack.Growth(from.Moles + Made * retained, PerMole, Held);
        var held = Made * T.Of(0.5) * (retained + pack.Retained(predicted));
        Moles = from.Moles + held;
        Escaped = from.Escaped + (Made - held);
        Growth = pack.Growth(Moles, PerMole, Held);
    }

    /// <summary>g of new yeast per hour at 27 °C: mu X (1 - (X - X0)/D). Source: yeast-growth-pyler.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Multiplying(T yeast, in RisePack<T> pack) =>
        pack.GrowthRate * yeast * (T.Of(1) - (yeast - pack.YeastAtFirst) * pack.PerGrowthRoom);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T DoseSlope(T dose, T yeast, in RisePack<T> pack) =>
        T.WhereLess(yeast, T.Of(Fermentation.Dose.CrowdedPercent), T.Of(1), pack.CrowdedExponent * dose / yeast);
}
