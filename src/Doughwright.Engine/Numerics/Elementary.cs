using System.Runtime.CompilerServices;

namespace Doughwright.Engine.Numerics;

/// <summary>
/// Exponential, logarithm and power made only of operations that IEEE 754 fixes to the last bit, so that they give the same digits on every
/// system, in the browser and at every lane width. Over lanes nothing is thrown: what has no value becomes infinite or not-a-number
/// in its own lane. The scalar forms refuse such arguments instead.
/// </summary>
internal static class Elementary
{
    /// <summary>Below this, e^x is taken as nought: the next smaller powers of two have no full-precision double.</summary>
    public const double ExpUnderflow = -708;

    /// <summary>Above this, e^x is taken as infinite.</summary>
    public const double ExpOverflow = 709;

    private const double SmallestNormal = 2.2250738585072014e-308;
    private const double TwoTo54 = 18014398509481984.0;

    // ln 2 in two parts. The high part ends in 21 zero bits, so that its product with an exponent is exact.
    private const double LnTwoHigh = 6.93147180369123816490e-01;
    private const double LnTwoLow = 1.90821492927058770002e-10;
    private const double OneOverLnTwo = 1.44269504088896338700;

    /// <summary>
    /// e^x for x from -708 to 709, within 0.7 units in the last place (0.63 the worst of 60,000 against 45 digits). 0 below, +infinity
    /// above.
    /// x = k ln 2 + r with |r| at most ln 2 / 2; e^x = 2^k (1 + r + r^2 q(r)), q the Taylor series up to r^13 / 13!.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Exp<T>(T x) where T : struct, ILane<T>
    {
        // The bound stands first: then a lane that is not a number passes through as itself.
        var inRange = T.Min(T.Of(ExpOverflow), T.Max(T.Of(ExpUnderflow), x));
        var k = T.Round(inRange * T.Of(OneOverLnTwo));
        var high = inRange - k * T.Of(LnTwoHigh);
        var low = k * T.Of(LnTwoLow);
        var r = high - low;

        // In pairs rather than one long chain: the pairs do not wait for one another.
        var r2 = r * r;
        var r4 = r2 * r2;
        var q01 = T.Of(1.0 / 2) + r * T.Of(1.0 / 6);
        var q23 = T.Of(1.0 / 24) + r * T.Of(1.0 / 120);
        var q45 = T.Of(1.0 / 720) + r * T.Of(1.0 / 5040);
        var q67 = T.Of(1.0 / 40320) + r * T.Of(1.0 / 362880);
        var q89 = T.Of(1.0 / 3628800) + r * T.Of(1.0 / 39916800);
        var qAB = T.Of(1.0 / 479001600) + r * T.Of(1.0 / 6227020800);
        var q = q01 + r2 * q23 + r4 * (q45 + r2 * q67 + r4 * (q89 + r2 * qAB));

        // What 1 + high loses in rounding is put back with the small terms.
        var one = T.Of(1);
        var sum = one + high;
        var lost = high - (sum - one);
        var result = (sum + (lost + (r2 * q - low))) * T.ScaleOfTwo(k);
        result = T.WhereLess(x, T.Of(ExpUnderflow), T.Of(0), result);
        return T.WhereLess(T.Of(ExpOverflow), x, T.Of(double.PositiveInfinity), result);
    }

    /// <summary>
    /// The natural logarithm of any positive x, within 0.8 units in the last place (0.76 the worst of 60,000 against 45 digits). -infinity
    /// at 0, not a number below. x = 2^k (1 + f) with 1 + f from sqrt(1/2) to sqrt(2); ln(1 + f) = 2 atanh s, s = f / (2 + f), rearranged
    /// so that f enters unrounded: f - (f^2/2 - s (f^2/2 + 2 s^2/3 + 2 s^4/5 + ... + 2 s^22/23)).
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Log<T>(T x) where T : struct, ILane<T>
    {
        var tiny = T.Of(SmallestNormal);
        var normal = T.WhereLess(x, tiny, x * T.Of(TwoTo54), x);
        var (k, fraction) = T.Split(normal);
        k = T.WhereLess(x, tiny, k - T.Of(54), k);

        var f = fraction - T.Of(1);
        var s = f / (T.Of(2) + f);
        var z = s * s;
        var z2 = z * z;
        var z4 = z2 * z2;
        var p01 = T.Of(2.0 / 3) + z * T.Of(2.0 / 5);
        var p23 = T.Of(2.0 / 7) + z * T.Of(2.0 / 9);
        var p45 = T.Of(2.0 / 11) + z * T.Of(2.0 / 13);
        var p67 = T.Of(2.0 / 15) + z * T.Of(2.0 / 17);
        var p8A = T.Of(2.0 / 19) + z * (T.Of(2.0 / 21) + z * T.Of(2.0 / 23));
        var series = z * (p01 + z2 * p23 + z4 * (p45 + z2 * p67 + z4 * p8A));

        var halfSquare = T.Of(0.5) * f * f;
        var tail = halfSquare - (s * (halfSquare + series) + k * T.Of(LnTwoLow));
        var result = k * T.Of(LnTwoHigh) - (tail - f);

        result = T.WhereLess(T.Of(0), x, result, T.WhereLess(x, T.Of(0), T.Of(double.NaN), T.Of(double.NegativeInfinity)));
        // Infinity and not-a-number come out as they went in.
        return T.WhereLess(x, T.Of(double.PositiveInfinity), result, x);
    }

    /// <summary>
    /// x^y = e^(y ln x) for positive x. The error stays below 1 + 2.5 |y ln x| units in the last place: a few for the moderate powers of
    /// this engine, some hundred near the ends of the range. 0 to a positive power is 0; anything from 0 up to the power 0 is 1; a negative
    /// x has no power here, not even a whole one.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Pow<T>(T x, T y) where T : struct, ILane<T>
    {
        // The logarithm is kept finite so that a power of 0 times it is 0.
        var log = T.Min(T.Of(double.MaxValue), T.Max(T.Of(-double.MaxValue), Log(x)));
        return Exp(y * log);
    }

    /// <inheritdoc cref="Exp{T}(T)"/>
    public static double Exp(double x) => double.IsNaN(x) ? throw NotIn(nameof(x), x, "a number") : Exp(new Lane1(x)).Value;

    /// <inheritdoc cref="Log{T}(T)"/>
    public static double Log(double x) => x > 0 ? Log(new Lane1(x)).Value : throw NotIn(nameof(x), x, "above 0");

    /// <inheritdoc cref="Pow{T}(T, T)"/>
    public static double Pow(double x, double y)
    {
        if (double.IsNaN(y))
            throw NotIn(nameof(y), y, "a number");
        return x > 0 || (x == 0 && y >= 0) ? Pow(new Lane1(x), new Lane1(y)).Value : throw NotIn(nameof(x), x, "above 0");
    }

    private static ArgumentOutOfRangeException NotIn(string name, double value, string range) => new(name, value, $"Must be {range}.");
}
