using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Cases;

/// <summary>A unit in which figures of a case may stand.</summary>
/// <param name="Symbol">As typed, without spaces, brackets and raised digits: "W/m2K".</param>
/// <param name="Shown">As printed: "W/(m² K)".</param>
/// <param name="Factor">Times the base of its dimension.</param>
internal sealed record FigureUnit(string Symbol, string Shown, double Factor, double Offset = 0)
{
    public double ToBase(double value) => (value * Factor) + Offset;

    public double FromBase(double value) => (value - Offset) / Factor;
}

/// <summary>What a figure of a case measures: its units, the limits of sense, and how it is read.</summary>
/// <param name="Low">Lowest figure that makes sense, in the base.</param>
/// <param name="Kind">The same among the quantities of a recipe, which have a grammar of their own; null for the others.</param>
internal sealed record Dimension(string Name, double Low, double High, FigureUnit[] Units, QuantityKind? Kind = null)
{
    /// <summary>Minutes.</summary>
    public static Dimension Time { get; } = new("time", 0, 86400, [Unit("min", 1), Unit("s", 1.0 / 60), Unit("h", 60), Unit("d", 1440)], QuantityKind.Duration);

    /// <summary>°C. Everything that is baked, cooled or kept lies between deep frost and a stone oven.</summary>
    public static Dimension Temperature { get; } = new("temperature", -60, 500, [new("C", "°C", 1)], QuantityKind.Temperature);

    /// <summary>Grams.</summary>
    public static Dimension Mass { get; } = new("mass", 0.001, 500_000, [Unit("g", 1), Unit("kg", 1000)], QuantityKind.Mass);

    /// <summary>Metres.</summary>
    public static Dimension Altitude { get; } = new("altitude", -430, 11_000, [Unit("m", 1)], QuantityKind.Length);

    /// <summary>Metres.</summary>
    public static Dimension Size { get; } = new("size", 0.0005, 3, [Unit("m", 1)], QuantityKind.Length);

    /// <summary>Litres.</summary>
    public static Dimension Volume { get; } = new("volume", 0.0001, 500, [Unit("l", 1)], QuantityKind.Volume);

    /// <summary>Per cent.</summary>
    public static Dimension Share { get; } = new("share", 0, 1000, [Unit("%", 1)], QuantityKind.Percent);

    /// <summary>Per cent of a volume that is gas: nothing with more of it holds together.</summary>
    public static Dimension Gas { get; } = new("share of gas", 0, 95, [Unit("%", 1)], QuantityKind.Percent);

    /// <summary>Per cent of a mass.</summary>
    public static Dimension Part { get; } = new("share", 0, 100, [Unit("%", 1)], QuantityKind.Percent);

    /// <summary>Volume of a dough over that after mixing.</summary>
    public static Dimension Growth { get; } = new("volume", Limits.Growth.Low, Limits.Growth.High, [Unit("", 1)]);

    /// <summary>°C of the air around a dough: from a freezer to the hottest proofer that was tried.</summary>
    public static Dimension Air { get; } = new("temperature of air", Limits.Matter.Low.Celsius, 80, [new("C", "°C", 1)], QuantityKind.Temperature);

    /// <summary>°C of a dough.</summary>
    public static Dimension DoughWarmth { get; } = new("temperature of a dough", Limits.Mixed.Low.Celsius, Limits.Mixed.High.Celsius, [new("C", "°C", 1)], QuantityKind.Temperature);

    public static Dimension Ratio { get; } = new("number", 0, 1000, [Unit("", 1)]);

    /// <summary>kJ/(kg K).</summary>
    public static Dimension SpecificHeat { get; } = new("specific heat", 0.1, 10, [new("kJ/kgK", "kJ/(kg K)", 1), new("J/gK", "J/(g K)", 1), new("J/kgK", "J/(kg K)", 0.001)]);

    /// <summary>kg/m³.</summary>
    public static Dimension Density { get; } = new("density", 20, 3000, [new("kg/m3", "kg/m³", 1), new("g/ml", "g/ml", 1000), new("g/cm3", "g/cm³", 1000), new("kg/l", "kg/l", 1000)]);

    /// <summary>W/(m K).</summary>
    public static Dimension Conductivity { get; } = new("conductivity", 0.005, 10, [new("W/mK", "W/(m K)", 1)]);

    /// <summary>W/(m² K).</summary>
    public static Dimension Coefficient { get; } = new("coefficient", 0.1, 5000, [new("W/m2K", "W/(m² K)", 1)]);

    /// <summary>kPa.</summary>
    public static Dimension Pressure { get; } = new("pressure", 1, 1000, [Unit("kPa", 1), Unit("hPa", 0.1), Unit("Pa", 0.001), Unit("bar", 100)]);

    /// <summary>kg of water in a kg of solids.</summary>
    public static Dimension Moisture { get; } = new("moisture", 0, 20, [Unit("kg/kg", 1), Unit("g/g", 1)]);

    /// <summary>1/h.</summary>
    public static Dimension Rate { get; } = new("rate", 0, 10, [Unit("1/h", 1), Unit("1/min", 60)]);

    public static IReadOnlyList<Dimension> All { get; } =
        [Time, Temperature, Mass, Altitude, Size, Volume, Share, Gas, Part, Growth, Air, DoughWarmth, Ratio, SpecificHeat, Density, Conductivity, Coefficient, Pressure, Moisture, Rate];

