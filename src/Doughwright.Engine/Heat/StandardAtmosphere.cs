using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>Air pressure at an altitude in the standard atmosphere.</summary>
/// <remarks>
/// p = p0 (1 - L H / T0)^(g/(R L)), with p0 = 101,325 Pa, T0 = 288.15 K, L = 0.0065 K/m, g = 9.80665 m/s², R = 287.05287 J/(kg K) and H the
/// altitude. Valid -2,000 to 11,000 m. The altitude is taken as geopotential, which moves the boiling point by at most 0.009 K up to 4 km;
/// weather moves the pressure by some 3 %, which is 0.8 K. Source: iso-2533.
/// </remarks>
internal static class StandardAtmosphere
{
    private const double SeaLevelPascals = 101325;
    private const double SeaLevelKelvins = 288.15;
    private const double LapseKelvinsPerMetre = 0.0065;
    private const double Exponent = 9.80665 / (287.05287 * LapseKelvinsPerMetre);

    /// <exception cref="ArgumentOutOfRangeException">Outside -2,000 to 11,000 m.</exception>
    public static Pressure PressureAt(Length altitude)
    {
        var metres = Require.Within(altitude.Metres, -2000, 11000, "Altitude in the standard atmosphere, m");
        return Pressure.FromPascals(SeaLevelPascals * Elementary.Pow(1 - (LapseKelvinsPerMetre * metres / SeaLevelKelvins), Exponent));
    }
}
