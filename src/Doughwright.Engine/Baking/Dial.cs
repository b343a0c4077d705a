using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.Baking;

/// <summary>One setting of an oven as a person dials it. Celsius and Fahrenheit are a pair that people dial, not an exact conversion.</summary>
public readonly record struct DialSetting(OvenMode Mode, int Celsius, int Fahrenheit);

/// <summary>An oven setting with its equals in the other mode.</summary>
public sealed record Dial(DialSetting Here, IReadOnlyList<DialSetting> Others)
{
    /// <summary>Where it is set to during the bake; null when it stays.</summary>
    public LaterDial? Then { get; init; }
}

/// <summary>Another setting during a bake.</summary>
/// <param name="After">After the piece went in.</param>
/// <param name="Dial">With its equals in the other modes; nothing follows it.</param>
public sealed record LaterDial(Duration After, Dial Dial);

/// <summary>The pairs that people dial.</summary>
/// <remarks>Source: oven-pairs (customary pairs of print; fan about 20 °C below static). Both "20 °C" and "25 °F" are roundings: pairs are kept.</remarks>
public static class DialPairs
{
    private static readonly (int StaticCelsius, int StaticFahrenheit)[] Rows =
    [
        (110, 225), (130, 250), (140, 275), (150, 300), (160, 325), (180, 350), (190, 375), (200, 400), (220, 425), (230, 450), (240, 475), (250, 500),
    ];

    private const int FanStep = 20;

    private const int DialStep = 5;
    private const double Exact = 1e-6;

    /// <summary>The dial and its equals, for a setting as somebody wrote it: 375 °F is 190 °C on another dial, and not 191.</summary>
    public static Dial Of(Temperature dial, OvenMode written, OvenMode here)
    {
        var (celsius, typed) = InCelsius(dial);
        var fixedCelsius = written == OvenMode.Fan ? celsius + FanStep : celsius;
        var still = Setting(OvenMode.Static, fixedCelsius);
        var fan = Setting(OvenMode.Fan, fixedCelsius - FanStep);
        return here switch
        {
            OvenMode.Static => new(still, [fan]),
            OvenMode.Deck => new(Setting(OvenMode.Deck, fixedCelsius), [still, fan]),
            _ => new(fan, [still]),
        };

        DialSetting Setting(OvenMode mode, int degrees) => new(mode, degrees, mode == written && typed is { } fahrenheit ? fahrenheit : Fahrenheit(degrees));
    }

    /// <summary>Degrees Celsius on a dial, and the figure that was written in °F.</summary>
    private static (int Celsius, int? Typed) InCelsius(Temperature dial)
    {
        var celsius = (int)Math.Round(dial.Celsius, MidpointRounding.AwayFromZero);
        var fahrenheit = (int)Math.Round(dial.Fahrenheit, MidpointRounding.AwayFromZero);
        if (Math.Abs(dial.Celsius - celsius) < Exact || Math.Abs(dial.Fahrenheit - fahrenheit) > Exact || fahrenheit % DialStep != 0)
        {
            return (celsius, null);
        }

        var (low, high) = (Rows.LastOrDefault(row => row.StaticFahrenheit <= fahrenheit), Rows.FirstOrDefault(row => row.StaticFahrenheit >= fahrenheit));
        return (Between(dial.Celsius, low.StaticCelsius, high.StaticCelsius), fahrenheit);
    }

    /// <summary>The Fahrenheit figure that stands beside a Celsius figure on dials: the customary pair, else the nearest 5 °F between its neighbours.</summary>
    private static int Fahrenheit(int celsius)
    {
        var (low, high) = (Rows.LastOrDefault(row => row.StaticCelsius <= celsius), Rows.FirstOrDefault(row => row.StaticCelsius >= celsius));
        return Between(Temperature.FromCelsius(celsius).Fahrenheit, low.StaticFahrenheit, high.StaticFahrenheit);
    }

    /// <summary>
    /// The nearest step of the dial, and never past a customary pair: those are roundings (500 °F is 260 °C, and stands beside 250 °C), so an exact figure
    /// beside them would have a hotter oven read cooler. Nought for no neighbour on that side.
    /// </summary>
    private static int Between(double degrees, int low, int high)
    {
        var nearest = (int)Math.Round(degrees / DialStep, MidpointRounding.AwayFromZero) * DialStep;
        return nearest < low ? low : high > 0 && nearest > high ? high : nearest;
    }
}
