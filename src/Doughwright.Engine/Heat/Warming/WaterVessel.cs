using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Heat.Warming;

/// <summary>A jug, jar, pot or basin of water, as high as it is wide.</summary>
/// <remarks>V = π d³/4 and A = π d² + 2 π d²/4 = 3 π d²/2, foot and top included. Source: jug-shape.</remarks>
internal static class WaterVessel
{
    private const double KilogramsPerCubicMetre = 990;

    /// <summary>
    /// Exchange over the whole outer area of a covered jug, W/(m² K): between 40 and 80 °C radiation gives 6 to 7 and free convection 4 to 6.
    /// Source: hot-surfaces.
    /// </summary>
    public static Guess Exchange { get; } = new(11, 0.20);

    /// <summary>Heat capacity of the jug against that of the water in it: some 0.5 kg of glass or china for each litre. Source: jug-shape.</summary>
    public const double WallShare = 0.10;

    /// <summary>Width in m of a vessel that is full with so much water.</summary>
    public static double Width(double kilograms) => Elementary.Pow(4 * kilograms / (KilogramsPerCubicMetre * Math.PI), 1.0 / 3.0);

    /// <summary>Outer area in m².</summary>
    public static double OuterSquareMetres(double kilograms)
    {
        var width = Width(kilograms);
        return 1.5 * Math.PI * width * width;
    }

    /// <summary>Surface of the water in m².</summary>
    public static double OpenSquareMetres(double kilograms)
    {
        var width = Width(kilograms);
        return 0.25 * Math.PI * width * width;
    }

    /// <summary>Heat capacity of water and vessel, J/K.</summary>
    public static double JoulesPerKelvin(double kilograms) =>
        kilograms * 1000 * DefaultHeats.Water.JoulesPerGramKelvin * (1 + WallShare);
}
