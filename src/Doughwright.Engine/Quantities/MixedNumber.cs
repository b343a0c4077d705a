using System.Globalization;

namespace Doughwright.Engine.Quantities;

/// <summary>Numbers as measuring spoons have them: "1/4", "1 1/2", "¼", "1½". Only household measures are written so; weights have a point.</summary>
public static class MixedNumber
{
    /// <summary>No spoon is marked finer.</summary>
    private const int LargestDenominator = 16;

    private const double Near = 1e-9;

    private static readonly (double Part, string Mark)[] Marks =
        [(0, ""), (1 / 8.0, "⅛"), (1 / 4.0, "¼"), (1 / 3.0, "⅓"), (3 / 8.0, "⅜"), (1 / 2.0, "½"), (5 / 8.0, "⅝"), (2 / 3.0, "⅔"), (3 / 4.0, "¾"), (7 / 8.0, "⅞")];

    /// <summary>The number that a text begins with, and its letters; null when there is none above zero, or none that is clear.</summary>
    /// <param name="text">"1 1/2 tsp", "¼ cup", "1.5 tbsp".</param>
    public static (double Value, int Length)? Lead(string text)
    {
        var digits = Digits(text, 0);
        if (digits > 0 && Fraction(text, 0) is var (alone, end))
        {
            return (alone, end);
        }

        if (digits > 0 && digits < text.Length && text[digits] is '.' or ',')
        {
            digits = text.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or ',').Count();
        }

        double? whole = digits == 0 ? 0 : QuantityText.TryNumber(text[..digits]).Value;
        var next = digits;
        while (next < text.Length && text[next] is ' ' or '\u00a0' or '\u202f')
        {
            next++;
        }

        if (Part(text, next, spaced: next > digits) is var (part, behind))
        {
            return whole is { } count && Math.Floor(count) == count ? (count + part, behind) : null;
        }

        return digits > 0 && whole is > 0 and var number && !(digits < text.Length && text[digits] is '/' or '\u2044') ? (number, digits) : null;
    }

    /// <summary>"1½", "⅔", "2": null when it is no whole number with a part that has a mark.</summary>
    public static string? Text(double value)
    {
        var whole = Math.Floor(value + Near);
        var mark = Marks.FirstOrDefault(one => Math.Abs(value - whole - one.Part) < Near);
        return value <= 0 || mark.Mark is null ? null
            : whole == 0 ? mark.Mark
            : whole.ToString("N0", CultureInfo.InvariantCulture) + mark.Mark;
    }

    /// <summary>A text with the number it begins with as it is printed everywhere: "0.75 cup" and "3/4 cup" are "¾ cup".</summary>
    public static string Printed(string typed) => Lead(typed) is var (value, length) && Text(value) is { } number
        ? number + (length < typed.Length && char.IsLetter(typed[length]) ? " " : "") + typed[length..]
        : typed;

    private static (double Value, int End)? Part(string text, int at, bool spaced) =>
        at < text.Length && CharUnicodeInfo.GetUnicodeCategory(text[at]) == UnicodeCategory.OtherNumber
            && CharUnicodeInfo.GetNumericValue(text[at]) is > 0 and < 1 and var value ? (value, at + 1)
        : spaced || at == 0 ? Fraction(text, at)
        : null;

    private static (double Value, int End)? Fraction(string text, int at)
    {
        var slash = Digits(text, at);
        var end = slash < text.Length && text[slash] is '/' or '\u2044' ? Digits(text, slash + 1) : slash;
        return slash > at && end > slash + 1 && end - slash < 4 && slash - at < 3
            && int.Parse(text[at..slash], CultureInfo.InvariantCulture) is > 0 and var above
            && int.Parse(text[(slash + 1)..end], CultureInfo.InvariantCulture) is <= LargestDenominator and var below && above < below
            && text[at] != '0' && text[slash + 1] != '0' && !(end < text.Length && text[end] is '.' or ',' or '/')
            ? ((double)above / below, end)
            : null;
    }

    private static int Digits(string text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at;
    }
}
