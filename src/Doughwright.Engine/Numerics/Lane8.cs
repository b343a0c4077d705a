using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Doughwright.Engine.Numerics;

/// <summary>Eight lanes in a 512-bit pack.</summary>
internal readonly struct Lane8(Vector512<double> value) : ILane<Lane8>
{
    private readonly Vector512<double> value = value;

    public static int Width => 8;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Of(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Load(ReadOnlySpan<double> values, int index) => new(Vector512.Create(values[index..]));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(Span<double> values, int index) => value.CopyTo(values[index..]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator +(Lane8 a, Lane8 b) => new(a.value + b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator -(Lane8 a, Lane8 b) => new(a.value - b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator *(Lane8 a, Lane8 b) => new(a.value * b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator /(Lane8 a, Lane8 b) => new(a.value / b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Sqrt(Lane8 a) => new(Vector512.Sqrt(a.value));

    // Compare and select, because the minimum and maximum instructions of different processors disagree about nought and not-a-number.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Min(Lane8 a, Lane8 b) => WhereLess(a, b, a, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Max(Lane8 a, Lane8 b) => WhereLess(b, a, a, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 WhereLess(Lane8 a, Lane8 b, Lane8 whenTrue, Lane8 whenFalse) =>
        new(Vector512.ConditionalSelect(Vector512.LessThan(a.value, b.value), whenTrue.value, whenFalse.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Round(Lane8 a) =>
        new(a.value + Vector512.Create(LaneBits.RoundingShift) - Vector512.Create(LaneBits.RoundingShift));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 ScaleOfTwo(Lane8 whole)
    {
        var bits = (whole.value + Vector512.Create(LaneBits.BiasOverWhole)).AsInt64();
        return new((bits << LaneBits.FractionBits).AsDouble());
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Lane8 Exponent, Lane8 Fraction) Split(Lane8 positive)
    {
        var bits = positive.value.AsInt64();
        var biased = ((bits >>> LaneBits.FractionBits) | Vector512.Create(LaneBits.OfWhole)).AsDouble();
        var exponent = new Lane8(biased - Vector512.Create(LaneBits.BiasOverWhole));
        var fraction = new Lane8(((bits & Vector512.Create(LaneBits.FractionMask)) | Vector512.Create(LaneBits.OfOne)).AsDouble());
        var rootTwo = Of(LaneBits.RootTwo);
        return (WhereLess(fraction, rootTwo, exponent, exponent + Of(1)), WhereLess(fraction, rootTwo, fraction, fraction * Of(0.5)));
    }
}
