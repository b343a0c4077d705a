using System.Globalization;

namespace Doughwright.Engine.Quantities;

/// <summary>
/// Numbers as text, in one place. Digits with a point; a comma only groups thousands, as in 1,200. Read by decimal arithmetic, so that "0.1
/// kg" and
/// "100 g" are the same number to the last bit.
/// </summary>
internal static class NumberText
{
    /// <summary>More digits than these cannot come from a measurement, and would not survive decimal arithmetic.</summary>
    private const int MostWholeDigits = 12;
    private const int MostDigits = 28;
    private const int MostDecimals = 24;

    public static (decimal Value, QuantityFault? Fault, string? Offer) Read(string number)
    {
        var (whole, decimals, point) = Halves(number);
        var plain = whole.Replace(",", "");
        if (number.Any(c => !char.IsAsciiDigit(c) && c is not ('.' or ',')) || !number.Any(char.IsAsciiDigit))
        {
            return (0, QuantityFault.NumberNotPlain, null);
        }

        if (decimals.Contains(',') || decimals.Contains('.') || (whole.Contains(',') && !GroupsThousands(whole)))
        {
            var pointed = number.Replace(',', '.');
            return (0, QuantityFault.DecimalComma, number.Count(c => c is ',' or '.') == 1 && IsPlain(pointed) ? pointed : null);
        }

        if (plain.Length == 0 || (point && decimals.Length == 0))
        {
            return (0, QuantityFault.NumberNotPlain, plain.Length == 0 ? "0" + number : plain);
        }

        if (plain.Length > 1 && plain[0] == '0')
        {
            var trimmed = plain.TrimStart('0');
            return (0, QuantityFault.LeadingZero, (trimmed.Length == 0 ? "0" : trimmed) + (point ? "." + decimals : ""));
        }

        if (plain.Length > MostWholeDigits || decimals.Length > MostDecimals || plain.Length + decimals.Length > MostDigits)
        {
            return (0, QuantityFault.TooManyDigits, null);
        }

        var plainNumber = point ? $"{plain}.{decimals}" : plain;
        return (decimal.Parse(plainNumber, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture), null, null);
    }

    /// <summary>The nearest double. By way of text, because that conversion is exactly rounded and the direct one is not.</summary>
    public static double ToDouble(decimal value) =>
        double.Parse(value.ToString(CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>
    /// The shortest plain digits that read back to the same double, without an exponent. Below 1e-7, where nothing in a kitchen is
    /// measured, digits
    /// behind the last readable decimal are cut off.
    /// </summary>
    public static string Exact(double value)
    {
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        var e = text.IndexOf('E');
        if (e < 0)
        {
            return text == "-0" ? "0" : text;
        }

        var negative = text[0] == '-' ? "-" : "";
        var digits = text[negative.Length..e].Replace(".", "");
        var exponent = int.Parse(text[(e + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        if (exponent >= 0)
        {
            return negative + digits.PadRight(exponent + 1, '0');
        }

        var decimals = new string('0', Math.Min(-exponent - 1, MostDecimals)) + digits;
        decimals = decimals[..Math.Min(decimals.Length, MostDecimals)].TrimEnd('0');
        return decimals.Length == 0 ? "0" : $"{negative}0.{decimals}";
    }

    private static (string Whole, string Decimals, bool Point) Halves(string number)
    {
        var point = number.IndexOf('.');
        return point < 0 ? (number, "", false) : (number[..point], number[(point + 1)..], true);
    }

    private static bool GroupsThousands(string whole)
    {
        var groups = whole.Split(',');
        return groups[0].Length is >= 1 and <= 3 && groups.Skip(1).All(group => group.Length == 3);
    }

    private static bool IsPlain(string number) => Read(number).Fault is null;
}
