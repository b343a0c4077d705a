using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// Yeast crowds itself: up to 3 % fresh on flour twice the yeast works twice as fast, above it less: effective dose = X up to 3 %,
/// 3 (X/3)^b above, b = 0.7. X and the result in % of flour; continuous. Error: 0.1 in b, from one pair of doses (2.8 and 5 %).
/// Source: aem-leavening-table, dose-rule.
/// </summary>
internal static class Dose
{
    /// <summary>The dose from which yeast crowds itself, in % of flour.</summary>
    public const double CrowdedPercent = 3;

    public const double CrowdedExponent = 0.7;

    public static double Effective(Percent freshOnFlour, double crowdedExponent = CrowdedExponent)
    {
        var x = Require.Within(freshOnFlour.Value, 0, 100, "Fresh yeast on flour");
        return x <= CrowdedPercent ? x : CrowdedPercent * Elementary.Pow(x / CrowdedPercent, crowdedExponent);
    }
}
