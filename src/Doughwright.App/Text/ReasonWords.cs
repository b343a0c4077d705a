using Doughwright.Engine.Quantities;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>Reasons in words, and a tree of them on a page.</summary>
internal static class ReasonWords
{
    public static string Name(Reason reason, Voice voice) => voice.Say($"reason.{reason.Kind}", ("subject", reason.Subject));

    /// <summary>"the bulk takes: 1 h 45 min".</summary>
    public static string Said(Reason reason, Voice voice)
    {
        var name = Name(reason, voice);
        return reason.Value is { } value ? voice.Say("reason-value", ("name", name), ("value", Value(value, reason.Unit, voice))) : name;
    }

    public static void Write(Page page, Reason reason, Voice voice, int indent)
    {
        var said = Said(reason, voice);
        page.Paragraph(reason.Source is { } source ? voice.Say("reason-source", ("reason", said), ("source", source)) : said, indent, 4);
        foreach (var part in reason.Parts)
        {
            Write(page, part, voice, indent + 2);
        }
    }

    private static string Value(double value, string unit, Voice voice) => unit switch
    {
        "°C" => Show.Temperature(Temperature.FromCelsius(value), voice.Measures),
        "K" => Show.Difference(TemperatureDelta.FromKelvins(value), voice.Measures),
        "min" => Show.Duration(Duration.FromMinutes(value)),
        "g" => Show.Mass(Mass.FromGrams(value), voice.Measures),
        "%" => Show.Percent(Percent.FromValue(value)),
        "" => Plain(value),
        _ => Plain(value) + "\u00a0" + unit,
    };

    /// <summary>Three figures or so, which is more than any of these numbers are good for.</summary>
    private static string Plain(double value) => Show.Number(value, Math.Abs(value) switch
    {
        >= 100 => 0,
        >= 10 => 1,
        >= 1 => 2,
        >= 0.1 => 3,
        _ => 4,
    });
}
