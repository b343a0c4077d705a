using System.Globalization;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Remedies;

/// <summary>A value outside its limits that lies inside them in the other unit: 68 C of air is 68 F.</summary>
internal static class OtherUnit
{
    /// <summary>What may be longer than this is a height above the sea.</summary>
    private static readonly Length Longest = Length.FromMetres(100);

    public static IEnumerable<Remedy> Of(Finding finding)
    {
        if (TextRemedies.Word(finding, "typed") is not { } typed || Number(typed) is not { } number)
        {
            return [];
        }

        var fresh = (finding.Arguments.GetValueOrDefault("low"), finding.Arguments.GetValueOrDefault("high")) switch
        {
            (Temperature low, Temperature high) => Temperatures(typed, number).FirstOrDefault(meant => meant.Value >= low && meant.Value <= high).Typed,
            (Length low, Length high) => Lengths(typed, number, high).FirstOrDefault(meant => meant.Value >= low && meant.Value <= high).Typed,
            _ => null,
        };
        return TextRemedies.Instead(finding, typed, fresh);
    }

    private static IEnumerable<(string Typed, Temperature Value)> Temperatures(string typed, double number)
    {
        var unit = typed.TrimEnd()[^1];
        if (unit is 'C' && number < 1000)
        {
            yield return (typed.TrimEnd()[..^1] + "F", Temperature.FromFahrenheit(number));
        }
        else if (unit is 'F' && number < 1000)
        {
            yield return (typed.TrimEnd()[..^1] + "C", Temperature.FromCelsius(number));
        }
    }

    private static IEnumerable<(string Typed, Length Value)> Lengths(string typed, double number, Length high)
    {
        var digits = typed[..typed.TakeWhile(mark => !char.IsAsciiLetter(mark)).Count()].TrimEnd();
        // Nobody tells a height above the sea in centimetres, nor a depth of dough in feet.
        foreach (var unit in high > Longest ? ["m", "ft"] : new[] { "cm", "mm", "m", "ft" })
        {
            if (QuantityText.TryLength($"{digits} {unit}").Value is { } value && number > 0)
            {
                yield return ($"{digits} {unit}", value);
            }
        }
    }

    private static double? Number(string typed)
    {
        var digits = new string([.. typed.TakeWhile(mark => char.IsAsciiDigit(mark) || mark is '.' or ',' or '-')]).Replace(",", "", StringComparison.Ordinal);
        return double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;
    }
}
