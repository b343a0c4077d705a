using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Doughwright.Engine.Numerics;

/// <summary>Two lanes in a 128-bit pack.</summary>
internal readonly struct Lane2(Vector128<double> value) : ILane<Lane2>
{
    private readonly Vector128<double> value = value;

    public static int Width => 2;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane2 Of(double value) => new(Vector128.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane2 Load(ReadOnlySpan<double> values, int index) => new(Vector128.Create(values[index..]));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(Span<double> values, int index) => value.CopyTo(values[index..]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane2 operator +(Lane2 a, Lane2 b) => new(a.value + b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane2 operator -(Lane2 a, Lane2 b) => new(a.value - b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane2 operator *(Lane2 a, Lane2 b) => new(a.value * b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane2 operator /(Lane2 a, Lane2 b) => new(a.value / b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane2 Sqrt(Lane2 a) => new(Vector128.Sqrt(a.value));

    // Compare and select, because the minimum and maximum instructions of different processors disagree about nought and not-a-number.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane2 Min(Lane2 a, Lane2 b) => WhereLess(a, b, a, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane2 Max(Lane2 a, Lane2 b) => WhereLess(b, a, a, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane2 WhereLess(Lane2 a, Lane2 b, Lane2 whenTrue, Lane2 whenFalse) =>
        new(Vector128.ConditionalSelect(Vector128.LessThan(a.value, b.value), whenTrue.value, whenFalse.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane2 Round(Lane2 a) =>
        new(a.value + Vector128.Create(LaneBits.RoundingShift) - Vector128.Create(LaneBits.RoundingShift));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane2 ScaleOfTwo(Lane2 whole)
    {
        var bits = (whole.value + Vector128.Create(LaneBits.BiasOverWhole)).AsInt64();
        return new((bits << LaneBits.FractionBits).AsDouble());
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Lane2 Exponent, Lane2 Fraction) Split(Lane2 positive)
    {
        var bits = positive.value.AsInt64();
        var biased = ((bits >>> LaneBits.FractionBits) | Vector128.Create(LaneBits.OfWhole)).AsDouble();
        var exponent = new Lane2(biased - Vector128.Create(LaneBits.BiasOverWhole));
        var fraction = new Lane2(((bits & Vector128.Create(LaneBits.FractionMask)) | Vector128.Create(LaneBits.OfOne)).AsDouble());
        var rootTwo = Of(LaneBits.RootTwo);
        return (WhereLess(fraction, rootTwo, exponent, exponent + Of(1)), WhereLess(fraction, rootTwo, fraction, fraction * Of(0.5)));
    }
}
