namespace Doughwright.Engine.Numerics;

/// <summary>
/// A pack of <see cref="Width"/> doubles worked on at once. Offers only operations that IEEE 754 fixes to the last bit, so that a kernel
/// written over it gives the same digits at every width and on every machine: + - * /, square root, minimum, maximum and
/// compare-and-select.
/// </summary>
/// <remarks>No fused multiply-add, no estimates, nothing that looks across the pack: what one lane does must not depend on another.</remarks>
internal interface ILane<T> where T : struct, ILane<T>
{
    static abstract int Width { get; }

    /// <summary>Every lane the same value.</summary>
    static abstract T Of(double value);

    /// <summary>Lanes from <paramref name="values"/>, beginning at <paramref name="index"/>.</summary>
    static abstract T Load(ReadOnlySpan<double> values, int index);

    void Store(Span<double> values, int index);

    static abstract T operator +(T a, T b);

    static abstract T operator -(T a, T b);

    static abstract T operator *(T a, T b);

    static abstract T operator /(T a, T b);

    static abstract T Sqrt(T a);

    /// <summary>The smaller of the two; <paramref name="b"/> when they are equal or not comparable (a &lt; b ? a : b).</summary>
    static abstract T Min(T a, T b);

    /// <summary>The larger of the two; <paramref name="b"/> when they are equal or not comparable (a &gt; b ? a : b).</summary>
    static abstract T Max(T a, T b);

    /// <summary>Lane by lane: a &lt; b ? whenTrue : whenFalse.</summary>
    static abstract T WhereLess(T a, T b, T whenTrue, T whenFalse);

    /// <summary>Rounds each lane to the nearest whole number, ties to even. Valid for magnitudes below 2^51.</summary>
    static abstract T Round(T a);

    /// <summary>Two to the power of each lane, which holds a whole number from -1022 to 1023. Exact.</summary>
    static abstract T ScaleOfTwo(T whole);

    /// <summary>Splits each positive normal lane into 2^exponent * fraction with the fraction in [sqrt(1/2), sqrt(2)). Exact.</summary>
    static abstract (T Exponent, T Fraction) Split(T positive);
}
