using System.Runtime.CompilerServices;

namespace Doughwright.Engine.Numerics;

/// <summary>One lane: the plain double, and the reference for every wider pack.</summary>
internal readonly struct Lane1(double value) : ILane<Lane1>
{
    private const double RootTwo = 1.4142135623730951;

    private readonly double value = value;

    public static int Width => 1;

    public static Lane1 Of(double value) => new(value);

    public static Lane1 Load(ReadOnlySpan<double> values, int index) => new(values[index]);

    public void Store(Span<double> values, int index) => values[index] = value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator +(Lane1 a, Lane1 b) => new(a.value + b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator -(Lane1 a, Lane1 b) => new(a.value - b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator *(Lane1 a, Lane1 b) => new(a.value * b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator /(Lane1 a, Lane1 b) => new(a.value / b.value);

    public static Lane1 Sqrt(Lane1 a) => new(Math.Sqrt(a.value));

    public static Lane1 Min(Lane1 a, Lane1 b) => a.value < b.value ? a : b;

    public static Lane1 Max(Lane1 a, Lane1 b) => a.value > b.value ? a : b;

    public static Lane1 WhereLess(Lane1 a, Lane1 b, Lane1 whenTrue, Lane1 whenFalse) => a.value < b.value ? whenTrue : whenFalse;

    public static Lane1 Round(Lane1 a) => new(Math.Round(a.value, MidpointRounding.ToEven));

    public static Lane1 ScaleOfTwo(Lane1 whole) => new(BitConverter.Int64BitsToDouble(((long)whole.value + 1023) << 52));

    public static (Lane1 Exponent, Lane1 Fraction) Split(Lane1 positive)
    {
        var bits = BitConverter.DoubleToInt64Bits(positive.value);
        var exponent = (double)((bits >> 52) - 1023);
        var fraction = BitConverter.Int64BitsToDouble((bits & 0xF_FFFF_FFFF_FFFF) | (1023L << 52));
        return fraction < RootTwo ? (new(exponent), new(fraction)) : (new(exponent + 1), new(fraction / 2));
    }
}
