using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// How much a spice kneaded into the dough slows yeast down: f = 1 / (1 + (c / c50)²), c in g of ground spice per 100 g of the dough's
/// water. Uncertain by a factor of 2 in c50. Spice in a filling does nothing to the dough. Source: wright-1954, cinnamon-advice.
/// </summary>
internal static class SpiceFactor
{
    /// <summary>A dose at which the yeast works at half speed, in g per 100 g of water.</summary>
    public const double CinnamonHalf = 4.5;

    /// <inheritdoc cref="CinnamonHalf"/>
    public const double CloveHalf = 1.0;

    /// <inheritdoc cref="CinnamonHalf"/>
    public const double AllspiceHalf = 1.5;

    /// <inheritdoc cref="CinnamonHalf"/>
    public const double MustardHalf = 0.8;

    public static double Of(Mass spice, Mass water, double halfGramsPer100GramsWater)
    {
        var c = 100 * (spice / water) / halfGramsPer100GramsWater;
        return 1 / (1 + c * c);
    }
}
