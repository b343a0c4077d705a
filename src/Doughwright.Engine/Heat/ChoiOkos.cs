using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>Specific heat, conductivity and density of the constituents of food as functions of temperature.</summary>
/// <remarks>
/// P(t) = A + B t + C t², with t in °C and P in kJ/(kg K), W/(m K) or kg/m³. Valid -40 to 150 °C; stated error of the specific heats
/// about 5 %. Reprints of the table carry misprints. Held here: fat conductivity B = -2.7604e-4 (with e-3 it would fall to nought at 65
/// °C), fat specific heat B = 1.4733e-3, fibre specific heat C = -4.6509e-6, water specific heat A = 4.1762 (4.1289 is 1.3 % low at 20
/// °C). Fat takes no melting heat in this table: <see cref="FatMelting"/> adds it. Source: choi-okos-1986.
/// </remarks>
internal static class ChoiOkos
{
    private const double LowestCelsius = -40;
    private const double HighestCelsius = 150;

    // Rows in the order of FoodConstituent.
    private static readonly Polynomial[] SpecificHeats =
    [
        new(2.0082, 1.2089e-3, -1.3129e-6),
        new(1.9842, 1.4733e-3, -4.8008e-6),
        new(1.5488, 1.9625e-3, -5.9399e-6),
        new(1.8459, 1.8306e-3, -4.6509e-6),
        new(1.0926, 1.8896e-3, -3.6817e-6),
        new(4.1762, -9.0864e-5, 5.4731e-6),
    ];

    private static readonly Polynomial[] Conductivities =
    [
        new(0.17881, 1.1958e-3, -2.7178e-6),
        new(0.18071, -2.7604e-4, -1.7749e-7),
        new(0.20141, 1.3874e-3, -4.3312e-6),
        new(0.18331, 1.2497e-3, -3.1683e-6),
        new(0.32962, 1.4011e-3, -2.9069e-6),
        new(0.57109, 1.7625e-3, -6.7036e-6),
    ];

    private static readonly Polynomial[] Densities =
    [
        new(1329.9, -0.51840, 0),
        new(925.59, -0.41757, 0),
        new(1599.1, -0.31046, 0),
        new(1311.5, -0.36589, 0),
        new(2423.8, -0.28063, 0),
        new(997.18, 3.1439e-3, -3.7574e-3),
    ];

    private static readonly Polynomial SpecificHeatOfColdWater = new(4.0817, -5.3062e-3, 9.9516e-4);

    /// <summary>Specific heat of one constituent. Water below 0 °C is taken as liquid, with its own polynomial.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside -40 to 150 °C.</exception>
    public static SpecificHeat SpecificHeatOf(FoodConstituent constituent, Temperature temperature)
    {
        var celsius = InRange(temperature);
        var polynomial = constituent == FoodConstituent.Water && celsius < 0 ? SpecificHeatOfColdWater : SpecificHeats[(int)constituent];
        return SpecificHeat.FromJoulesPerGramKelvin(polynomial.At(celsius));
    }

    /// <summary>
    /// The coefficients of a specific heat A + B t + C t² in J/(kg K), for those who integrate it. Above 150 °C the table is carried on
    /// beyond its range, as a crust needs it.
    /// </summary>
    public static (double A, double B, double C) SpecificHeatCoefficients(FoodConstituent constituent)
    {
        var polynomial = SpecificHeats[(int)constituent];
        return (1000 * polynomial.A, 1000 * polynomial.B, 1000 * polynomial.C);
    }

    /// <summary>Thermal conductivity of one constituent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside -40 to 150 °C.</exception>
    public static Conductivity ConductivityOf(FoodConstituent constituent, Temperature temperature) =>
        Conductivity.FromWattsPerMetreKelvin(Conductivities[(int)constituent].At(InRange(temperature)));

    /// <summary>Density of one constituent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside -40 to 150 °C.</exception>
    public static Density DensityOf(FoodConstituent constituent, Temperature temperature) =>
        Density.FromKilogramsPerCubicMetre(Densities[(int)constituent].At(InRange(temperature)));

    private static double InRange(Temperature temperature) =>
        Require.Within(temperature.Celsius, LowestCelsius, HighestCelsius, "Temperature of the constituent table, °C");

    private readonly record struct Polynomial(double A, double B, double C)
    {
        public double At(double celsius) => A + (((C * celsius) + B) * celsius);
    }
}
