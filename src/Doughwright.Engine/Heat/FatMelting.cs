using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Heat;

/// <summary>
/// Heat that butterfat takes up by melting, beyond its specific heat, spread evenly between two temperatures. Real butter melts in several
/// humps between these; the even spread is the simplest curve that is right in sum.
/// </summary>
/// <param name="From">Below it nothing melts.</param>
/// <param name="To">Above it all is melted.</param>
/// <param name="JoulesPerGram">Heat per gram of fat from solid to liquid.</param>
/// <param name="Sd">Standard deviation of <paramref name="JoulesPerGram"/>.</param>
internal sealed record FatMelting(Temperature From, Temperature To, double JoulesPerGram, double Sd)
{
    /// <summary>Butter: about 60 kJ per kg of fat between 5 and 24 °C, uncertain by a quarter. Source: butter-melting.</summary>
    public static FatMelting Butter { get; } = new(Temperature.FromCelsius(5), Temperature.FromCelsius(24), 60, 15);

    /// <summary>The share that is melted, 0 to 1. Piecewise linear, never falling.</summary>
    public double MeltedShare(Temperature temperature) =>
        Math.Clamp((temperature.Celsius - From.Celsius) / (To.Celsius - From.Celsius), 0, 1);

    /// <summary>
    /// Heat content of matter that holds fat, counted from 0 °C with the fat solid, in J: H = C t + Λ s(t), with C the heat capacity,
    /// Λ the melting heat of all its fat and s the melted share. Source: butter-melting.
    /// </summary>
    public double HeatContent(double joulesPerKelvin, double meltingJoules, double celsius) =>
        (joulesPerKelvin * celsius) + (meltingJoules * Math.Clamp((celsius - From.Celsius) / (To.Celsius - From.Celsius), 0, 1));

    /// <summary>
    /// The temperature in °C that belongs to a heat content: the exact inverse of <see cref="HeatContent"/>, no iteration.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The heat capacity is not above nought.</exception>
    public double CelsiusOf(double joulesPerKelvin, double meltingJoules, double heatContentJoules)
    {
        if (!(joulesPerKelvin > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(joulesPerKelvin), joulesPerKelvin, "Must be above 0 J/K.");
        }

        var begins = joulesPerKelvin * From.Celsius;
        var ends = (joulesPerKelvin * To.Celsius) + meltingJoules;
        if (heatContentJoules <= begins)
        {
            return heatContentJoules / joulesPerKelvin;
        }

        return heatContentJoules >= ends
            ? (heatContentJoules - meltingJoules) / joulesPerKelvin
            : From.Celsius + ((heatContentJoules - begins) / (joulesPerKelvin + (meltingJoules / (To.Celsius - From.Celsius))));
    }
}
