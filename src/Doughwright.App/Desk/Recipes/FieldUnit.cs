using System.Globalization;
using Doughwright.App.Desk.Asking;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.App.Desk.Recipes;

/// <summary>The unit that stands behind a field: a bare number typed into it is in that unit.</summary>
internal static class FieldUnit
{
    private static readonly string[] Fields =
        [Question.Air, Question.Ingredients, Question.Altitude, Question.Tap, Question.Fridge, Question.Proof, Question.Dough];

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
        Fields.Contains(option) && typed.Length > 0 && char.IsAsciiDigit(typed[^1]) && typed.All(letter => char.IsAsciiDigit(letter) || letter is '.' or ',' or '-' or '+' or '\u2212')
            ? typed + Shown(option, measures).TrimStart('°')
            : typed;

    /// <summary>A question whose bare numbers have the unit of their field.</summary>
    public static Question Complete(Question question, MeasureSystem measures) =>
        question.Only(question.Items.Select(item => item with { Value = Complete(item.Name, item.Value, measures) }));

    /// <summary>What stands in the field of a value that came with the field's own unit: the unit stands outside already.</summary>
    public static string Bare(string option, string typed, MeasureSystem measures)
    {
        var unit = Shown(option, measures).TrimStart('°');
        return Fields.Contains(option) && typed.Length > unit.Length && typed.EndsWith(unit, StringComparison.Ordinal) && char.IsAsciiDigit(typed[^(unit.Length + 1)])
            ? typed[..^unit.Length]
            : typed;
    }

    /// <summary>What stands in a field of the kitchen's sentence, without its unit.</summary>
    /// <param name="option">Of a temperature or of the altitude.</param>
    public static string Number(Kitchen kitchen, string option, MeasureSystem measures) => option switch
    {
        Question.Altitude => Number(kitchen.Altitude, measures),
        Question.Ingredients => Number(kitchen.Shelf, measures),
        Question.Tap => Number(kitchen.Tap, measures),
        Question.Fridge => Number(kitchen.Fridge, measures),
        Question.Proof when kitchen.ProofingPlace is { } place => Number(place, measures),
        _ => Number(kitchen.Air.At(Duration.Zero), measures),
    };

    public static string Number(Temperature temperature, MeasureSystem measures) =>
        Digits(measures == MeasureSystem.Us ? temperature.Fahrenheit : temperature.Celsius);

    public static string Number(Length altitude, MeasureSystem measures) =>
        Math.Round(measures == MeasureSystem.Us ? altitude.Feet : altitude.Metres).ToString("0", CultureInfo.InvariantCulture);

    /// <summary>The dough of home as it is asked for; null when it is not known.</summary>
    public static string? DoughOf(Rehearsal home) => Keeping.HomeDough(home) is { } dough ? dough.Celsius.ToString("0.#", CultureInfo.InvariantCulture) + "C" : null;

    /// <summary>To two decimals, plain digits as a person types them.</summary>
    private static string Digits(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
