using Doughwright.Engine.Quantities;
using Doughwright.Engine.Shapes;

namespace Doughwright.Engine.Heat;

/// <summary>Matter that cools or warms in a vessel, reduced to a shape in which heat flows one way.</summary>
/// <param name="Dimensions">1 a slab, 2 a cylinder, 3 a ball, and what lies between and beyond (<see cref="HeatForm"/>).</param>
/// <param name="Size">Half-thickness, or radius.</param>
/// <param name="OuterSquareMetres">What the air, the cloth or the water touches, vessel walls included.</param>
/// <param name="WallJoulesPerKelvin">Heat capacity of the vessel, which sits on the outer area.</param>
internal sealed record Body(
    double Dimensions,
    Length Size,
    double OuterSquareMetres,
    double CubicMetres,
    double WallJoulesPerKelvin,
    ThermalProperties Properties)
{
    /// <summary>Melting of the fat in it; null when none melts.</summary>
    public FatMelting? Melting { get; init; }

    /// <summary>Share of its mass that is fat of that kind.</summary>
    public double MeltingFatShare { get; init; }

    /// <summary>Where it is wet and open, or lies on a tray; null for an outside that is dry and the same all round.</summary>
    public OpenFaces? Faces { get; init; }

    /// <summary>Volume over outer area, in m.</summary>
    public double VolumePerArea => CubicMetres / OuterSquareMetres;

    /// <summary>Heat capacity of the matter without its vessel and without melting, in J/K.</summary>
    public double JoulesPerKelvin => Properties.JoulesPerCubicMetreKelvin * CubicMetres;

    public double MeltingJoulesPerCubicMetre =>
        Melting is null ? 0 : Melting.JoulesPerGram * MeltingFatShare * 1000 * Properties.Density.KilogramsPerCubicMetre;

    public double WallJoulesPerSquareMetreKelvin => WallJoulesPerKelvin / OuterSquareMetres;

    /// <summary>A piece of dough, or what lies in a vessel, as heat meets it.</summary>
    /// <param name="vesselJoulesPerKelvin">Heat capacity of what it lies in, as warm as its outside.</param>
    public static Body Of(PieceForm form, ThermalProperties properties, double vesselJoulesPerKelvin = 0)
    {
        var heat = form.Heat;
        return new(heat.Dimensions, heat.Size, form.SquareMetres, form.CubicMetres, vesselJoulesPerKelvin, properties);
    }

    /// <summary>
    /// Contents of a bowl: a half ball, r = (3V/2π)^(1/3), with the outer area 3πr² of dome and lid, conducting as the ball with the same
    /// volume over area, R = 3V/A. Source: body-shapes.
    /// </summary>
    public static Body InBowl(Mass mass, ThermalProperties properties, double bowlJoulesPerKelvin) =>
        Of(PieceForms.Of(PieceShape.Boule, VolumeOf(mass, properties)), properties, bowlJoulesPerKelvin);

    /// <summary>A shaped piece standing free: a ball. What it stands on is not counted. Source: body-shapes.</summary>
    public static Body Piece(Mass mass, ThermalProperties properties) => Of(PieceForms.Of(PieceShape.Ball, VolumeOf(mass, properties)), properties);

    /// <summary>
    /// Spread out on a tray: a slab cooled from both faces, the edges neglected, half of the tray on each. Source: body-shapes.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The depth is not above nought.</exception>
    public static Body Spread(Mass mass, ThermalProperties properties, Length depth, double trayJoulesPerKelvin)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(depth.Metres, nameof(depth));
        return Of(PieceForms.Of(PieceShape.Sheet, VolumeOf(mass, properties), depth: depth), properties, trayJoulesPerKelvin);
    }

    /// <summary>
    /// Bi = h (V/A)/k: below 0.1 the inside is as warm as the surface within a few per cent, and one temperature is enough.
    /// Source: biot-rule.
    /// </summary>
    public double Biot(double wattsPerSquareMetreKelvin) =>
        wattsPerSquareMetreKelvin * VolumePerArea / Properties.Conductivity.WattsPerMetreKelvin;

    /// <summary>
    /// The time in which a body comes about two thirds nearer to the air, in s: τ = (ρ c V + C_wall)/(h A) + R²/(n (n + 2) α) with n the dimensions, 3, 8,
    /// 15 for slab, cylinder, sphere: the surface's and the inside's share in series. Good to about 5 %. Source: time-constant.
    /// </summary>
    public double TimeConstantSeconds(double wattsPerSquareMetreKelvin)
    {
        var outside = (JoulesPerKelvin + WallJoulesPerKelvin) / (wattsPerSquareMetreKelvin * OuterSquareMetres);
        var inside = Size.Metres * Size.Metres / Properties.DiffusivitySquareMetresPerSecond;
        return outside + (inside / (Dimensions * (Dimensions + 2)));
    }

    /// <summary>Heat between two different temperatures with what melts, over the heat without; 1 when nothing melts.</summary>
    public double MeltingFactor(double fromCelsius, double toCelsius)
    {
        if (Melting is null)
        {
            return 1;
        }

        var meltingJoules = MeltingJoulesPerCubicMetre * CubicMetres;
        var heat = Melting.HeatContent(JoulesPerKelvin, meltingJoules, toCelsius) - Melting.HeatContent(JoulesPerKelvin, meltingJoules, fromCelsius);
        return heat / (JoulesPerKelvin * (toCelsius - fromCelsius));
    }

    /// <summary>Room that so much of it takes, in m³.</summary>
    public static double VolumeOf(Mass mass, ThermalProperties properties)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(mass.Grams, nameof(mass));
        return mass.Kilograms / properties.Density.KilogramsPerCubicMetre;
    }
}
