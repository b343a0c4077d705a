using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>Ethanol at 20 °C, for the few ingredients that hold some. Source: handbook-heats.</summary>
internal static class Ethanol
{
    public static ThermalProperties Properties { get; } = new(
        SpecificHeat.FromJoulesPerGramKelvin(2.44),
        Density.FromKilogramsPerCubicMetre(789),
        Conductivity.FromWattsPerMetreKelvin(0.168));
}
