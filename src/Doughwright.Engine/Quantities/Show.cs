using System.Globalization;

namespace Doughwright.Engine.Quantities;

/// <summary>
/// Prints quantities for people; the one place where figures are rounded. A no-break space before the unit, a real minus sign, a comma from
/// 1,000.
/// What is rounded here is never calculated with.
/// </summary>
public static class Show
{
    private const string Gap = "\u00a0";
    private const string Minus = "\u2212";

    /// <summary>
    /// Grams: whole from 10 g, one decimal below, and no ".0": "801 g", "4.8 g", "7 g". US: ounces and pounds where they are near enough.
    /// </summary>
    public static string Mass(Mass mass, MeasureSystem measures = MeasureSystem.Metric)
    {
        if (measures == MeasureSystem.Us && Ounces.Text(mass) is { } ounces)
        {
            return ounces;
        }

        var tenths = Rounded(mass.Grams, 1);
        return Math.Abs(tenths) >= 10 ? Number(mass.Grams, 0) + Gap + "g" : Short(mass.Grams, 1) + Gap + "g";
    }

    /// <summary>A computed dough temperature, one decimal: "26.0 °C". In °F whole degrees, which are finer than the answer.</summary>
    public static string Temperature(Temperature temperature, MeasureSystem measures = MeasureSystem.Metric) => measures == MeasureSystem.Us
        ? Number(temperature.Fahrenheit, 0) + Gap + "°F"
        : Number(temperature.Celsius, 1) + Gap + "°C";

    /// <summary>A temperature asked of a person, whole degrees: "28 °C".</summary>
    public static string TemperatureAsked(Temperature temperature, MeasureSystem measures = MeasureSystem.Metric) =>
        measures == MeasureSystem.Us ? Number(temperature.Fahrenheit, 0) + Gap + "°F"
        : Number(temperature.Celsius, 0) + Gap + "°C";

    /// <summary>A temperature that a person wrote, with its tenth where it has one: "26 °C", "26.5 °C".</summary>
    public static string TemperatureWritten(Temperature temperature, MeasureSystem measures = MeasureSystem.Metric) =>
        measures == MeasureSystem.Us ? Short(temperature.Fahrenheit, 1) + Gap + "°F"
        : Short(temperature.Celsius, 1) + Gap + "°C";

    /// <summary>A difference, one decimal and no ".0": "2 °C", "−1.6 °C".</summary>
    public static string Difference(TemperatureDelta difference, MeasureSystem measures = MeasureSystem.Metric) =>
        measures == MeasureSystem.Us ? Short(difference.Kelvins * 9 / 5, 1) + Gap + "°F"
        : Short(difference.Kelvins, 1) + Gap + "°C";

    /// <summary>A duration in a sentence, whole minutes: "1 h 45 min", "20 min", "3 days 4 h".</summary>
    public static string Duration(Duration duration)
    {
        var minutes = WholeMinutes(duration);
        var sign = minutes < 0 ? Minus : "";
        minutes = Math.Abs(minutes);
        (long Count, string Unit)[] parts = minutes >= 2880
            ? [(minutes / 1440, "days"), (minutes / 60 % 24, "h"), (minutes % 60, "min")]
            : [(minutes / 60, "h"), (minutes % 60, "min")];
        var shown = parts
            .Where(part => part.Count > 0)
            .Select(part => part.Count.ToString(CultureInfo.InvariantCulture) + Gap + part.Unit)
            .ToArray();
        return shown.Length == 0 ? "0" + Gap + "min" : sign + string.Join(" ", shown);
    }

    /// <summary>A duration in a column headed h:min: "1:45".</summary>
    public static string DurationColumn(Duration duration)
    {
        var minutes = WholeMinutes(duration);
        return (minutes < 0 ? Minus : "") + FormattableString.Invariant($"{Math.Abs(minutes) / 60}:{Math.Abs(minutes) % 60:00}");
    }

    /// <summary>A range of durations in a column: "1:33 to 1:57". A null end is open: "from 1:33".</summary>
    public static string DurationRange(Duration low, Duration? high) => high is { } end
        ? $"{DurationColumn(low)} to {DurationColumn(end)}"
        : $"from {DurationColumn(low)}";

