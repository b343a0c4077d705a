using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Fermentation;

/// <summary>The <see cref="RiseCoefficients"/> of one pack of lanes.</summary>
internal readonly struct RisePack<T>(RiseCoefficients c, double[] airMoles, int at) where T : struct, ILane<T>
{
    public readonly T Minimum = T.Load(c.Minimum, at);
    public readonly T Optimum = T.Load(c.Optimum, at);
    public readonly T Maximum = T.Load(c.Maximum, at);
    public readonly T UseRate = T.Load(c.UseRate, at);
    public readonly T Maltose = T.Load(c.Maltose, at);
    public readonly T HalfSubstrate = T.Load(c.HalfSubstrate, at);
    public readonly T GrowthRate = T.Load(c.GrowthRate, at);
    public readonly T GrowthPerRate = T.Load(c.GrowthPerRate, at);
    public readonly T PerGrowthRoom = T.Load(c.PerGrowthRoom, at);
    public readonly T GrowthLag = T.Load(c.GrowthLag, at);
    public readonly T CrowdedExponent = T.Load(c.CrowdedExponent, at);
    public readonly T YeastAtFirst = T.Load(c.YeastAtFirst, at);
    public readonly T YeastAtMost = T.Load(c.YeastAtFirst, at) + (T.Of(1) / T.Load(c.PerGrowthRoom, at));
    public readonly T PerGrowthToCeiling = T.Load(c.PerGrowthToCeiling, at);
    public readonly T Water = T.Load(c.Water, at);
    public readonly T GasFree = T.Load(c.GasFree, at);
    public readonly T Volume = T.Load(c.Volume, at);
    public readonly T PerVolume = T.Load(c.PerVolume, at);
    public readonly T GasPerKelvin = T.Load(c.GasPerKelvin, at);
    public readonly T AirMoles = T.Load(airMoles, at);

    private readonly bool isCulture = c.IsCulture;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Rate(T celsius) => isCulture ? SourdoughGrowth.PerHour(celsius, Maximum, SourdoughGrowth.Yeast) : CardinalRate.Relative(celsius, Minimum, Optimum, Maximum);

    /// <summary>mL per mol of gas at a temperature.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T PerMole(T celsius) => GasPerKelvin * (celsius + T.Of(273.15));

    /// <summary>Gas the dough's water holds when the carbon dioxide is at full pressure, mL.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Held(T celsius) => T.Of(GasVolume.GasConstant) * (celsius + T.Of(273.15)) * Henry.At(celsius) * Water;

    /// <summary>Volume against the volume after mixing.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Growth(T moles, T perMole, T held) => (GasFree + GasVolume.Of(AirMoles * perMole, moles * perMole, held)) * PerVolume;

    /// <summary>
    /// Share of new gas that stays in: 1 - ((v - 1)/(vmax - 1))^4, 0 beyond vmax. A choice that hardly touches a doubling.
    /// Source: rise-ceiling.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Retained(T growth)
    {
        var share = (growth - T.Of(1)) * PerGrowthToCeiling;
        var square = share * share;
        return T.Max(T.Of(0), T.Of(1) - square * square);
    }

    /// <summary>
    /// Carbon dioxide in the bubbles at a growth, mol: all gas less the air. The bounds only catch rounding, when there is none.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T InBubbles(T growth, T celsius, T moles)
    {
        var gas = growth * Volume - GasFree;
        return T.Min(moles, T.Max(T.Of(0), gas / PerMole(celsius) - AirMoles));
    }
}
