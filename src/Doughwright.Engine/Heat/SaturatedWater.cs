using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>Where water and its vapour are in balance: the boiling point at a pressure and the vapour pressure at a temperature.</summary>
/// <remarks>
/// One quadratic in β = p^(1/4) and ϑ = T + n9/(T - n10), p in MPa and T in K, solved for either side:
/// β²ϑ² + n1 β²ϑ + n2 β² + n3 βϑ² + n4 βϑ + n5 β + n6 ϑ² + n7 ϑ + n8 = 0.
/// Valid 273.15 to 647.096 K and 611.213 Pa to 22.064 MPa. Stated error of the pressure below 0.03 %. Source: iapws-if97.
/// </remarks>
internal static class SaturatedWater
{
    private const double N1 = 1167.0521452767;
    private const double N2 = -724213.16703206;
    private const double N3 = -17.073846940092;
    private const double N4 = 12020.824702470;
    private const double N5 = -3232555.0322333;
    private const double N6 = 14.915108613530;
    private const double N7 = -4823.2657361591;
    private const double N8 = 405113.40542057;
    private const double N9 = -0.23855557567849;
    private const double N10 = 650.17534844798;

    private const double TripleKelvins = 273.16;
    private const double TriplePascals = 611.657;

    /// <summary>The temperature at which water boils under a pressure.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 611.213 Pa to 22.064 MPa.</exception>
    public static Temperature BoilingPoint(Pressure pressure)
    {
        var megapascals = Require.Within(pressure.Pascals, 611.213, 22.064e6, "Pressure of boiling water, Pa") / 1e6;
        var beta = Math.Sqrt(Math.Sqrt(megapascals));
        var e = (beta * beta) + (N3 * beta) + N6;
        var f = (N1 * beta * beta) + (N4 * beta) + N7;
        var g = (N2 * beta * beta) + (N5 * beta) + N8;
        var d = 2 * g / (-f - Math.Sqrt((f * f) - (4 * e * g)));
        var sum = N10 + d;
        return Temperature.FromKelvins((sum - Math.Sqrt((sum * sum) - (4 * (N9 + (N10 * d))))) / 2);
    }

    /// <summary>The temperature at which water boils at an altitude, in standard weather.</summary>
    public static Temperature BoilingPoint(Length altitude) => BoilingPoint(StandardAtmosphere.PressureAt(altitude));

    /// <summary>The pressure of vapour in balance with ice: ln(p/p_t) = (1/θ) Σ a θ^b with θ = T/T_t. Source: iapws-r14-08.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside -100 to 0.01 °C; the release itself goes down to 50 K.</exception>
    public static Pressure VapourPressureOfIce(Temperature temperature)
    {
        Require.Within(temperature.Celsius, -100, TripleKelvins - 273.15, "Temperature of ice, °C");
        var theta = temperature.Kelvins / TripleKelvins;
        var sum = (-21.2144006 * Elementary.Pow(theta, 0.00333333333)) + (27.3203819 * Elementary.Pow(theta, 1.20666667)) + (-6.10598130 * Elementary.Pow(theta, 1.70333333));
        return Pressure.FromPascals(TriplePascals * Elementary.Exp(sum / theta));
    }

    /// <summary>The pressure of vapour that air of a temperature holds at the most, over ice where it freezes.</summary>
    public static Pressure PressureAt(Temperature temperature) => temperature.Celsius < 0 ? VapourPressureOfIce(temperature) : VapourPressure(temperature);

    /// <summary>The pressure of vapour in balance with water.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 373.946 °C.</exception>
    public static Pressure VapourPressure(Temperature temperature)
    {
        Require.Within(temperature.Celsius, 0, 373.946, "Temperature of saturated water, °C");
        var kelvins = temperature.Kelvins;
        var theta = kelvins + (N9 / (kelvins - N10));
        var a = (theta * theta) + (N1 * theta) + N2;
        var b = (N3 * theta * theta) + (N4 * theta) + N5;
        var c = (N6 * theta * theta) + (N7 * theta) + N8;
        var root = 2 * c / (-b + Math.Sqrt((b * b) - (4 * a * c)));
        return Pressure.FromPascals(root * root * root * root * 1e6);
    }

    /// <summary>Pressure of vapour in balance with water in Pa, and how it rises with temperature in Pa/K, by the same equation.</summary>
    /// <param name="celsius">0 to 373.946 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static (double Pascals, double PascalsPerKelvin) VapourPressureAndSlope(double celsius)
    {
        var temperature = Temperature.FromCelsius(celsius);
        var pascals = VapourPressure(temperature).Pascals;
        var beta = Math.Sqrt(Math.Sqrt(pascals / 1e6));
        var shifted = temperature.Kelvins - N10;
        var theta = temperature.Kelvins + (N9 / shifted);
        // Both partial derivatives of the quadratic that ties β to ϑ.
        var byTheta = (beta * beta * ((2 * theta) + N1)) + (beta * ((2 * N3 * theta) + N4)) + (2 * N6 * theta) + N7;
        var byBeta = (2 * beta * ((theta * theta) + (N1 * theta) + N2)) + (N3 * theta * theta) + (N4 * theta) + N5;
        var slope = -byTheta / byBeta * (1 - (N9 / (shifted * shifted)));
        return (pascals, 4e6 * beta * beta * beta * slope);
    }
}
