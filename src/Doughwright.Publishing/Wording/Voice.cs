using System.Collections;
using System.Globalization;
using System.Text;
using Doughwright.Engine.Baking;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Wording;

/// <summary>Says things: words of one language, figures in one system of measures. Words carry their arguments as {name} or {name:asked}.</summary>
internal sealed class Voice(Words words, MeasureSystem measures)
{
    private const string Gap = "\u00a0";

    /// <summary>Letters of a text that are repeated in a sentence; a line of a broken file can have thousands.</summary>
    private const int LongestQuotation = 400;

    public Words Words => words;

    public MeasureSystem Measures => measures;

    public string Say(string key, params ReadOnlySpan<(string Name, object? Value)> arguments)
    {
        var values = new Dictionary<string, object?>(arguments.Length, StringComparer.Ordinal);
        foreach (var (name, value) in arguments)
        {
            values[name] = value;
        }

        return Fill(words[key], name => values.TryGetValue(name, out var value) ? value : null);
    }

    /// <summary>
    /// Words with the arguments of a finding put in. What the finding does not carry stays in braces, for a test to find. A sentence about
    /// something that it carries empty, such as the nearest word where none is near, is left out.
    /// </summary>
    public string Fill(string template, Func<string, object?> argument)
    {
        if (!template.Contains('{'))
        {
            return template;
        }

        template = SaidOnce.Of(Sentences.WithoutEmpty(template, argument), words["range"], Read);

        string? Read(string placeholder) =>
            placeholder.IndexOf(':') is var mark && argument(mark < 0 ? placeholder : placeholder[..mark]) is { } found ? Text(found, mark < 0 ? "" : placeholder[(mark + 1)..]) : null;

        var filled = new StringBuilder(template.Length + 32);
        var at = 0;
        while (at < template.Length)
        {
            var open = template.IndexOf('{', at);
            var close = open < 0 ? -1 : template.IndexOf('}', open);
            if (close < 0)
            {
                break;
            }

            var name = template[(open + 1)..close];
            var colon = name.IndexOf(':');
            var style = colon < 0 ? "" : name[(colon + 1)..];
            var value = argument(colon < 0 ? name : name[..colon]);
            filled.Append(template, at, open - at).Append(value is null ? template[open..(close + 1)] : Text(value, style));
            at = close + 1;
        }

        return filled.Append(template, at, template.Length - at).ToString();
    }

    /// <summary>A value as a person reads it, by its type.</summary>
    public string Text(object value, string style = "") => value switch
    {
        string text => text.Length <= LongestQuotation ? text : text[..LongestQuotation] + "…",
        Mass mass => Show.Mass(mass, measures),
        Temperature temperature when style == "written" => Show.TemperatureWritten(temperature, measures),
        Temperature temperature when style == "asked" || IsWhole(temperature) => Show.TemperatureAsked(temperature, measures),
        Temperature temperature => Show.Temperature(temperature, measures),
        TemperatureDelta difference => Show.Difference(difference, measures),
        Duration duration when style == "column" => Show.DurationColumn(duration),
        Duration duration => Show.Duration(duration),
        // Nothing in a kitchen is a metre deep, and nobody lives below one metre to the centimetre.
        Length length when style == "altitude" || Math.Abs(length.Metres) >= 1 => Show.Altitude(length, measures),
        Length length => Show.Depth(length, measures),
        Volume volume => Show.Volume(volume, measures),
        Percent percent => Show.Percent(percent),
        Pressure pressure => Show.Pressure(pressure),
        Power power => Show.Power(power),
        double number => Number(number),
        int or long => Show.Number(Convert.ToDouble(value, CultureInfo.InvariantCulture), 0),
        Enum member => Member(member),
        IEnumerable list => List(list.Cast<object>().Select(item => Text(item, style))),
        _ => Convert.ToString(value, CultureInfo.InvariantCulture) ?? "",
    };

    /// <summary>"flour, egg and butter".</summary>
    public string List(IEnumerable<string> items)
    {
        var all = items.ToArray();
        return all.Length < 2
            ? string.Concat(all)
            : Say("list-and", ("first", string.Join(words["list-comma"], all[..^1])), ("last", all[^1]));
    }

    /// <summary>A range of times, for a column or in a sentence; an open end is said.</summary>
    public string Range(Duration low, Duration? high, bool inSentence = false)
    {
        var style = inSentence ? "" : "column";
        var first = Text(low, style);
        return high is not { } end ? Say("range-open", ("low", first)) : Text(end, style) is var last && last == first ? first : Say("range", ("low", first), ("high", last));
    }

    /// <summary>A range of temperatures with the unit once, whole when asked of a person.</summary>
    public string Range(Temperature low, Temperature? high, bool asked)
    {
        var first = Degrees(low, asked);
        return high is not { } end ? Say("range-open", ("low", first))
            : Degrees(end, asked) is var last && last == first ? first
            : Say("range", ("low", first), ("high", last));
    }

    /// <summary>A temperature without its unit, for columns and ranges that carry the unit once.</summary>
    public string Degrees(Temperature temperature, bool asked = false) =>
        Bare(asked ? Show.TemperatureAsked(temperature, measures) : Show.Temperature(temperature, measures));

    /// <summary>Grams without their unit, for columns that carry it; US weights keep theirs, because one column has several.</summary>
    public string Grams(Mass mass) => measures == MeasureSystem.Us ? Show.Mass(mass, measures) : Bare(Show.Mass(mass, measures));

    /// <summary>What an oven is set to: "170 °C fan", the customary pair in the measures of the reader.</summary>
    public string Dial(DialSetting dial, bool unit = true) =>
        Say("oven-dial", ("degrees", Show.Number(DialDegrees(dial), 0) + (unit ? DegreeUnit : "")), ("mode", Oven(dial.Mode)));

    /// <summary>Degrees on the dial in the measures of the reader.</summary>
    public int DialDegrees(DialSetting dial) => measures == MeasureSystem.Us ? dial.Fahrenheit : dial.Celsius;

    /// <summary>The unit of temperatures with its gap.</summary>
    public string DegreeUnit => measures == MeasureSystem.Us ? Gap + "°F" : Gap + "°C";

    /// <summary>The word for a member of a closed list: "oven-mode.fan".</summary>
    public string Member(Enum member) => words[$"{Kebab(member.GetType().Name)}.{Kebab(member.ToString())}"];

    public string Oven(OvenMode mode) => Member(mode);

    internal static string Kebab(string name)
    {
        var kebab = new StringBuilder(name.Length + 4);
        foreach (var letter in name)
        {
            if (char.IsAsciiLetterUpper(letter) && kebab.Length > 0)
            {
                kebab.Append('-');
            }

            kebab.Append(char.ToLowerInvariant(letter));
        }

        return kebab.ToString();
    }

    private static string Bare(string text) => text[..text.LastIndexOf('\u00a0')];

    /// <summary>What a person typed is whole as a rule; what was computed is not.</summary>
    private static bool IsWhole(Temperature temperature) => temperature.Celsius == Math.Floor(temperature.Celsius);

    /// <summary>Up to two decimals, and no zeros behind them.</summary>
    private static string Number(double number)
    {
        var text = Show.Number(number, 2);
        return text.TrimEnd('0').TrimEnd('.');
    }
}
