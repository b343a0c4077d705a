using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>
/// Some words of a text that know where they stand. The grammars are written with it: what is read is given back, what is not is told at
/// its own column
/// and is null.
/// </summary>
internal sealed record Phrase(string Text, Position Position, string Place, FindingLog Log)
{
    public Mass? Mass(Limit<Mass>? limit = null) => Quantity(QuantityText.TryMass(Text), QuantityKind.Mass, limit);

    public Temperature? Temperature(Limit<Temperature> limit) =>
        Quantity(QuantityText.TryTemperature(Text), QuantityKind.Temperature, limit);

    public Duration? Duration(Limit<Duration> limit) => Quantity(QuantityText.TryDuration(Text), QuantityKind.Duration, limit);

    public Length? Length(Limit<Length> limit) => Quantity(QuantityText.TryLength(Text), QuantityKind.Length, limit);

    public int? Count(Limit<int> limit) =>
        Quantity(QuantityText.TryCount(Text), null, limit) is { } count && limit.Holds(count) ? count : null;

    public double? Number(Limit<double> limit) => Quantity(QuantityText.TryNumber(Text), null, limit);

    // Figures whose limits the caller looks at.
    public double? AnyNumber() => Quantity(QuantityText.TryNumber(Text), null, null);

    public Temperature? AnyTemperature() => Quantity(QuantityText.TryTemperature(Text), QuantityKind.Temperature, null);

    public Duration? AnyDuration() => Quantity(QuantityText.TryDuration(Text), QuantityKind.Duration, null);

    public Length? AnyLength() => Quantity(QuantityText.TryLength(Text), QuantityKind.Length, null);

    public Volume? AnyVolume() => Quantity(QuantityText.TryVolume(Text), QuantityKind.Volume, null);

    public Percent? AnyPercent() => Quantity(QuantityText.TryPercent(Text), QuantityKind.Percent, null);

    /// <summary>One word of a closed list.</summary>
    public T? Word<T>() where T : struct, Enum
    {
        if (EnumWords<T>.Find(Text) is { } value)
        {
            return value;
        }

        Log.Fault(FormFaults.UnknownWord, Place, Position, UnknownWord(Text, [.. EnumWords<T>.All]));
        return null;
    }

    public static (string, object)[] UnknownWord(string written, IReadOnlyList<string> known) =>
        [("word", written), ("nearest", TradeWords.Offer(written, known)), ("known", string.Join(", ", known))];

    /// <summary>The pieces between commas. A comma between two digits is part of a number, right or wrong.</summary>
    public IReadOnlyList<Phrase> Split()
    {
        var pieces = new List<Phrase>();
        var start = 0;
        for (var i = 0; i <= Text.Length; i++)
        {
            var inNumber = i > 0 && i + 1 < Text.Length && char.IsAsciiDigit(Text[i - 1]) && char.IsAsciiDigit(Text[i + 1]);
            if (i == Text.Length || (Text[i] == ',' && !inNumber))
            {
                pieces.Add(Part(start, i));
                start = i + 1;
            }
        }

        return pieces;
    }

    /// <summary>The words from one index to another, without the spaces around them.</summary>
    public Phrase Part(int start, int end)
    {
        var part = Text[start..end];
        var lead = part.Length - part.TrimStart().Length;
        return this with { Text = part.Trim(), Position = Position with { Column = Position.Column + start + lead } };
    }

    /// <summary>What stands behind some first words, or null when the phrase begins otherwise.</summary>
    public Phrase? After(string words) => Text == words ? Part(Text.Length, Text.Length)
        : Text.StartsWith(words + " ", StringComparison.Ordinal) ? Part(words.Length, Text.Length)
        : null;

    /// <summary>What stands before some last words, or null when the phrase ends otherwise.</summary>
    public Phrase? Before(string words) =>
        Text.EndsWith(" " + words, StringComparison.Ordinal) ? Part(0, Text.Length - words.Length) : null;

    /// <summary>What stands on both sides of some words, or null when they are not there.</summary>
    public (Phrase Before, Phrase After)? Around(string words)
    {
        var found = Text.IndexOf(words, StringComparison.Ordinal);
        return found < 0 ? null : (Part(0, found), Part(found + words.Length, Text.Length));
    }

    public void Fault(string kind, params (string, object)[] arguments) =>
        Log.Fault(kind, Place, Position, [("words", Text), .. arguments]);

    /// <summary>Whether a value read from these words lies within its limits; told when not.</summary>
    public bool Holds<T>(T value, Limit<T> limit) where T : struct, IComparable<T>
    {
        if (limit.Holds(value))
        {
            return true;
        }

        Log.Fault(limit.Kind, Place, Position, ("value", value), ("low", limit.Low), ("high", limit.High), ("typed", Text));
        return false;
    }

    private T? Quantity<T>(Parsed<T> parsed, QuantityKind? kind, Limit<T>? limit) where T : struct, IComparable<T>
    {
        if (parsed.Fault is { } fault)
        {
            TellFault(fault, parsed.Typed, parsed.Piece, parsed.Offer, kind);
        }
        else if (parsed.Value is { } value && limit is not null && !limit.Holds(value))
        {
            Log.Wrong(limit.Kind, Place, Position, ("value", value), ("low", limit.Low), ("high", limit.High), ("typed", parsed.Typed));
        }

        return parsed.Value;
    }

    private void TellFault(QuantityFault fault, string typed, string piece, string? offer, QuantityKind? kind)
    {
        var column = Math.Max(0, Text.IndexOf(piece, StringComparison.Ordinal));
        var position = Position with { Column = Position.Column + column };
        var arguments = new List<(string, object)>
        {
            ("typed", typed),
            ("piece", piece),
            ("offer", offer ?? ""),
        };
        if (kind is { } known)
        {
            arguments.Add(("units", QuantityText.UnitsOf(known)));
        }

        if (fault == QuantityFault.Negative)
        {
            Log.Wrong(QuantityFaults.KindOf(fault), Place, position, [.. arguments]);
        }
        else
        {
            Log.Fault(QuantityFaults.KindOf(fault), Place, position, [.. arguments]);
        }
    }
}
