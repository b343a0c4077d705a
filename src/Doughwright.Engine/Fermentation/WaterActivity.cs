using Doughwright.Engine.Numerics;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>
/// Water activity of solutions at 25 °C, from 0 to 1: the humidity they keep in the air above them, and what yeast feels of sugar and salt.
/// </summary>
internal static class WaterActivity
{
    public const double GramsPerMoleWater = 18.015;
    public const double GramsPerMoleSalt = 58.443;

    /// <summary>Sucrose takes up water when yeast splits it into two hexoses: 1 g becomes 1.0526 g.</summary>
    public const double HexosePerSucrose = 1.0526;

    /// <summary>
    /// Raoult's law, aw = nw / (nw + n), amounts of water and solute in mol. For dilute solutions; 0.005 too high for sucrose at 40 % and
    /// 0.05 at 67 %. Source: raoult.
    /// </summary>
    public static double Raoult(double waterMoles, double soluteMoles) =>
        Positive(waterMoles, nameof(waterMoles)) / (waterMoles + NotNegative(soluteMoles, nameof(soluteMoles)));

    /// <summary>
    /// Norrish's equation, aw = Xw exp(-K Xs²), X mole fractions of water and solute, for one solute that is no salt. Valid above aw 0.85.
    /// Source: norrish-baeza-2010.
    /// </summary>
    public static double Norrish(double waterMoles, double soluteMoles, double k)
    {
        var water = Raoult(waterMoles, soluteMoles);
        return water * Elementary.Exp(-k * (1 - water) * (1 - water));
    }

    /// <inheritdoc cref="Norrish(double, double, double)"/>
    public static double Norrish(Mass water, Mass solute, Solute of) =>
        Norrish(water.Grams / GramsPerMoleWater, solute.Grams / of.GramsPerMole, of.NorrishK);

    /// <summary>
    /// Pitzer's equation for sodium chloride at 25 °C. ln aw = -0.03603 m phi with the osmotic coefficient
    /// phi = 1 - 0.3915 √m / (1 + 1.2 √m) + m (0.0765 + 0.2664 exp(-2 √m)) + 0.00127 m², m in mol per kg of water. Valid from 0 to
    /// saturation (6.146). Error: 0.0012 in aw against a polynomial fit, 0.001 at saturation. Source: pitzer-nacl.
    /// </summary>
    public static double SodiumChloride(double molesPerKilogramWater)
    {
        var m = NotNegative(molesPerKilogramWater, nameof(molesPerKilogramWater));
        var root = Math.Sqrt(m);
        var phi = 1 - 0.3915 * root / (1 + 1.2 * root) + m * (0.0765 + 0.2664 * Elementary.Exp(-2 * root)) + 0.00127 * m * m;
        return Elementary.Exp(-0.03603 * m * phi);
    }

    /// <summary>
    /// Ross's rule for mixtures: the product of the activities each solute alone would give in all the water. The error grows below 0.8.
    /// Source: ross-rule.
    /// </summary>
    public static double Ross(params ReadOnlySpan<double> activities)
    {
        var product = 1.0;
        foreach (var activity in activities)
            product *= Require.Within(activity, 0, 1, "Water activity");
        return product;
    }

    /// <summary>
    /// The liquid of a dough: all added water free, the sugar counted as the hexose yeast makes of it within minutes.
    /// For salt up to 3 % and sugar up to 30 % of the flour; salt is harsher to yeast than its activity says. Source: sucrose-inversion.
    /// </summary>
    /// <param name="sugar">Sucrose or as much of other sugars; without lactose.</param>
    public static double OfDough(Mass water, Mass salt, Mass sugar) => Ross(
        Norrish(water, HexosePerSucrose * sugar, Solute.Glucose),
        SodiumChloride(salt.Grams / GramsPerMoleSalt / water.Kilograms));

    private static double Positive(double value, string what) =>
        value > 0 ? value : throw new ArgumentOutOfRangeException(what, value, $"{what} must be above 0.");

    private static double NotNegative(double value, string what) =>
        value >= 0 ? value : throw new ArgumentOutOfRangeException(what, value, $"{what} must not be below 0.");
}
