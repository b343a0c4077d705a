using Doughwright.Engine.Baking;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.Publishing.Pages.Measures;

/// <summary>Figures in both systems of measures, the reader's first. Nobody has to convert anything on a page.</summary>
internal sealed class Both(Words words, MeasureSystem first)
{
    private readonly Voice metric = new(words, MeasureSystem.Metric);
    private readonly Voice us = new(words, MeasureSystem.Us);

    /// <summary>Speaks in the measures that come first.</summary>
    public Voice Voice { get; } = new(words, first);

    public MeasureSystem First => first;

    /// <summary>The systems in the order of the page.</summary>
    public IReadOnlyList<MeasureSystem> Order => first == MeasureSystem.Metric ? [MeasureSystem.Metric, MeasureSystem.Us] : [MeasureSystem.Us, MeasureSystem.Metric];

    public string Say(string key, params ReadOnlySpan<(string Name, object? Value)> arguments) => Voice.Say(key, arguments);

    /// <summary>A temperature to go by, whole degrees: "28 °C (82 °F)".</summary>
    public string Degrees(Temperature temperature) => Pair(metric.Text(temperature, "asked"), us.Text(temperature, "asked"));

    /// <summary>A temperature as a row of a table is named: "21 °C, 70 °F".</summary>
    public string DegreesInRow(Temperature temperature)
    {
        var (here, there) = InOrder(metric.Text(temperature, "asked"), us.Text(temperature, "asked"));
        return Say("page.both-row", ("first", here), ("second", there));
    }

    public string Altitude(Length altitude) => Pair(metric.Text(altitude, "altitude"), us.Text(altitude, "altitude"));

    /// <summary>A weight in both, once where ounces do not come near enough and grams are the honest print.</summary>
    public string Weight(Mass mass) => Pair(Show.Mass(mass), Show.Mass(mass, MeasureSystem.Us));

    /// <summary>What an oven is set to, with the customary pair and the same for the other kind: "170 °C with a fan (340 °F), or 190 °C without (375 °F)".</summary>
    public string Dial(Dial dial)
    {
        var here = Setting(dial.Here, other: false);
        return dial.Others is [var other, ..] ? Say("page.dial-or", ("here", here), ("other", Setting(other, other: true))) : here;
    }

    private string Setting(DialSetting setting, bool other)
    {
        var key = (setting.Mode, other) switch
        {
            (OvenMode.Fan, false) => "page.dial-fan",
            (OvenMode.Static, false) => "page.dial-static",
            (OvenMode.Deck, _) => "page.dial-deck",
            (OvenMode.Fan, true) => "page.dial-other-fan",
            _ => "page.dial-other-static",
        };
        var (here, there) = InOrder(Show.Number(setting.Celsius, 0) + metric.DegreeUnit, Show.Number(setting.Fahrenheit, 0) + us.DegreeUnit);
        return Say(key, ("first", here), ("second", there));
    }

    private string Pair(string metricText, string usText)
    {
        var (here, there) = InOrder(metricText, usText);
        return here == there ? here : Say("page.both", ("first", here), ("second", there));
    }

    private (string First, string Second) InOrder(string metricText, string usText) =>
        first == MeasureSystem.Metric ? (metricText, usText) : (usText, metricText);
}
