namespace Doughwright.Engine.Heat.Warming;

/// <summary>
/// A closed space with nothing to heat it of its own. Air and the inner skin of its walls are taken as one: they share heat within minutes,
/// while the space takes an hour.
/// </summary>
/// <param name="AirCubicMetres">Air in it.</param>
/// <param name="WattsPerKelvin">Heat lost through walls, door and gaps for each degree above the room: UA.</param>
/// <param name="WallJoulesPerKelvin">Heat capacity of the inner skin, racks included, that follows the air.</param>
/// <param name="MostWaterKilograms">Water for which there is room beside the dough.</param>
/// <param name="MostDoughKilograms">
/// Dough for which there is room beside the water: a bowl of 5 l for each kilogram, and half of the space lost around what is round.
/// common practice, no source.
/// </param>
internal sealed record Enclosure(
    double AirCubicMetres, Guess WattsPerKelvin, Guess WallJoulesPerKelvin, double MostWaterKilograms, double MostDoughKilograms)
{
    private const double AirJoulesPerCubicMetreKelvin = 1200;

    /// <summary>
    /// An oven of 60 l, shut and off: it takes some 450 W to hold 180 K above the room, and its liner and racks are 8 kg of steel, its inner
    /// pane 2 kg of glass. Source: place-oven.
    /// </summary>
    public static Enclosure Oven { get; } = new(0.060, new(2.5, 0.35), new(5500, 0.30), 4, 5);

    /// <summary>A cool box of 30 l with 25 mm of foam: 0.6 m² of wall at 0.9 W/(m² K), and the gap of its lid. Source: place-cool-box.</summary>
    public static Enclosure CoolBox { get; } = new(0.028, new(0.7, 0.30), new(1500, 0.35), 3, 2.5);

    /// <summary>
    /// A kitchen cupboard of 100 l that is shut: 1.3 m² of 16 mm board at 2.3 W/(m² K), and the gaps of its door; half of the board follows
    /// the air. Source: place-cupboard.
    /// </summary>
    public static Enclosure Cupboard { get; } = new(0.100, new(3.5, 0.40), new(11000, 0.40), 4, 10);

    /// <summary>Heat capacity of the air in it, J/K.</summary>
    public double AirJoulesPerKelvin => AirCubicMetres * AirJoulesPerCubicMetreKelvin;
}
