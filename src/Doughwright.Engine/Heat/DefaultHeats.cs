using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>Specific heats that are taken as they stand instead of from composition.</summary>
internal static class DefaultHeats
{
    /// <summary>Flour at 12 to 13.5 % water: 1.80 to 1.88 in print. The component model gives 1.98. Source: handbook-heats.</summary>
    public static SpecificHeat Flour { get; } = SpecificHeat.FromJoulesPerGramKelvin(1.80);

    /// <summary>Water. Source: handbook-heats.</summary>
    public static SpecificHeat Water { get; } = SpecificHeat.FromJoulesPerGramKelvin(4.18);

    /// <summary>Specific heat of what bowls and trays are made of; plastic stands for polypropylene. Source: vessel-heats.</summary>
    public static SpecificHeat Of(VesselMaterial material) => SpecificHeat.FromJoulesPerGramKelvin(material switch
    {
        VesselMaterial.Steel => 0.50,
        VesselMaterial.Glass => 0.84,
        VesselMaterial.Ceramic => 0.85,
        VesselMaterial.Plastic => 1.7,
        VesselMaterial.Aluminium => 0.90,
        _ => throw new ArgumentOutOfRangeException(nameof(material), material, "No specific heat is known for this material."),
    });

    /// <summary>
    /// Heat capacity of a vessel, in J/K: nought when the author says that there is none, null when mass or material is not known.
    /// </summary>
    public static double? JoulesPerKelvinOf(Vessel? vessel) => vessel switch
    {
        null => null,
        { Mass: null, Material: null } => 0,
        { Mass: { } mass, Material: { } material } => mass * Of(material),
        _ => null,
    };
}
