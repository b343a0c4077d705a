using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.TextForm;

/// <summary>
/// Quantities written so that they read back to the same value, to the last bit. The first unit in which a short number does that is taken,
/// so a dial set
/// to 375 F is written 375 F and not 190.55555555555554 C.
/// </summary>
internal static class ExactText
{
    private const int ShortDecimals = 3;

    public static string Of(Mass mass) =>
        Shortest(text => QuantityText.TryMass(text).Value == mass, mass.Grams, ("g", 1), ("oz", 28.349523125), ("lb", 453.59237));

    public static string Of(Temperature temperature) =>
        Short(temperature.Celsius, "C", text => QuantityText.TryTemperature(text).Value == temperature)
        ?? Short(temperature.Fahrenheit, "F", text => QuantityText.TryTemperature(text).Value == temperature)
        ?? NumberText.Exact(temperature.Celsius) + " C";

    /// <summary>Minutes, as a kitchen counts; hours from three on, days when they are whole.</summary>
    public static string Of(Duration duration)
    {
        var minutes = duration.Minutes;
        return minutes >= 1440 && minutes % 1440 == 0 ? NumberText.Exact(minutes / 1440) + " d"
            : minutes >= 180 && minutes % 60 == 0 ? NumberText.Exact(minutes / 60) + " h"
            : Shortest(text => QuantityText.TryDuration(text).Value == duration, minutes, ("min", 1), ("s", 1 / 60.0));
    }

    public static string OfAltitude(Length altitude) =>
        Shortest(text => QuantityText.TryLength(text).Value == altitude, altitude.Metres, ("m", 1), ("ft", 0.3048));

    /// <summary>Centimetres or inches, whichever takes fewer digits: 0.5 in is not 1.27 cm to the one who wrote it.</summary>
    public static string OfDepth(Length depth)
    {
        bool IsSame(string text) => QuantityText.TryLength(text).Value == depth;
        string?[] candidates = [Short(depth.Metres * 100, "cm", IsSame), Short(depth.Metres / 0.0254, "in", IsSame)];
        return candidates.OfType<string>().MinBy(text => text.Length) ?? Shortest(IsSame, depth.Metres, ("m", 1), ("ft", 0.3048));
    }

    private static string Shortest(Func<string, bool> isSame, double value, params (string Symbol, double Factor)[] units) =>
        units.Select(unit => Short(value / unit.Factor, unit.Symbol, isSame)).FirstOrDefault(text => text is not null)
        ?? $"{NumberText.Exact(value)} {units[0].Symbol}";

    private static string? Short(double value, string symbol, Func<string, bool> isSame)
    {
        var text = $"{NumberText.Exact(Math.Round(value, ShortDecimals))} {symbol}";
        return isSame(text) ? text : null;
    }
}
