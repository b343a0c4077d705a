using System.Runtime.CompilerServices;

namespace Doughwright.Engine.Numerics;

/// <summary>One lane: the plain double, and the reference for every wider pack.</summary>
internal readonly struct Lane1(double value) : ILane<Lane1>
{
    private readonly double value = value;

    public static int Width => 1;

    public double Value => value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Of(double value) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Load(ReadOnlySpan<double> values, int index) => new(values[index]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(Span<double> values, int index) => values[index] = value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator +(Lane1 a, Lane1 b) => new(a.value + b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator -(Lane1 a, Lane1 b) => new(a.value - b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator *(Lane1 a, Lane1 b) => new(a.value * b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator /(Lane1 a, Lane1 b) => new(a.value / b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Sqrt(Lane1 a) => new(Math.Sqrt(a.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Min(Lane1 a, Lane1 b) => a.value < b.value ? a : b;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Max(Lane1 a, Lane1 b) => a.value > b.value ? a : b;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 WhereLess(Lane1 a, Lane1 b, Lane1 whenTrue, Lane1 whenFalse) => a.value < b.value ? whenTrue : whenFalse;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Round(Lane1 a) => new(a.value + LaneBits.RoundingShift - LaneBits.RoundingShift);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 ScaleOfTwo(Lane1 whole) =>
        new(BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(whole.value + LaneBits.BiasOverWhole) << LaneBits.FractionBits));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Lane1 Exponent, Lane1 Fraction) Split(Lane1 positive)
    {
        var bits = BitConverter.DoubleToInt64Bits(positive.value);
        var exponent = BitConverter.Int64BitsToDouble((bits >>> LaneBits.FractionBits) | LaneBits.OfWhole) - LaneBits.BiasOverWhole;
        var fraction = BitConverter.Int64BitsToDouble((bits & LaneBits.FractionMask) | LaneBits.OfOne);
        return fraction < LaneBits.RootTwo ? (new(exponent), new(fraction)) : (new(exponent + 1), new(fraction * 0.5));
    }
}
