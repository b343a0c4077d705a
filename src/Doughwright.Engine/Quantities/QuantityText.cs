namespace Doughwright.Engine.Quantities;

/// <summary>
/// Reads quantities as people write them: in a recipe text and on the command line alike, and nowhere else. "80 g", "2.5lb", "1 lb 4 oz",
/// "21 C", "63°F", "1 h 45 min", "1,200 m", "12.5 %". Nothing is guessed: a text that could mean two things gives a reason, not a value.
/// </summary>
public static class QuantityText
{
    /// <summary>A weight: "80 g", "1 lb 4 oz".</summary>
    public static Parsed<Mass> TryMass(string text) =>
        QuantityReader.Read(text, QuantityKind.Mass).To(grams => Quantities.Mass.FromGrams(NumberText.ToDouble(grams)));

    /// <summary>A temperature: "21 C", "63°F".</summary>
    public static Parsed<Temperature> TryTemperature(string text) =>
        QuantityReader.Read(text, QuantityKind.Temperature).To(celsius => Quantities.Temperature.FromCelsius(NumberText.ToDouble(celsius)));

    /// <summary>A time: "1 h 45 min".</summary>
    public static Parsed<Duration> TryDuration(string text) =>
        QuantityReader.Read(text, QuantityKind.Duration).To(seconds => Quantities.Duration.FromMinutes(NumberText.ToDouble(seconds / 60)));

    /// <summary>A length: "1 cm", "1,200 m".</summary>
    public static Parsed<Length> TryLength(string text) =>
        QuantityReader.Read(text, QuantityKind.Length).To(metres => Quantities.Length.FromMetres(NumberText.ToDouble(metres)));

    /// <summary>A volume: "3 l", "750 ml".</summary>
    public static Parsed<Volume> TryVolume(string text) =>
        QuantityReader.Read(text, QuantityKind.Volume).To(litres => Quantities.Volume.FromLitres(NumberText.ToDouble(litres)));

    /// <summary>A percentage: "12.5 %".</summary>
    public static Parsed<Percent> TryPercent(string text) =>
        QuantityReader.Read(text, QuantityKind.Percent).To(percent => Quantities.Percent.FromValue(NumberText.ToDouble(percent)));

    /// <summary>What a lamp takes: "15 W".</summary>
    public static Parsed<Power> TryPower(string text) =>
        QuantityReader.Read(text, QuantityKind.Power).To(watts => Quantities.Power.FromWatts(NumberText.ToDouble(watts)));

    /// <summary>A bare count: "24".</summary>
    public static Parsed<int> TryCount(string text)
    {
        var typed = QuantityReader.Trimmed(text);
        var number = TryNumber(text);
        return number.Value switch
        {
            null => number.To(_ => 0),
            < 0 => Parsed<int>.Not(QuantityFault.Negative, typed, typed),
            > 1_000_000 => Parsed<int>.Not(QuantityFault.TooManyDigits, typed, typed),
            { } value when value != Math.Floor(value) => Parsed<int>.Not(QuantityFault.NotWhole, typed, typed),
            { } value => Parsed<int>.Of((int)value, typed),
        };
    }

    /// <summary>A bare number, for how many times something grows: "1.5".</summary>
    public static Parsed<double> TryNumber(string text) => QuantityReader.ReadBare(text).To(NumberText.ToDouble);

    /// <summary>The units that fit, for a person to choose from: "g, kg, mg, oz, lb".</summary>
    public static string UnitsOf(QuantityKind kind) => Unit.Fitting(kind);
}
