using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Doughwright.Engine.Numerics;

/// <summary>Four lanes in a 256-bit pack.</summary>
internal readonly struct Lane4(Vector256<double> value) : ILane<Lane4>
{
    private readonly Vector256<double> value = value;

    public static int Width => 4;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Of(double value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Load(ReadOnlySpan<double> values, int index) => new(Vector256.Create(values[index..]));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(Span<double> values, int index) => value.CopyTo(values[index..]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator +(Lane4 a, Lane4 b) => new(a.value + b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator -(Lane4 a, Lane4 b) => new(a.value - b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator *(Lane4 a, Lane4 b) => new(a.value * b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator /(Lane4 a, Lane4 b) => new(a.value / b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Sqrt(Lane4 a) => new(Vector256.Sqrt(a.value));

    // Compare and select, because the minimum and maximum instructions of different processors disagree about nought and not-a-number.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Min(Lane4 a, Lane4 b) => WhereLess(a, b, a, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Max(Lane4 a, Lane4 b) => WhereLess(b, a, a, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 WhereLess(Lane4 a, Lane4 b, Lane4 whenTrue, Lane4 whenFalse) =>
        new(Vector256.ConditionalSelect(Vector256.LessThan(a.value, b.value), whenTrue.value, whenFalse.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Round(Lane4 a) =>
        new(a.value + Vector256.Create(LaneBits.RoundingShift) - Vector256.Create(LaneBits.RoundingShift));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 ScaleOfTwo(Lane4 whole)
    {
        var bits = (whole.value + Vector256.Create(LaneBits.BiasOverWhole)).AsInt64();
        return new((bits << LaneBits.FractionBits).AsDouble());
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Lane4 Exponent, Lane4 Fraction) Split(Lane4 positive)
    {
        var bits = positive.value.AsInt64();
        var biased = ((bits >>> LaneBits.FractionBits) | Vector256.Create(LaneBits.OfWhole)).AsDouble();
        var exponent = new Lane4(biased - Vector256.Create(LaneBits.BiasOverWhole));
        var fraction = new Lane4(((bits & Vector256.Create(LaneBits.FractionMask)) | Vector256.Create(LaneBits.OfOne)).AsDouble());
        var rootTwo = Of(LaneBits.RootTwo);
        return (WhereLess(fraction, rootTwo, exponent, exponent + Of(1)), WhereLess(fraction, rootTwo, fraction, fraction * Of(0.5)));
    }
}
