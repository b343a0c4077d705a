using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// How much carbon dioxide water holds: H(T) = 3.3e-4 exp(2400 K (1/T - 1/298.15 K)) mol per m³ of water and Pa of carbon dioxide.
/// Valid 0 to 40 °C. Error: 3 % (published constants 3.3 to 3.4e-4, 2300 to 2400 K). Sugar and salt, which lower it, are not in it.
/// Source: sander-henry.
/// </summary>
internal static class Henry
{
    private const double At25MolesPerCubicMetrePascal = 3.3e-4;
    private const double SlopeKelvins = 2400;
    private const double Zero = 273.15;
    private const double Reference = 298.15;

    /// <summary>mol/(m³ Pa).</summary>
    public static double At(Temperature temperature) => At(new Lane1(temperature.Celsius)).Value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T At<T>(T celsius) where T : struct, ILane<T> =>
        T.Of(At25MolesPerCubicMetrePascal)
        * Elementary.Exp(T.Of(SlopeKelvins) / (celsius + T.Of(Zero)) - T.Of(SlopeKelvins / Reference));
}
