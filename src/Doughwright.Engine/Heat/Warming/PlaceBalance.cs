using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat.Warming;

/// <summary>Temperatures of the three lumps in °C, or their rates in K/s; and the heat that left to the room, in J or W.</summary>
internal readonly record struct PlaceState(double Water, double Inside, double Dough, double Lost)
{
    public PlaceState Plus(PlaceState rate, double seconds) => new(
        Water + (rate.Water * seconds), Inside + (rate.Inside * seconds), Dough + (rate.Dough * seconds), Lost + (rate.Lost * seconds));
}

/// <summary>Where heat goes in a warm place.</summary>
/// <remarks>
/// C_w T_w' = -G_wi (T_w - T_i) - G_wd (T_w - T_d) - G_wr (T_w - T_r) - E
/// C_i T_i' = G_wi (T_w - T_i) - G_id (T_i - T_d) - G_ir (T_i - T_r) + P + κ E
/// C_d T_d' = G_id (T_i - T_d) + G_wd (T_w - T_d) - G_dr (T_d - T_r)
/// E is what open water loses by evaporation into air of 85 % humidity; the share κ of it is given back inside, where vapour meets the walls,
/// and the rest leaves with what leaks. Source: place-balance. Source: lewis-evaporation.
/// </remarks>
internal static class PlaceBalance
{
    /// <summary>
    /// Free convection over a hot surface as small as the mouth of a jug, W/(m² K): a plume, twice what rises from a dough. Source: hot-surfaces.
    /// </summary>
    private const double PlumeConvection = 8;

    private const double ClosedHumidity = 0.85;

    /// <summary>Share of the vapour's heat that stays inside; half where nobody knows. Source: place-balance.</summary>
    public const double KeptShare = 0.5;

    public static PlaceState Rate(PlaceBodies bodies, PlaceState state, double roomCelsius)
    {
        var toInside = bodies.WaterToInside * (state.Water - state.Inside);
        var toDough = bodies.WaterToDough * (state.Water - state.Dough);
        var waterLost = bodies.WaterToRoom * (state.Water - roomCelsius);
        var insideToDough = bodies.InsideToDough * (state.Inside - state.Dough);
        var insideLost = bodies.InsideToRoom * (state.Inside - roomCelsius);
        var doughLost = bodies.DoughToRoom * (state.Dough - roomCelsius);
        var vapour = bodies.OpenSquareMetres > 0 ? bodies.OpenSquareMetres * VapourWatts(state.Water, state.Inside) : 0;
        return new(
            (-toInside - toDough - waterLost - vapour) / bodies.WaterJoulesPerKelvin,
            (toInside - insideToDough - insideLost + bodies.LampWatts + (KeptShare * vapour)) / bodies.InsideJoulesPerKelvin,
            (insideToDough + toDough - doughLost) / bodies.DoughJoulesPerKelvin,
            waterLost + insideLost + doughLost + ((1 - KeptShare) * vapour));
    }

    /// <summary>Heat that open water gives up as vapour, W/m².</summary>
    private static double VapourWatts(double water, double inside) => Evaporation.HeatFlux(
        PlumeConvection, Temperature.FromCelsius(water), Temperature.FromCelsius(inside), ClosedHumidity, waterActivity: 1);
}
