using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>Round temperatures for an axis, in the measures of the reader.</summary>
internal static class TemperatureTicks
{
    private static readonly double[] Steps = [1, 2, 5, 10, 20, 50, 100, 200];

    /// <param name="leastKelvins">No two are nearer than this.</param>
    public static IReadOnlyList<(Temperature Temperature, string Figure)> Between(Temperature low, Temperature high, double leastKelvins, Voice voice)
    {
        var us = voice.Measures == MeasureSystem.Us;
        var (from, to) = us ? (low.Fahrenheit, high.Fahrenheit) : (low.Celsius, high.Celsius);
        var least = us ? leastKelvins * 9 / 5 : leastKelvins;
        var step = Steps.FirstOrDefault(step => step >= least, Steps[^1]);
        var ticks = new List<(Temperature, string)>();
        for (var value = Math.Ceiling(from / step) * step; value <= to; value += step)
        {
            var temperature = us ? Temperature.FromFahrenheit(value) : Temperature.FromCelsius(value);
            ticks.Add((temperature, voice.Degrees(temperature, asked: true)));
        }

        return ticks;
    }
}
