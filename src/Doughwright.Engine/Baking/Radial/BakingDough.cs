using Doughwright.Engine.Heat;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>What of a dough counts in the oven, whatever its shape.</summary>
/// <param name="Water">kg per kg of dry matter.</param>
/// <param name="Heat">Heat capacity of dry matter at 0 °C, J/(kg K).</param>
/// <param name="HeatSlope">How it grows, J/(kg K²).</param>
/// <param name="Density">Without gas, kg/m³.</param>
/// <param name="Conductivity">Without gas, W/(m K).</param>
/// <remarks>From composition; density and conductivity at 60 °C, half way through a bake. Source: choi-okos-1986.</remarks>
internal sealed record BakingDough(double Water, double Heat, double HeatSlope, double Density, double Conductivity)
{
    /// <summary>The least water that counts as dough, kg per kg of dry matter: below it nothing bakes as crumb does.</summary>
    public const double LeastWater = 0.1;

    private const double Cold = 25;
    private const double Hot = 95;
    private const double WaterHeat = 4190;

    /// <summary>Null when a constituent is unknown or there is too little water for a dough.</summary>
    public static BakingDough? Of(Composition composition)
    {
        if (ThermalProperties.Of(composition, Temperature.FromCelsius(60)) is not { } middle
            || ThermalProperties.Of(composition, Temperature.FromCelsius(Cold)) is not { } cold
            || ThermalProperties.Of(composition, Temperature.FromCelsius(Hot)) is not { } hot
            || WaterOf(composition) is not (>= LeastWater and var water))
        {
            return null;
        }

        // The polynomial of dry matter is nearly straight: what it holds at two temperatures fixes it.
        double Dry(ThermalProperties at) => (1000 * at.SpecificHeat.JoulesPerGramKelvin * (1 + water)) - (WaterHeat * water);
        var slope = (Dry(hot) - Dry(cold)) / (Hot - Cold);
        return new(water, Dry(cold) - (slope * Cold), slope, middle.Density.KilogramsPerCubicMetre, middle.Conductivity.WattsPerMetreKelvin);
    }

    /// <summary>
    /// Of a dough of which only the heat capacity is known: with 1,700 J/(kg K) for dry matter that tells its water, and water and dry matter
    /// tell the rest as they do in a lean dough. Null when that is no dough.
    /// </summary>
    /// <param name="joulesPerKilogramKelvin">Of the dough.</param>
    public static BakingDough? Of(double joulesPerKilogramKelvin)
    {
        const double Dry = 1700;
        var water = (joulesPerKilogramKelvin - Dry) / (WaterHeat - joulesPerKilogramKelvin);
        return water is >= LeastWater and < 20 ? new(water, Dry - 50, 1.5, 1000 * (1 + water) / ((1 / 1.5) + water), 0.25 + (0.3 * water / (1 + water))) : null;
    }

    private static double? WaterOf(Composition composition) =>
        composition.Water / (composition.Protein + composition.Fat + composition.Carbohydrate + composition.Ash + (composition.Alcohol ?? 0));
}
