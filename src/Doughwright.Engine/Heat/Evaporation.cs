using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>Heat that an uncovered wet surface loses by evaporation.</summary>
/// <remarks>
/// Flux g = h_c/(ρ c_p Le^(2/3)) (a_w ρ_v(T_s) - φ ρ_v(T_a)) in kg/(m² s), heat g L with L = 2,501 - 2.361 t kJ/kg; ρ_v is the density of
/// saturated vapour as an ideal gas. ρ c_p Le^(2/3) = 1,070 J/(m³ K), air near 22 °C. Valid for still air and surfaces of -30 to 95 °C; a
/// skin or a crust lowers it much, so it is rough: a factor of two either way. Below 0 °C the surface is frozen and the vapour is that of ice,
/// with L = 2,834 kJ/kg. Source: lewis-evaporation. Source: iapws-r14-08.
/// </remarks>
internal static class Evaporation
{
    private const double LewisJoulesPerCubicMetreKelvin = 1070;
    private const double VapourKilogramsPerMole = 0.018015;
    private const double GasConstant = 8.314462618;

    /// <summary>Heat that ice takes to become vapour, kJ/kg: hardly another from -30 °C to 0 °C.</summary>
    private const double OfIce = 2834;

    /// <summary>Vapour leaving the surface, in kg/(m² s); negative when the air wets it.</summary>
    /// <param name="convective">h_c in W/(m² K), the convective part alone.</param>
    /// <param name="humidity">Relative humidity of the air, 0 to 1.</param>
    /// <param name="waterActivity">Water activity of the surface, 0 to 1.</param>
    public static double Flux(double convective, Temperature surface, Temperature air, double humidity, double waterActivity) =>
        convective / LewisJoulesPerCubicMetreKelvin
        * ((waterActivity * SaturatedVapourDensity(surface)) - (humidity * SaturatedVapourDensity(air)));

    /// <summary>Heat leaving the surface with that vapour, in W/m².</summary>
    public static double HeatFlux(double convective, Temperature surface, Temperature air, double humidity, double waterActivity) =>
        Flux(convective, surface, air, humidity, waterActivity) * 1000 * (surface.Celsius < 0 ? OfIce : 2501 - (2.361 * surface.Celsius));

    /// <summary>
    /// Evaporation written as an extra exchange coefficient, in W/(m² K): the heat flux at one surface temperature over its distance from
    /// the air. Exact at that temperature only; nearer the air the surface in truth tends to the wet bulb, below the air.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The surface is not at least 1 K warmer than the air.</exception>
    public static double ExtraCoefficient(double convective, Temperature surface, Temperature air, double humidity, double waterActivity)
    {
        var difference = (surface - air).Kelvins;
        return difference >= 1
            ? HeatFlux(convective, surface, air, humidity, waterActivity) / difference
            : throw new ArgumentOutOfRangeException(nameof(surface), surface, "The surface must be at least 1 K warmer than the air.");
    }

    private static double SaturatedVapourDensity(Temperature temperature) =>
        SaturatedWater.PressureAt(temperature).Pascals * VapourKilogramsPerMole / (GasConstant * temperature.Kelvins);
}
