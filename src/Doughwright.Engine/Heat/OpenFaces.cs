using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>How the outside of a body differs from place to place: where it is wet and open, and what lies below it.</summary>
/// <param name="Wet">Share of its outside (of its upper face, where it has a back) that is open and wet, 0 to 1.</param>
/// <param name="Convective">The part of its coefficient that is convection, 0 to 1; the rest shines and dries nothing.</param>
/// <param name="Humidity">Of the air, 0 to 1.</param>
/// <param name="HasBack">
/// A layer on a tray: its under side has a surface of its own, dry, with all of the vessel on it. Its coefficient is that of the upper one.
/// </param>
internal sealed record OpenFaces(double Wet, double Convective, double Humidity, bool HasBack)
{
    /// <summary>What dry and wet take together over all of its outside while it is still warm, W/(m² K): for choosing steps, not for answers.</summary>
    public double Altogether(double coefficient, Temperature start, Temperature air) => (start - air).Kelvins < 1
        ? coefficient
        : coefficient + (Wet * (HasBack ? 0.5 : 1) * Evaporation.ExtraCoefficient(Convective * coefficient, start, air, Humidity, waterActivity: 1));

    /// <summary>Of still air over all that a body gives off. Source: exchange-defaults.</summary>
    public const double StillAir = 0.45;

    /// <summary>Of a room. Source: lewis-evaporation.</summary>
    public const double Room = 0.5;
}
