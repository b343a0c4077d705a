using System.Globalization;

namespace Doughwright.Engine.Quantities;

/// <summary>The one grammar behind <see cref="QuantityText"/>: NUMBER UNIT, or several of one family from large to small.</summary>
internal static class QuantityReader
{
    private const char Minus = '\u2212';

    /// <summary>In the base of a unit a number has no more whole digits than one that is typed in it.</summary>
    private const decimal Most = 1_000_000_000_000m;

    /// <summary>The value in the base of <see cref="Unit.Factor"/>; temperatures in °C.</summary>
    public static Parsed<decimal> Read(string text, QuantityKind kind)
    {
        var typed = Trimmed(text);
        if (Shape(typed) is { } fault)
        {
            return Parsed<decimal>.Not(fault, typed, typed);
        }

        var negative = typed[0] is '-' or Minus;
        var rest = (negative ? typed[1..] : typed).TrimStart();
        if (rest.Length == 0)
        {
            // A sign alone.
            return Parsed<decimal>.Not(QuantityFault.NumberMissing, typed, typed);
        }

        var sum = 0m;
        Unit? last = null;
        while (rest.Length > 0)
        {
            var number = Taken(rest, c => char.IsAsciiDigit(c) || c is '.' or ',');
            rest = rest[number.Length..].TrimStart();
            var written = UnitAt(rest);
            rest = rest[written.Length..].TrimStart();
            var symbol = written.Replace(" ", "");
            if (number.Length == 0)
            {
                return last is null
                    ? Parsed<decimal>.Not(QuantityFault.NumberMissing, typed, typed)
                    : Parsed<decimal>.Not(QuantityFault.MoreThanAQuantity, typed, $"{symbol} {rest}".Trim());
            }

            var (value, numberFault, offered) = NumberText.Read(number);
            if (numberFault is { } broken)
            {
                return Parsed<decimal>.Not(broken, typed, number, offered is null ? null : typed.Replace(number, offered));
            }

            if (UnitFault(symbol, kind) is { } wrong)
            {
                var offer = wrong == QuantityFault.UnitUnknown && Unit.Offer(symbol, kind) is { } meant ? $"{number} {meant}" : null;
                return Parsed<decimal>.Not(wrong, typed, wrong == QuantityFault.UnitMissing ? number : symbol, offer);
            }

            var unit = Unit.Find(symbol)!;
            if (last is not null && (unit.Family is null || unit.Family != last.Family || unit.Factor >= last.Factor))
            {
                return Parsed<decimal>.Not(QuantityFault.MoreThanAQuantity, typed, $"{number} {symbol}");
            }

            sum += kind == QuantityKind.Temperature ? Celsius(negative ? -value : value, unit) : value * unit.Factor;
            last = unit;
            if (Math.Abs(sum) >= Most)
            {
                return Parsed<decimal>.Not(QuantityFault.TooManyDigits, typed, typed);
            }
        }

        return kind == QuantityKind.Temperature ? Parsed<decimal>.Of(sum, typed)
            : !negative ? Parsed<decimal>.Of(sum, typed)
            : kind == QuantityKind.Length || sum == 0 ? Parsed<decimal>.Of(-sum, typed)
            : Parsed<decimal>.Not(QuantityFault.Negative, typed, typed);
    }

    /// <summary>A number without a unit.</summary>
    public static Parsed<decimal> ReadBare(string text)
    {
        var typed = Trimmed(text);
        if (Shape(typed) is { } fault)
        {
            return Parsed<decimal>.Not(fault, typed, typed);
        }

        var negative = typed[0] is '-' or Minus;
        var rest = (negative ? typed[1..] : typed).TrimStart();
        var number = Taken(rest, c => char.IsAsciiDigit(c) || c is '.' or ',');
        if (number.Length == 0)
        {
            return Parsed<decimal>.Not(QuantityFault.NumberMissing, typed, typed);
        }

        var (value, broken, offer) = NumberText.Read(number);
        return broken is { } reason ? Parsed<decimal>.Not(reason, typed, number, offer)
            : number.Length < rest.Length
                ? Parsed<decimal>.Not(QuantityFault.MoreThanAQuantity, typed, rest[number.Length..].Trim(), number)
            : Parsed<decimal>.Of(negative ? -value : value, typed);
    }

    /// <summary>A no-break space before a unit is what printed pages carry: text pasted from one reads the same.</summary>
    public static string Trimmed(string text) => text.Replace('\u00a0', ' ').Replace('\u202f', ' ').Trim();

    /// <summary>Faults of the whole text, which would otherwise show as a puzzling fault of some piece of it.</summary>
    private static QuantityFault? Shape(string typed)
    {
        if (typed.Length == 0)
        {
            return QuantityFault.Empty;
        }

        var leading = Taken(typed, char.IsAsciiDigit).Length;
        if (leading > 0 && leading + 1 < typed.Length && typed[leading] == ':' && char.IsAsciiDigit(typed[leading + 1]))
        {
            return QuantityFault.ClockTime;
        }

        for (var i = 0; i < typed.Length; i++)
        {
            var digitBefore = i > 0 && char.IsAsciiDigit(typed[i - 1]);
            var digitAfter = i + 1 < typed.Length && char.IsAsciiDigit(typed[i + 1]);
            var slash = typed[i] is '/' or '\u2044' && digitBefore && digitAfter;
            if (slash || char.GetUnicodeCategory(typed[i]) == UnicodeCategory.OtherNumber)
            {
                return QuantityFault.Fraction;
            }

            var signedExponent = i + 2 < typed.Length && typed[i + 1] is '+' or '-' && char.IsAsciiDigit(typed[i + 2]);
            if (typed[i] is 'e' or 'E' && digitBefore && (digitAfter || signedExponent))
            {
                return QuantityFault.NumberNotPlain;
            }
        }

        return typed[0] == '+' ? QuantityFault.NumberNotPlain : null;
    }

    private static QuantityFault? UnitFault(string symbol, QuantityKind kind) => symbol.Length == 0
        ? QuantityFault.UnitMissing
        : Unit.Find(symbol) switch
        {
            null => QuantityFault.UnitUnknown,
            { } unit when unit.Kind != kind => QuantityFault.UnitOfAnotherKind,
            _ => null,
        };

    private static decimal Celsius(decimal value, Unit unit) => unit.Symbol.EndsWith('F') ? (value - 32) * 5 / 9 : value;

    private static string UnitAt(string rest)
    {
        var unit = Taken(rest, c => !char.IsAsciiDigit(c) && !char.IsWhiteSpace(c));
        if (unit != "°")
        {
            return unit;
        }

        var gap = Taken(rest[1..], char.IsWhiteSpace);
        return unit + gap + Taken(rest[(1 + gap.Length)..], char.IsAsciiLetter);
    }

    private static string Taken(string text, Func<char, bool> belongs)
    {
        var length = 0;
        while (length < text.Length && belongs(text[length]))
        {
            length++;
        }

        return text[..length];
    }
}
