using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Baking;

/// <summary>One setting of an oven as a person dials it. Celsius and Fahrenheit are a pair that people dial, not an exact conversion.</summary>
public readonly record struct DialSetting(OvenMode Mode, int Celsius, int Fahrenheit);

/// <summary>An oven setting with its equals in the other mode.</summary>
public sealed record Dial(DialSetting Here, IReadOnlyList<DialSetting> Others);

/// <summary>The pairs that people dial.</summary>
/// <remarks>Source: oven-pairs (customary pairs of print; fan about 20 °C below static). Both "20 °C" and "25 °F" are roundings: pairs are kept.</remarks>
public static class DialPairs
{
    private static readonly (int StaticCelsius, int StaticFahrenheit)[] Rows =
    [
        (110, 225), (130, 250), (140, 275), (150, 300), (160, 325), (180, 350), (190, 375), (200, 400), (220, 425), (230, 450), (240, 475), (250, 500),
    ];

    private const int FanStep = 20;

    /// <summary>The dial and its equals, for a setting in degrees Celsius.</summary>
    public static Dial Of(Temperature dial, OvenMode written, OvenMode here)
    {
        var celsius = (int)Math.Round(dial.Celsius, MidpointRounding.AwayFromZero);
        var fixedCelsius = written == OvenMode.Static ? celsius : celsius + FanStep;
        var still = new DialSetting(OvenMode.Static, fixedCelsius, Fahrenheit(fixedCelsius));
        var fan = new DialSetting(OvenMode.Fan, fixedCelsius - FanStep, Fahrenheit(fixedCelsius - FanStep));
        return here == OvenMode.Static ? new(still, [fan]) : new(fan, [still]);
    }

    /// <summary>The Fahrenheit figure that stands beside a Celsius figure on dials: the customary pair, else the nearest 5 °F.</summary>
    private static int Fahrenheit(int celsius)
    {
        foreach (var row in Rows)
        {
            if (row.StaticCelsius == celsius)
            {
                return row.StaticFahrenheit;
            }
        }

        return (int)Math.Round((celsius * 9.0 / 5 + 32) / 5, MidpointRounding.AwayFromZero) * 5;
    }
}
