using System.Globalization;

namespace Doughwright.Publishing.Pictures.Files.Styles;

/// <summary>Colours mixed as the sheet of styles says, for viewers that cannot mix themselves. Source: B. Ottosson's OKLab, as CSS Color 4 gives it.</summary>
internal static class Oklab
{
    /// <summary>Two colours, "#rrggbb", and the share of the second.</summary>
    public static string Mix(string one, string other, double share)
    {
        var (a, b) = (FromHex(one), FromHex(other));
        return ToHex(a.L + ((b.L - a.L) * share), a.A + ((b.A - a.A) * share), a.B + ((b.B - a.B) * share));
    }

    private static (double L, double A, double B) FromHex(string hex)
    {
        var (r, g, b) = (Linear(hex, 1), Linear(hex, 3), Linear(hex, 5));
        var l = Math.Cbrt((0.4122214708 * r) + (0.5363325363 * g) + (0.0514459929 * b));
        var m = Math.Cbrt((0.2119034982 * r) + (0.6806995451 * g) + (0.1073969566 * b));
        var s = Math.Cbrt((0.0883024619 * r) + (0.2817188376 * g) + (0.6299787005 * b));
        return (
            (0.2104542553 * l) + (0.7936177850 * m) - (0.0040720468 * s),
            (1.9779984951 * l) - (2.4285922050 * m) + (0.4505937099 * s),
            (0.0259040371 * l) + (0.7827717662 * m) - (0.8086757660 * s));
    }

    private static string ToHex(double lightness, double a, double b)
    {
        var l = Cube(lightness + (0.3963377774 * a) + (0.2158037573 * b));
        var m = Cube(lightness - (0.1055613458 * a) - (0.0638541728 * b));
        var s = Cube(lightness - (0.0894841775 * a) - (1.2914855480 * b));
        return "#"
            + Channel((4.0767416621 * l) - (3.3077115913 * m) + (0.2309699292 * s))
            + Channel((-1.2684380046 * l) + (2.6097574011 * m) - (0.3413193965 * s))
            + Channel((-0.0041960863 * l) - (0.7034186147 * m) + (1.7076147010 * s));
    }

    private static double Linear(string hex, int at)
    {
        var value = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }

    private static string Channel(double linear)
    {
        var value = linear <= 0.0031308 ? 12.92 * linear : (1.055 * Math.Pow(linear, 1 / 2.4)) - 0.055;
        return ((int)Math.Round(Math.Clamp(value, 0, 1) * 255)).ToString("x2", CultureInfo.InvariantCulture);
    }

    private static double Cube(double value) => value * value * value;
}
