using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// How fast the microbes of a sourdough multiply: mu(T) = a x^b exp(-c x), x = Tmax - T in K, mu in 1/h, exactly 0 from Tmax on.
/// Valid 10 to 41 °C. Error: at half and quarter speed the curves lie within 2 K of what the paper's author tells of the yeast, and up to 3 K too
/// slow for the bacteria in the cold of it. Salt up to 4 % and pH 3.5 to 7 do not touch the yeast; they touch the bacteria, which is not in it.
/// Source: gaenzle-1998, gaenzle-faq.
/// </summary>
internal static class SourdoughGrowth
{
    /// <summary>The yeast of sourdough, C. milleri (humilis): quickest at 27 °C, none from 36 °C on.</summary>
    public static GrowthCurve Yeast { get; } = new(0.0124, 2.981, 0.3355, 36);

    /// <summary>Its bacteria, L. sanfranciscensis: quickest at 33 °C, none from 41 °C on.</summary>
    public static GrowthCurve Bacteria { get; } = new(0.1267, 1.5404, 0.1931, 41);

    /// <summary>1/h.</summary>
    public static double At(Temperature temperature, GrowthCurve curve) => PerHour(new Lane1(temperature.Celsius), new Lane1(curve.MaximumCelsius), curve).Value;

    /// <summary>The same over lanes, each with a highest temperature of its own.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static T PerHour<T>(T celsius, T maximum, GrowthCurve curve) where T : struct, ILane<T>
    {
        var below = maximum - celsius;
        var zero = T.Of(0);
        // The logarithm needs something above nought; what it gives there is not selected.
        var x = T.Max(below, T.Of(1e-9));
        var rate = T.Of(curve.A) * Elementary.Exp(T.Of(curve.B) * Elementary.Log(x) - T.Of(curve.C) * x);
        return T.WhereLess(zero, below, rate, zero);
    }
}
