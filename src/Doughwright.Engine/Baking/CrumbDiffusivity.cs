using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Baking;

/// <summary>How quickly heat moves through crumb while it bakes, steam carrying a good part of it.</summary>
public static class CrumbDiffusivity
{
    /// <summary>
    /// How much quicker a whole risen piece warms than the law says: the best fit to a published small loaf at its risen size is 1.07e-6 m²/s
    /// where the law gives 5.1e-7. Fitted to that loaf, so that loaf is no evidence for it. Source: zhang-2005-loaf.
    /// </summary>
    public const double OfRisenPiece = 2.1;

    /// <summary>
    /// α = exp(0.01 ε - 15.25) in m²/s, with ε the porosity in per cent: an effective value that holds in an oven near 100 °C, three to four
    /// times that of conduction alone. Measured for ε of about 60 to 85.
    /// </summary>
    /// <param name="porosity">Share of gas, 0 to 1.</param>
    /// <remarks>Source: zanoni-diffusivity.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A porosity outside 0 to 1.</exception>
    public static double AtPorosity(double porosity) => Elementary.Exp((Require.Within(porosity, 0, 1, "Porosity") * 100 * 0.01) - 15.25);
}
