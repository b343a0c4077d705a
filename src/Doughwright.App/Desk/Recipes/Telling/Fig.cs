namespace Doughwright.App.Desk.Recipes.Telling;

/// <summary>A figure as finished words, with what it is: so a program can read the unrounded value, and a test can hold it against the command line.</summary>
/// <param name="Text">As a person reads it.</param>
/// <param name="Value">Unrounded; null when the figure has none.</param>
/// <param name="Of">Where the same value stands in the JSON of the command line: "steps.bulk.minutes", "formula.percent.trueWater".</param>
public sealed record Fig(string Text, double? Value = null, string? Of = null)
{
    /// <summary>Whether it carries its sentence.</summary>
    public bool Strong { get; init; }

    /// <summary>What it is at home, when that reads otherwise: "was 27 °C".</summary>
    public string? Was { get; init; }

    /// <summary>Whether it is set off as differing from home without saying what it was: in tables, where home is no column.</summary>
    public bool Moved { get; init; }

    public bool Differs => Moved || Was is not null;

    /// <summary>The value as a program reads it: the shortest digits that give the same number back.</summary>
    public string? Exact => Value?.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
}
