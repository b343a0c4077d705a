using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking;

/// <summary>How quickly a dry crumb browns at a temperature, as published for lean bread on a hot plate.</summary>
/// <remarks>
/// k = 42,000 exp(-64,151/(R T)) in 1/s, R = 8.314 J/(mol K), T in K of the surface itself; colour difference ΔE = 52 (1 - exp(-∫k dt)). Measured at
/// 140 to 250 °C. Sugar, milk and egg in the dough or brushed on it brown sooner: such crusts are ranked by it, never painted. Source: zanoni-browning.
/// </remarks>
internal static class BrowningRate
{
    private const double LnFactor = 10.645424897265505;
    private const double KelvinsOfActivation = 64151 / 8.314;

    /// <summary>Colour difference of a crust that can get no browner.</summary>
    public const double MostDifference = 52;

    /// <summary>k in 1/s.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T At<T>(T celsius) where T : struct, ILane<T> =>
        Elementary.Exp(T.Of(LnFactor) - (T.Of(KelvinsOfActivation) / (celsius + T.Of(273.15))));

    /// <inheritdoc cref="At{T}(T)"/>
    /// <exception cref="ArgumentOutOfRangeException">At or below absolute zero.</exception>
    public static double At(double celsius) => At(new Lane1(Quantities.Require.Within(celsius, -273, 2000, "Temperature of a crust, °C"))).Value;

    /// <summary>ΔE after an exponent ∫k dt.</summary>
    public static double Difference(double exponent) => MostDifference * (1 - Elementary.Exp(-exponent));
}
