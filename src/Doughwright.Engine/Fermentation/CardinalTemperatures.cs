using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Fermentation;

/// <summary>Where a yeast begins, is quickest and stops.</summary>
internal readonly record struct CardinalTemperatures
{
    /// <exception cref="ArgumentOutOfRangeException">
    /// Not minimum &lt; optimum &lt; maximum, or the optimum lies in the lower half: there the curve of <see cref="CardinalRate"/> has a
    /// pole.
    /// </exception>
    public CardinalTemperatures(Temperature minimum, Temperature optimum, Temperature maximum)
    {
        if (!(optimum < maximum) || !(2 * optimum.Celsius > minimum.Celsius + maximum.Celsius))
        {
            throw new ArgumentOutOfRangeException(
                nameof(optimum),
                optimum,
                $"The optimum must lie above the middle of {minimum} and {maximum} and below the latter.");
        }

        Minimum = minimum;
        Optimum = optimum;
        Maximum = maximum;
    }

    /// <summary>
    /// Gas of bread yeast in dough: 0, 37, 50 °C. A choice between growth fits (optimum 32) and makers' figures for gas (32 to 38).
    /// Source: gause-1932, fermented-foods-text, yeast-maker-temperatures.
    /// </summary>
    public static CardinalTemperatures BreadYeastGas { get; } =
        new(Temperature.FromCelsius(0), Temperature.FromCelsius(37), Temperature.FromCelsius(50));

    public Temperature Minimum { get; }

    public Temperature Optimum { get; }

    public Temperature Maximum { get; }
}