    /// <summary>The units that fit, for a person.</summary>
    public string UnitNames => Kind is { } kind ? QuantityText.UnitsOf(kind) : string.Join(", ", Units.Select(unit => unit.Symbol));

    public FigureUnit Base => Units[0];

    /// <summary>A figure in the base and the unit it was written in; null, and told, when it is none or makes no sense.</summary>
    public (double Value, FigureUnit Unit)? Read(Phrase words)
    {
        if (Parse(words) is not { } read)
        {
            return null;
        }

        // A comparison that is false for what is no number at all.
        if (read.Value >= Low && read.Value <= High)
        {
            return read;
        }

        words.Log.Wrong(CaseFaults.FigureOutside, words.Place, words.Position, ("typed", words.Text), ("low", Text(Low)), ("high", Text(High)), ("what", Name));
        return null;
    }

    /// <summary>A difference in the base, above nought: "6 K", "0.5 min". Null, and told, when it is none.</summary>
    public double? ReadDifference(Phrase words)
    {
        if (Kind != QuantityKind.Temperature)
        {
            return Parse(words)?.Value is { } value ? Positive(value, words) : null;
        }

        var (number, symbol) = Halves(words);
        if (Plain(words.Text) is not ("K" or "C" or "F") && symbol is not ("K" or "C" or "F"))
        {
            words.Fault(symbol.Length == 0 ? QuantityFaults.KindOf(QuantityFault.UnitMissing) : QuantityFaults.KindOf(QuantityFault.UnitUnknown), [.. Named(words, symbol, "K, C, F")]);
            return null;
        }

        return number.AnyNumber() is { } kelvins ? Positive(symbol == "F" ? kelvins * 5 / 9 : kelvins, words) : null;
    }

    /// <summary>A figure of the base as words: "45 min".</summary>
    public string Text(double value) => NumberText.Exact(Math.Round(value, 4)) + (Base.Shown.Length == 0 ? "" : " " + Base.Shown);

    private static double? Positive(double value, Phrase words)
    {
        if (value > 0)
        {
            return value;
        }

        words.Log.Wrong(CaseFaults.ToleranceNought, words.Place, words.Position, ("typed", words.Text));
        return null;
    }

    private (double Value, FigureUnit Unit)? Parse(Phrase words)
    {
        switch (Kind)
        {
            case QuantityKind.Duration:
                return words.AnyDuration() is { } time ? (time.Minutes, Units.FirstOrDefault(unit => unit.Symbol == LastSymbol(words.Text)) ?? Base) : null;
            case QuantityKind.Temperature:
                return words.AnyTemperature() is { } temperature ? (temperature.Celsius, Base) : null;
            case QuantityKind.Mass:
                return words.Mass() is { } mass ? (mass.Grams, Units.FirstOrDefault(unit => unit.Symbol == LastSymbol(words.Text)) ?? Base) : null;
            case QuantityKind.Length:
                return words.AnyLength() is { } length ? (length.Metres, Base) : null;
            case QuantityKind.Volume:
                return words.AnyVolume() is { } volume ? (volume.Litres, Base) : null;
            case QuantityKind.Percent:
                return words.AnyPercent() is { } percent ? (percent.Value, Base) : null;
        }

        if (Units[0].Symbol.Length == 0)
        {
            return words.AnyNumber() is { } ratio ? (ratio, Base) : null;
        }

        var (number, symbol) = Halves(words);
        if (Units.FirstOrDefault(unit => unit.Symbol == symbol) is { } found)
        {
            return number.AnyNumber() is { } value ? (found.ToBase(value), found) : null;
        }

        // A number that is none is told before its unit.
        if (number.AnyNumber() is not null)
        {
            var kind = symbol.Length == 0 ? QuantityFault.UnitMissing : All.Any(other => other.Units.Any(unit => unit.Symbol == symbol)) ? QuantityFault.UnitOfAnotherKind : QuantityFault.UnitUnknown;
            words.Fault(QuantityFaults.KindOf(kind), [.. Named(words, symbol, UnitNames)]);
        }

        return null;
    }

    private static (string, object)[] Named(Phrase words, string symbol, string units) => [("typed", words.Text), ("piece", symbol), ("offer", ""), ("units", units)];

    private static (Phrase Number, string Symbol) Halves(Phrase words)
    {
        var length = 0;
        while (length < words.Text.Length && (char.IsAsciiDigit(words.Text[length]) || ".,-+\u2212".Contains(words.Text[length]) || IsExponent(words.Text, length)))
        {
            length++;
        }

        return (words.Part(0, length), Plain(words.Text[length..]));
    }

    /// <summary>"1e9": no plain number, and to be told as that.</summary>
    private static bool IsExponent(string text, int at) =>
        text[at] is 'e' or 'E' && at > 0 && char.IsAsciiDigit(text[at - 1]) && at + 1 < text.Length && (char.IsAsciiDigit(text[at + 1]) || text[at + 1] is '-' or '+');

    private static string Plain(string unit) => string.Concat(unit.Where(letter => !char.IsWhiteSpace(letter) && !"()·*°".Contains(letter))).Replace('²', '2').Replace('³', '3');

    private static string LastSymbol(string text) => string.Concat(text.Reverse().TakeWhile(char.IsAsciiLetter).Reverse());

    private static FigureUnit Unit(string symbol, double factor) => new(symbol, symbol, factor);
}
