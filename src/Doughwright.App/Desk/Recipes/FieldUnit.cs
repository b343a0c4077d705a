using System.Globalization;
using Doughwright.App.Desk.Asking;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Desk.Recipes;

/// <summary>The unit that stands behind a field: a bare number typed into it is in that unit.</summary>
internal static class FieldUnit
{
    private static readonly string[] Words = [Question.Oven, Question.Free, Question.Kitchen];

    /// <summary>What a person sees behind the field.</summary>
    public static string Shown(string option, MeasureSystem measures) => (option, measures) switch
    {
        (Question.Altitude, MeasureSystem.Us) => "ft",
        (Question.Altitude, _) => "m",
        (_, MeasureSystem.Us) => "°F",
        _ => "°C",
    };

    /// <summary>What was typed, with the field's unit where it has none. What is no number stays as it is, to be refused.</summary>
    public static string Complete(string option, string typed, MeasureSystem measures) =>
        Words.Contains(option) || typed.Length == 0 || !char.IsAsciiDigit(typed[^1])
            ? typed
            : typed + Shown(option, measures).TrimStart('°');

    /// <summary>What stands in the field of a value that came with the field's own unit: the unit stands outside already.</summary>
    public static string Bare(string option, string typed, MeasureSystem measures)
    {
        var unit = Shown(option, measures).TrimStart('°');
        return !Words.Contains(option) && typed.Length > unit.Length && typed.EndsWith(unit, StringComparison.Ordinal) && char.IsAsciiDigit(typed[^(unit.Length + 1)])
            ? typed[..^unit.Length]
            : typed;
    }

    public static string Number(Temperature temperature, MeasureSystem measures) =>
        Digits(measures == MeasureSystem.Us ? temperature.Fahrenheit : temperature.Celsius);

    public static string Number(Length altitude, MeasureSystem measures) =>
        Math.Round(measures == MeasureSystem.Us ? altitude.Feet : altitude.Metres).ToString("0", CultureInfo.InvariantCulture);

    /// <summary>The dough of home as it is asked for; null when it is not known.</summary>
    public static string? DoughOf(Rehearsal home) => Keeping.HomeDough(home) is { } dough ? dough.Celsius.ToString("0.#", CultureInfo.InvariantCulture) + "C" : null;

    /// <summary>To two decimals, plain digits as a person types them.</summary>
    private static string Digits(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