    /// <summary>An altitude, whole metres: "1,200 m"; US in feet.</summary>
    public static string Altitude(Length altitude, MeasureSystem measures = MeasureSystem.Metric) => measures == MeasureSystem.Us
        ? Number(altitude.Feet, 0) + Gap + "ft"
        : Number(altitude.Metres, 0) + Gap + "m";

    /// <summary>A depth or a width: "1 cm", "2.5 cm", "6 mm"; US in inches.</summary>
    public static string Depth(Length depth, MeasureSystem measures = MeasureSystem.Metric) => measures == MeasureSystem.Us
        ? Short(depth.Metres / 0.0254, 1) + Gap + "in"
        : Math.Abs(depth.Metres) < 0.01 ? Short(depth.Metres * 1000, 1) + Gap + "mm" : Short(depth.Metres * 100, 1) + Gap + "cm";

    /// <summary>A volume: "2.8 l", "750 ml"; US in quarts of 0.946352946 l.</summary>
    public static string Volume(Volume volume, MeasureSystem measures = MeasureSystem.Metric) => measures == MeasureSystem.Us
        ? Short(volume.Litres / 0.946352946, 1) + Gap + "qt"
        : Math.Abs(volume.Litres) < 1 ? Number(Rounded(volume.Litres * 100, 0) * 10, 0) + Gap + "ml" : Short(volume.Litres, 1) + Gap + "l";

    /// <summary>One decimal: "67.8 %".</summary>
    public static string Percent(Percent percent) => Number(percent.Value, 1) + Gap + "%";

    /// <summary>What a lamp takes, whole: "15 W".</summary>
    public static string Power(Power power) => Number(power.Watts, 0) + Gap + "W";

    /// <summary>Air pressure: "87.72 kPa".</summary>
    public static string Pressure(Pressure pressure) => Number(pressure.Kilopascals, 2) + Gap + "kPa";

    /// <summary>A number with just so many decimals: "1,200", "−3.0".</summary>
    public static string Number(double value, int decimals)
    {
        var rounded = Rounded(value, decimals);
        var digits = Math.Abs(rounded).ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return rounded < 0 ? Minus + digits : digits;
    }

    /// <summary>Sums of a hundred of the greatest quantities that can be typed. Tenths of it are still exact.</summary>
    private const double MostSharedOut = 1e14;

    /// <summary>
    /// Rounds parts so that they add up to the rounded total: each is cut off, and the units still missing go to the largest remainders;
    /// among equal
    /// remainders the larger part comes first. Negative parts are not shared out.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A part is negative or not a number.</exception>
    public static IReadOnlyList<double> ShareOut(IReadOnlyList<double> parts, int decimals)
    {
        var units = 1.0;
        for (var i = 0; i < decimals; i++)
        {
            units *= 10;
        }

        foreach (var part in parts)
        {
            Require.Within(part, 0, MostSharedOut, "A part to share out");
        }

        // Thirds of a unit in the ninth place are rounding noise of the sums before: 0.3 in tenths is 3, not 2.9999999999999996.
        var scaled = parts.Select(part => Math.Round(part * units, 6)).ToArray();
        var shown = scaled.Select(Math.Floor).ToArray();
        // The total is that of the parts as they are, so that it reads like the same sum printed alone.
        var missing = (int)(Math.Round(Math.Round(parts.Sum() * units, 6), MidpointRounding.AwayFromZero) - shown.Sum());
        var takers = Enumerable.Range(0, parts.Count)
            .OrderByDescending(i => Math.Round(scaled[i] - shown[i], 6))
            .ThenByDescending(i => scaled[i])
            .Take(missing);
        foreach (var taker in takers.ToArray())
        {
            shown[taker]++;
        }

        return [.. shown.Select(value => value / units)];
    }

    private static string Short(double value, int decimals) => Number(value, Rounded(value, decimals) == Rounded(value, 0) ? 0 : decimals);

    private static long WholeMinutes(Duration duration) => (long)Rounded(duration.Minutes, 0);

    private static double Rounded(double value, int decimals) => Math.Round(value, decimals, MidpointRounding.AwayFromZero);
}
