namespace Doughwright.App.Desk.Compare;

/// <summary>How a piece of a sentence is set.</summary>
internal enum BitKind
{
    Plain,

    /// <summary>A figure that carries the sentence.</summary>
    Strong,

    /// <summary>What differs between the two.</summary>
    Moved,

    /// <summary>What it was, in small letters.</summary>
    Was,

    /// <summary>What a person sees when it is done.</summary>
    Cue,
}

/// <summary>A piece of a sentence.</summary>
/// <param name="Value">What is behind a figure, unrounded; null for words.</param>
/// <param name="Of">Where the same figure stands in the command line's JSON, with the side before it: "second.steps.bulk.minutes".</param>
internal sealed record Bit(string Text, BitKind Kind = BitKind.Plain, double? Value = null, string? Of = null)
{
    /// <summary>The value as a program reads it: the shortest digits that give the same number back.</summary>
    public string? Exact => Value?.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
}
