using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// The gas in a dough that holds air and carbon dioxide, part of the latter dissolved in the dough's water:
/// V = (B + √(B² + 4 k A)) / 2 with A = na RT/P, k = RT H W, B = A + n RT/P - k.
/// <para>
/// V in mL; na, n amounts of air and carbon dioxide in mol; P pressure in Pa; H <see cref="Henry"/>; W water in mL.
/// </para>
/// Ideal gas, Henry's and Dalton's laws, in equilibrium: exact in both limits. Surface tension and vapour are left out (under 3 %).
/// Source: rise-derivation.
/// </summary>
internal static class GasVolume
{
    /// <summary>The gas constant in J/(mol K).</summary>
    public const double GasConstant = 8.314462618;

    /// <summary>R times a million: mL Pa/(mol K).</summary>
    public const double GasConstantMillilitres = 1e6 * GasConstant;

    /// <summary>mL.</summary>
    public static double Of(double carbonDioxideMoles, double airMoles, double waterMillilitres, Temperature temperature, Pressure pressure)
    {
        var perMole = GasConstantMillilitres * temperature.Kelvins / pressure.Pascals;
        var dissolved = GasConstant * temperature.Kelvins * Henry.At(temperature) * waterMillilitres;
        return Of(new Lane1(airMoles * perMole), new Lane1(carbonDioxideMoles * perMole), new Lane1(dissolved)).Value;
    }

    /// <summary>The same over lanes, in volumes.</summary>
    /// <param name="air">A: the air by itself, mL.</param>
    /// <param name="carbonDioxide">All carbon dioxide as if it were gas, mL.</param>
    /// <param name="held">k: gas the water holds when the carbon dioxide is at full pressure, mL.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Of<T>(T air, T carbonDioxide, T held) where T : struct, ILane<T>
    {
        var b = air + carbonDioxide - held;
        return T.Of(0.5) * (b + T.Sqrt(b * b + T.Of(4) * (held * air)));
    }
}
